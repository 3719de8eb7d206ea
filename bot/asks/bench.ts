import { z } from 'zod';
import { BENCH_PART_NAMES } from '../bench-parts.js';

/** Time at the bench in seconds, over the parts of the work that it went to; no parts is all of the work. */
export const TimeAsk = z.object({
  seconds: z.number(),
  parts: z.array(z.enum(BENCH_PART_NAMES)).default([]),
  said: z.string(),
  /** Set where no unit was said. */
  unit: z.literal('assumed').optional(),
});
export type TimeAsk = z.infer<typeof TimeAsk>;

/** A day of the calendar; the next such where no year was said. */
export const DateAsk = z.object({ day: z.number(), month: z.number(), year: z.number().optional(), said: z.string() });
export type DateAsk = z.infer<typeof DateAsk>;

export const Span = z.object({ fromS: z.number(), toS: z.number() });

/** Weekdays, 0 for a Monday, and how one works on them: so many hours, or at these times; or whole days off. */
export const HoursAsk = z.union([
  z.object({ days: z.array(z.number()).min(1), hours: z.number(), said: z.string() }),
  z.object({ days: z.array(z.number()).min(1), spans: z.array(Span).min(1), said: z.string() }),
  z.object({ off: z.object({ from: DateAsk, to: DateAsk }), said: z.string() }),
]);
export type HoursAsk = z.infer<typeof HoursAsk>;
