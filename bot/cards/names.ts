import { type Printing, pieces, printed, printedRate, spacingMm, sureness, type Words } from '../../core/index.js';
import { benchName } from '../desk/names.js';
import type { GaugeUsed } from '../reply.js';

export { capital } from '../desk/names.js';

export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** `about 3 in wide and 2 in tall`: items joined as one says them. */
export const joined = (items: readonly string[], last = 'and'): string =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;

/** What a follow-up changed, in a line; none when it changed nothing. */
export const changedLine = (changed: readonly Words[], printing: Printing): string[] =>
  changed.length === 0 ? [] : [`Changed: ${changed.map((words) => printed(words, printing)).join('; ')}.`];

/** The gauge behind an answer, for the small print. */
export const gaugeName = (used: GaugeUsed): string =>
  `Gauge: ${benchName(used.machine, used.yarn, used.tension)}, ${counted(used.gauge.pieces, 'piece')}`;

/** Rows and stitches to 10 cm or 4 in, in one system; `no stitches yet` where none were measured. */
export function rates({ gauge }: GaugeUsed, units: Printing['units']): { rows?: string; stitches?: string } {
  const { row, stitch } = gauge;
  return {
    ...(row && { rows: printedRate(spacingMm(row), row.pieces, units) }),
    ...(stitch && { stitches: printedRate(spacingMm(stitch), stitch.pieces, units) }),
  };
}

/** How sure a gauge is, in a word, by its rows; by its stitches while no rows are measured. */
export const surenessOf = ({ gauge }: GaugeUsed): string => {
  const estimate = gauge.row ?? gauge.stitch;
  return estimate === undefined ? 'rough' : sureness(estimate);
};

const DAY_MS = 86_400_000;

/** A day, counted as core counts them, as people say it: `9 November 2026`. */
export const dayInWords = (day: number): string =>
  new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' }).format(
    new Date(day * DAY_MS),
  );

/** A request that can be typed as it stands: the example of the first kind of piece. */
export const AN_EXAMPLE = pieces[0]?.example ?? 'help';
