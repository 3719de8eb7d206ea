import { z } from 'zod';
import { BallAsk } from './stock.js';

/** Yarn left, weighed or measured; with neither, as much as the shelf tells. */
export const yarnLeft = {
  massG: z.number().optional(),
  lengthMm: z.number().optional(),
  /** Whole balls or parts of one, where neither was told. */
  balls: z.number().optional(),
  ball: BallAsk.optional(),
};
