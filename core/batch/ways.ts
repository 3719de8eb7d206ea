import { type Day, endDayOf, type WallS, workBetween } from './calendar.js';
import { dealt, lastDone, type Maker, mostBetween } from './shares.js';

/** What would make a batch ready in time, each alone. */
export type Way =
  | { is: 'fewer'; pieces: number }
  | { is: 'later'; dueDay: Day }
  /** So many more makers with the pace and hours of the one who makes the most. */
  | { is: 'more_makers'; makers: number; like: string }
  /** More hours of the quickest, in seconds of work. */
  | { is: 'more_hours'; who: string; workS: number };

/** The ways for makers at a pace that leaves some pieces undone by a time. */
export function ways(makers: readonly Maker[], pieces: number, from: WallS, due: WallS): Way[] {
  const done = makers.map((maker) => ({ maker, most: mostBetween(maker, from, due) }));
  const most = done.reduce((sum, one) => sum + one.most, 0);
  const missing = pieces - most;
  const busiest = done.reduce((best, one) => (one.most > best.most ? one : best));
  const quickest = makers.reduce((best, one) => (one.paceS < best.paceS ? one : best));
  const begun = workBetween(quickest.calendar, from, due) % quickest.paceS;
  return [
    ...(most === 0 ? [] : [{ is: 'fewer' as const, pieces: most }]),
    { is: 'later', dueDay: endDayOf(lastDone(dealt(makers, pieces, from))) },
    ...(busiest.most === 0
      ? []
      : [{ is: 'more_makers' as const, makers: Math.ceil(missing / busiest.most), like: busiest.maker.id }]),
    { is: 'more_hours', who: quickest.id, workS: missing * quickest.paceS - begun },
  ];
}
