import type { Layout, Step } from '../piece.js';
import { count, length, say, tail, type Words } from '../words.js';
import { mattressTailMm } from './tails.js';

/** The work hangs from the needles by its own weight: it is lifted every so many rows. From memory. */
const LIFT_ROWS = 60;
/** Strips of unlike length are eased together up to this. Common practice. */
const EASE_PERCENT = 2;

/** Words after a count of rows so long that the work pulls on itself. */
export const lifting = (rows: number): Words =>
  rows > LIFT_ROWS ? say`, lifting the work every ${LIFT_ROWS} rows so that its weight does not stretch it` : say``;

/** The strips knitted alike, before the steps of one. */
export const alikeStep = (strips: number): Step => ({
  id: 'each',
  driver: 'check',
  count: 1,
  say: say`Knit ${count(strips, 'strip')} alike from one dye lot, with the same rows, each by the steps from here on. Ease strips that differ by up to ${EASE_PERCENT}%; block those that differ by more.`,
});

/**
 * Strips sewn side by side.
 * @param bars along the edge of a strip
 */
export function joinStripsStep({ layout, rowMm }: { layout: Layout; rowMm: number }, bars: number): Step {
  const seams = layout.parts - 1;
  const tailMm = mattressTailMm(bars * rowMm);
  const taken =
    layout.form === 'round' ? say`along the folds, half a stitch from each` : say`a full stitch from each edge`;
  return {
    id: 'join',
    driver: 'mattress',
    count: seams * bars,
    yarn: [{ role: 'main', lengthMm: seams * tailMm }],
    say: say`Lay the strips side by side, the same way up. Mark every 10th bar and sew ${count(seams, 'seam')} of ${count(bars, 'bar')} in mattress stitch, ${taken}, with ${tail(tailMm)} of yarn a seam, meeting at each marker.`,
  };
}

/** A border worked all round; 0 stitches where they are not known yet. */
export function borderStep(wideMm: number, stitches: number): Step {
  const about = stitches > 0 ? say`, about ${count(stitches, 'stitch', 'stitches')}` : say``;
  return {
    id: 'border',
    driver: 'border',
    count: stitches,
    yarn: [{ role: 'main', stitches }],
    say: say`Work a border ${length(wideMm)} wide all round${about}, its corners turned flat.`,
  };
}
