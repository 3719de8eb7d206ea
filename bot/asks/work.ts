import { z } from 'zod';
import { Bench } from './plan.js';

/** Which work in hand: the one a button names, that on the machine named, else the one of this talk. */
export const which = { workId: z.string().optional(), on: Bench.optional() };

/** A counter of rows and what it shows. */
export const Counter = z.object({ name: z.string(), rows: z.number() });
export type Counter = z.infer<typeof Counter>;
