import type { Step, Things } from '../piece.js';
import { key, length, say, type Words } from '../words.js';
import { further } from './further.js';

/** Asks of a piece that can be lined. */
export const lined = {
  lining: {
    is: 'choice',
    label: 'Lining',
    words: ['lining', 'linings'],
    options: [
      {
        id: 'none',
        label: 'none',
        words: [
          ...[
            'no lining',
            'without a lining',
            'without lining',
            'without the lining',
            'remove the lining',
            'not lined',
          ],
          ...['skip the lining', 'drop the lining', 'leave out the lining', 'lose the lining', 'unlined'],
        ],
      },
      { id: 'lined', label: 'lined', words: ['lined', 'lining', 'linings'] },
    ],
    default: 'none',
  },
} as const;

/** Seam allowance at a side, and what is turned in at the top. Common practice, no source. */
const ALLOWANCE_MM = 12;
const TURN_MM = 15;
/** A lining is narrower than the inside and shorter than the piece, so that it bears no load. Common practice. */
const NARROWER_MM = 3;
const SHORTER_MM = 10;

/**
 * The cloth of a lining in mm, one piece folded at the bottom: D − tau − 3 and an allowance at each side, 2(H − 10)
 * and a turn at each end.
 */
export const liningMm = (widthMm: number, heightMm: number, wallMm: number): { wideMm: number; longMm: number } => ({
  wideMm: widthMm - wallMm - NARROWER_MM + 2 * ALLOWANCE_MM,
  longMm: 2 * (heightMm - SHORTER_MM + TURN_MM),
});

type Asked = { lining: string };
const isLined = ({ lining }: Asked): boolean => lining === 'lined';

/** The cloth to have at hand for what is lined; a side of the piece not known yet is told by the piece. */
export function liningNotions(
  asked: Asked,
  widthMm: number | undefined,
  heightMm: number | undefined,
  wallMm: number,
): Things[] {
  if (!isLined(asked)) return [];
  const { wideMm, longMm } = liningMm(widthMm ?? 0, heightMm ?? 0, wallMm);
  const wide = widthMm === undefined ? say`its width and ${length(wideMm)}` : say`${length(wideMm)}`;
  const long = heightMm === undefined ? say`twice its height and ${length(longMm)}` : say`${length(longMm)}`;
  return [{ id: 'lining', count: 1, one: 'lining', after: say` of cloth ${wide} by ${long}` }];
}

/** What the cut of a lining takes for granted. */
export const liningAssumed = (asked: Asked): Words[] =>
  isLined(asked)
    ? [
        say`the lining with ${length(ALLOWANCE_MM)} of seam at each side and ${length(TURN_MM)} turned in at the top, ${length(SHORTER_MM)} lower than the outside`,
      ]
    : [];

/** A lining sewn, turned in at the top and hung inside. */
export const liningSteps = (asked: Asked): Step[] =>
  isLined(asked)
    ? [
        further(
          'sew_lining',
          say`${key`Fold the lining across`}, right sides together, and ${key`sew both sides ${length(ALLOWANCE_MM)} from the edge`}.`,
        ),
        {
          id: 'lining',
          driver: 'lining',
          count: 1,
          say: say`Turn ${length(TURN_MM)} of its top to the outside, ${key`put it in`} with the seams between, and ${key`sew it to the inside ${length(SHORTER_MM)} below the edge`}, without stretching the knitting.`,
        },
      ]
    : [];
