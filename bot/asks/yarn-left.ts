import { z } from 'zod';
import { BallAsk } from './stock.js';

/** Yarn left, weighed or measured; with neither, as much as the shelf tells. */
export const yarnLeft = {
  massG: z.number().optional(),
  lengthMm: z.number().optional(),
  ball: BallAsk.optional(),
};
