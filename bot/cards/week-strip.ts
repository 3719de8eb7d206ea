import type { Day } from '../../core/index.js';
import { shortDay, weekdayNumber } from '../day-words.js';
import type { Schedule } from '../replies/batch.js';

const WEEK = 7;
const MOST_SQUARES = 10;

const VERBS = { whole: '', knit: ' knits', finish: ' finishes' } as const;

/**
 * Who has how many done in which week, a line each: `9 to 15 Nov: Nadia ■■■■■ 5, Owen ■■■ 3; 8 of 12`. By days where
 * all is done within a week of its begin. The squares tell nothing that the numbers do not.
 */
export function weekStrip({ makers, pieces, today }: Schedule, before = 0): string[] {
  const all = makers.flatMap(({ days }) => days);
  if (all.length === 0) return [];
  const isShort = Math.max(...all) - today < WEEK;
  const startOf = (day: Day): Day => (isShort ? day : day - weekdayNumber(day));
  const starts = [...new Set(all.map(startOf))].sort((a, b) => a - b);
  const doneIn = (days: readonly Day[], start: Day): number => days.filter((day) => startOf(day) === start).length;
  const most = Math.max(...makers.flatMap(({ days }) => starts.map((start) => doneIn(days, start))));
  const each = Math.ceil(most / MOST_SQUARES);
  let done = before;
  return starts.map((start) => {
    const shares = makers.flatMap(({ name, stage, days }) => {
      const n = doneIn(days, start);
      if (stage !== 'knit') done += n;
      return n === 0
        ? []
        : [
            `${name === '' || makers.length === 1 ? '' : `${name}${VERBS[stage]} `}${'■'.repeat(Math.ceil(n / each))} ${n}`,
          ];
    });
    const when = isShort ? shortDay(start) : `${shortDay(start)} to ${shortDay(start + WEEK - 1)}`;
    return `${when}: ${shares.join(', ')}; ${done} of ${pieces + before}`;
  });
}
