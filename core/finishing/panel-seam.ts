import type { Made, Step } from '../piece.js';
import type { Measure } from '../sizing/rows.js';
import { count, say, type Words } from '../words.js';
import { bodySteps, endSteps, startSteps, type Tail, WASTE_ROWS } from './knitting.js';

export { NEEDLES_FREE } from '../sizing/panels.js';

/** Stitches of a panel that a full-stitch seam takes, one from each edge. */
export const SEAM_STITCHES = 2;
/** How many rows or needles of a panel show: all; all but the stitch at each edge that a seam takes; one row more. */
export const WHOLE: Measure = { share: 1, extra: 0, fixedMm: 0 };
export const SEAMED: Measure = { ...WHOLE, extra: -SEAM_STITCHES };
export const RING: Measure = { ...WHOLE, extra: 1 };

/** What setting up a panel takes beside its needles. */
export const PANEL_NEEDLES: Words = say` Mark the first and the last of them, leave the others out of work, and turn back at the marks: past them stitches drop.`;

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
  const pairs = needles ?? 0;
  const howMany = needles === undefined ? say`every pair of stitches` : say`${count(needles, 'pair')} of stitches`;
  return [
    {
      id: 'graft',
      driver: 'graft',
      count: pairs,
      say: say`Lay the two ends together${round}, right side out and untwisted, and graft ${howMany} at the tension of a row; it makes row ${rows + 1}. The start has a half loop at each edge, so that the edges meet half a stitch off.`,
    },
    {
      id: 'take_out_waste',
      driver: 'take_out_waste',
      count: 2 * WASTE_ROWS,
      say: say`Take out both strips of waste yarn (${2 * WASTE_ROWS} rows) and fasten the tail.`,
    },
  ];
}

/**
 * The two edges of a panel sewn together bar to bar, a stitch of either lost in the seam.
 * @param bars pairs of bars
 * @param along which edges, and how: words put before the count
 * @param after what else there is to mind, a sentence of its own
 */
export const panelSeamStep = (bars: number, along: Words, after: Words = say``): Step => ({
  id: 'mattress',
  driver: 'mattress',
  count: bars,
  say: say`Mark every 10th bar on both edges and sew ${along}, ${count(bars, 'bar')} in mattress stitch, a full stitch from each edge, meeting at each marker.${after}`,
});
