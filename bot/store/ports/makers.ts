import type { Day, Span } from '../../../core/index.js';

export type Units = 'cm' | 'in';

/** How one works on a day: so many hours at no time of day in particular, or at these times. No hours is no work. */
export type DayHours = { hours: number } | { spans: readonly Span[] };

/** The days of a week, Monday first. */
export type WeekHours = readonly [DayHours, DayHours, DayHours, DayHours, DayHours, DayHours, DayHours];

/** Days off, from the first to the last. */
export type DaysOff = { from: Day; to: Day };

/** When a maker works, in their own time zone. */
export type Hours = {
  /** Undefined until said. */
  weekly: WeekHours | undefined;
  off: readonly DaysOff[];
};

export type Maker = {
  id: string;
  slackUserId: string;
  name: string;
  units: Units | undefined;
  /** An IANA name. */
  timeZone: string;
  hours: Hours;
  /** The ISO 4217 code that prices without one are in; undefined until said. */
  currency: string | undefined;
};

export type Makers = {
  /** The maker of this Slack user, made on first use and held until the commit. */
  held(slackUserId: string, name: string, at: number): Promise<Maker>;
  setUnits(makerId: string, units: Units | undefined): Promise<void>;
  setHours(makerId: string, hours: Hours): Promise<void>;
  setTimeZone(makerId: string, timeZone: string): Promise<void>;
  setCurrency(makerId: string, currency: string | undefined): Promise<void>;
};
