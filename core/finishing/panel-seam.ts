import type { Made, Step } from '../piece.js';
import type { Measure } from '../sizing/rows.js';
import { count, key, say, type Words } from '../words.js';
import { further } from './further.js';
import { markBars, pairsOf } from './joining.js';
import { bodySteps, endSteps, startSteps, type Tail, WASTE_ROWS } from './knitting.js';

export { NEEDLES_FREE } from '../sizing/panels.js';

/** Stitches of a panel that a full-stitch seam takes, one from each edge. */
export const SEAM_STITCHES = 2;
/** How many rows or needles of a panel show: all; all but the stitch at each edge that a seam takes; one row more. */
export const WHOLE: Measure = { share: 1, extra: 0, fixedMm: 0 };
export const SEAMED: Measure = { ...WHOLE, extra: -SEAM_STITCHES };
export const RING: Measure = { ...WHOLE, extra: 1 };

/** What setting up a panel takes beside its needles. */
export const PANEL_NEEDLES: readonly Step[] = [
  further(
    'mark_needles',
    say`${key`Mark the first and the last needle`}; leave the others out of work and turn back at the marks: past them stitches drop.`,
  ),
];

/** A panel is cranked to and fro, its edges weighted. */
export const TO_AND_FRO = { crank: say` to and fro, weights on both edges`, stop: say``, end: say`` };

/** A panel knitted to and fro between its strips of waste yarn. */
export const panelSteps = (
  made: Parameters<typeof bodySteps>[0] & Parameters<typeof endSteps>[0],
  start: Tail,
  end: Tail,
): Step[] => [
  ...startSteps(made, start, { beside: PANEL_NEEDLES }),
  ...bodySteps(made, TO_AND_FRO),
  ...endSteps(made, end),
];

/** A panel grafted end to end into a ring: a pair a needle. Grafting makes one more row. */
export function panelGraftSteps({ needles, rows }: Pick<Made<never>, 'needles' | 'rows'>, round = say``): Step[] {
  return [
    further(
      'ends_together',
      say`${key`Lay the two ends together`}${round}, right side out and ${key`without a twist`}.`,
    ),
    {
      id: 'graft',
      driver: 'graft',
      count: needles ?? 0,
      say: say`${key`Graft ${pairsOf(needles)}`} of stitches at the tension of a row: this is ${key`row ${rows + 1}`}; its edges meet half a stitch off, since the start has a half loop at each.`,
    },
    {
      id: 'take_out_waste',
      driver: 'take_out_waste',
      count: 2 * WASTE_ROWS,
      say: say`${key`Take out both strips of waste yarn`} (${2 * WASTE_ROWS} rows); fasten the tail.`,
    },
  ];
}

/**
 * The two edges of a panel sewn together bar to bar, a stitch of either lost in the seam.
 * @param bars pairs of bars
 * @param along which edges, and how: words put after the count
 * @param cutMm yarn cut for it, where no tail sews it
 */
export const panelSeamSteps = (
  bars: number,
  along: Words,
  { id = 'mattress', cutMm }: { id?: string; cutMm?: number } = {},
): Step[] => [
  markBars(say`both edges`),
  {
    id,
    driver: 'mattress',
    count: bars,
    ...(cutMm !== undefined && { yarn: [{ role: 'main', lengthMm: cutMm }] }),
    say: say`${key`Mattress ${count(bars, 'bar')}`}, a full stitch from each edge, meeting at each marker: ${along}.`,
  },
];
