import type { Step } from '../piece.js';
import { count, key, length, say, tail, type Words } from '../words.js';
import { further } from './further.js';
import { markBars } from './joining.js';
import { mattressTailMm } from './tails.js';

/** Strips of unlike length are eased together up to this. Common practice. */
const EASE_PERCENT = 2;

/** The strips knitted alike, before the steps of one. */
export const alikeStep = (strips: number): Step => ({
  id: 'each',
  driver: 'check',
  count: 1,
  say: say`${key`Knit ${count(strips, 'strip')} alike`} from one dye lot, with the same rows, each by the steps from here on.`,
});

/** Strips that came out of unlike length, before they are joined. */
export const evenedStep: Step = further(
  'even_strips',
  say`${key`Ease strips`} that differ by up to ${EASE_PERCENT}%; ${key`block`} those that differ by more.`,
);

/**
 * Strips or panels sewn side by side.
 * @param bars along the edge of one, each as high as a row
 * @param taken how much of each edge the seam takes
 */
export function joinSteps(
  what: string,
  { parts, bars, rowMm, taken }: { parts: number; bars: number; rowMm: number; taken: Words },
): Step[] {
  const seams = parts - 1;
  const tailMm = mattressTailMm(bars * rowMm);
  return [
    further('lay_side_by_side', say`${key`Lay the ${what} side by side`}, the same way up.`),
    markBars(say`the edges that meet`),
    {
      id: 'join',
      driver: 'mattress',
      count: seams * bars,
      yarn: [{ role: 'main', lengthMm: seams * tailMm }],
      say: say`${key`Mattress ${count(seams, 'seam')} of ${count(bars, 'bar')}`}, ${taken}, with ${tail(tailMm)} of yarn a seam, meeting at each marker.`,
    },
  ];
}

/** A border worked all round; 0 stitches where they are not known yet. */
export function borderStep(wideMm: number, stitches: number): Step {
  const about = stitches > 0 ? say`, about ${count(stitches, 'stitch', 'stitches')}` : say``;
  return {
    id: 'border',
    driver: 'border',
    count: stitches,
    yarn: [{ role: 'main', stitches }],
    say: say`${key`Work a border ${length(wideMm)} wide`} all round${about}; turn its corners flat.`,
  };
}
