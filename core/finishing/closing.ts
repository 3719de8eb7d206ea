import type { Made, Step, Things } from '../piece.js';
import { STOCK_CLOSURES } from '../tables/closures.js';
import { MM_PER } from '../units/units.js';
import { key, length, say, type Words } from '../words.js';
import { further } from './further.js';

/** Ease of an opening beside its closure and rings: 1/2 to 1 in. Common practice, no source. */
export const EASE_MM = { lo: 12.7, hi: 25.4 } as const;
/** Stitches from the top edge to a ring. Common practice: one or two. */
const RING_DOWN_STITCHES = 1.5;

/** The width an opening needs for a closure with a ring at each side. */
export const closureWindow = (closureMm: number, ringMm: number) => ({
  loMm: closureMm + 2 * ringMm + EASE_MM.lo,
  hiMm: closureMm + 2 * ringMm + EASE_MM.hi,
});

/** The longest stock closure an opening takes with at least the least ease, or undefined when none does. */
export function longestStockClosureMm(openingMm: number, ringMm: number): number | undefined {
  const most = openingMm - 2 * ringMm - EASE_MM.lo + 1e-9;
  const stock = STOCK_CLOSURES.findLast(({ inches }) => inches * MM_PER.in <= most);
  return stock === undefined ? undefined : stock.inches * MM_PER.in;
}

type Stock = (typeof STOCK_CLOSURES)[number];

/** The stock length that a closure is, by either label. */
function stockOf(closureMm: number): Stock | undefined {
  const isLabel = (mm: number): boolean => Math.abs(mm - closureMm) < 0.5;
  return STOCK_CLOSURES.find((c) => isLabel(c.inches * MM_PER.in) || isLabel(c.labelCm * MM_PER.cm));
}

const labelled = (stock: Stock): Words => say`${stock.inches} in (${stock.labelCm} cm)`;

/** Why an opening has no closure: none is so short, or none of those that fit lets in what must go through. */
export function unclosed(openingMm: number | undefined): Words {
  if (openingMm === undefined) return say`no closure, since no stock length is short enough`;
  const stock = STOCK_CLOSURES.find(({ inches }) => inches * MM_PER.in >= openingMm);
  if (stock === undefined) return say`no closure, since no stock length lets it in`;
  return say`no closure, since one that lets it in is ${labelled(stock)} or longer and needs more width`;
}

/** A closure as it is sold: a stock length by both labels, any other by its length. */
export function closureLength(closureMm: number): Words {
  const stock = stockOf(closureMm);
  return stock === undefined ? say`${length(closureMm)}` : labelled(stock);
}

/** Of a closure that no stock length is: the next longer one, to be cut down; undefined for stock and beyond all of it. */
function cutFrom(closureMm: number): Stock | undefined {
  return stockOf(closureMm) === undefined
    ? STOCK_CLOSURES.find(({ inches }) => inches * MM_PER.in > closureMm)
    : undefined;
}

/** Left of a chain behind the stop that shortens it. Common practice, no source. */
const PAST_STOP_MM = 20;

/** A longer closure made as long as it must be. */
const shortened = (closureMm: number, from: Stock): Step[] => [
  {
    id: 'shorten_closure',
    driver: 'pin_closure',
    count: 1,
    say: say`${key`Sew a stop over the chain`} of the ${labelled(from)} closure, ${key`${length(closureMm)} from its slider end`}.`,
  },
  further('cut_closure', say`${key`Cut the closure ${length(PAST_STOP_MM)} past its stop`}.`),
];

/** Rings sewn at the side folds, the closure pinned and sewn between them. */
export function closureSteps(
  made: Pick<Made<never>, 'stitchMm'>,
  widthMm: number,
  closureMm: number,
  ringMm: number,
): Step[] {
  const insideMm = (widthMm - closureMm) / 2;
  const down = made.stitchMm === undefined ? say`a stitch or two` : say`${length(RING_DOWN_STITCHES * made.stitchMm)}`;
  const rings: Step[] =
    ringMm === 0
      ? []
      : [
          {
            id: 'rings',
            driver: 'ring',
            count: 2,
            say: say`Sew a ${key`ring inside each top corner`}, ${key`${down} below the edge`}.`,
          },
        ];
  const longer = cutFrom(closureMm);
  return [
    ...rings,
    ...(longer === undefined ? [] : shortened(closureMm, longer)),
    {
      id: 'pin_closure',
      driver: 'pin_closure',
      count: 1,
      say: say`${key`Pin the closed ${closureLength(closureMm)} closure`} into the open edge: it starts ${key`${length(insideMm)} inside`} one side fold, and its chain ends as far before the other.`,
    },
    {
      id: 'sew_closure',
      driver: 'sew_closure',
      count: 2 * closureMm,
      say: say`${key`Sew from the bottom stop to the slider end`}, one tape and then the other (${length(2 * closureMm)} altogether), without stretching the edge.`,
    },
  ];
}

/** Words behind a closure as it is bought: a stock length, to be shortened or not; by the metre where none is so long. */
function boughtAs(closureMm: number): Words {
  const longer = cutFrom(closureMm);
  if (longer !== undefined) return say` of ${labelled(longer)}, to be shortened to ${length(closureMm)}`;
  if (stockOf(closureMm) !== undefined) return say` of ${closureLength(closureMm)}`;
  return say` of ${length(closureMm)}, longer than any stock length: chain by the metre, with its slider and stops`;
}

/** The closure and its rings to have at hand. */
export function closureNotions(closureMm: number, ringMm: number): Things[] {
  const closure = { id: 'closure', count: 1, one: 'closure', after: boughtAs(closureMm) };
  return ringMm === 0
    ? [closure]
    : [closure, { id: 'rings', count: 2, one: 'ring', after: say`, ${length(ringMm)} kept for each` }];
}
