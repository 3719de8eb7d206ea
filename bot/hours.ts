import { z } from 'zod';

const Span = z.object({ fromS: z.number(), toS: z.number() });

/** How one works on a day: so many hours at no time of day in particular, or at these times. No hours is no work. */
export const DayHours = z.union([z.object({ hours: z.number() }), z.object({ spans: z.array(Span) })]);
export type DayHours = z.infer<typeof DayHours>;

/** The days of a week, Monday first. */
export const WeekHours = z.tuple([DayHours, DayHours, DayHours, DayHours, DayHours, DayHours, DayHours]);
export type WeekHours = z.infer<typeof WeekHours>;

/** Days off, from the first to the last, as counts of days since 1970. */
export const DaysOff = z.array(z.object({ from: z.number(), to: z.number() }));

/** When a maker works, in their own time zone. */
export const Hours = z.object({
  /** Undefined until said. */
  weekly: WeekHours.optional(),
  off: DaysOff,
});
export type Hours = z.infer<typeof Hours>;
