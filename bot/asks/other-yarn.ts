import { z } from 'zod';
import { BallAsk } from './stock.js';

/** Another yarn for the plan in hand, in the maker's words. */
export const otherYarn = { yarn: z.string().optional(), ball: BallAsk.optional() };

/** What to make a piece of: so many grams, else what is free of the yarn; the one used last where none is named. */
export const toMakeFrom = { yarn: z.string().optional(), massG: z.number().optional(), ball: BallAsk.optional() };
