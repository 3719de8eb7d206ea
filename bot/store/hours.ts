import { z } from 'zod';
import { jsonColumn } from './json.js';
import type { DaysOff, WeekHours } from './ports.js';

const Day = z.union([
  z.object({ hours: z.number() }),
  z.object({ spans: z.array(z.object({ fromS: z.number(), toS: z.number() })) }),
]);

/** The two JSON columns of a maker's hours. */
export const weekJson = jsonColumn<WeekHours>(z.tuple([Day, Day, Day, Day, Day, Day, Day]));
export const daysOffJson = jsonColumn<readonly DaysOff[]>(z.array(z.object({ from: z.number(), to: z.number() })));
