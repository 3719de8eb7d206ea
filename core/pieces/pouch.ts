import { aspects } from '../aspects.js';
import {
  closureLength,
  closureNotions,
  closureSteps,
  closureWindow,
  EASE_MM,
  longestStockClosureMm,
} from '../finishing/closing.js';
import { foldSeamSteps, graftTail, ringGraftSteps, seamTail } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { strapMm, strapNotion, strapSteps } from '../finishing/strap.js';
import { type Asked, type Fabric, type Layout, type Made, piece } from '../piece.js';
import { done, type Outcome, refused } from '../problems.js';
import type { Window } from '../sizing/rows.js';
import { length, range, say, type Words } from '../words.js';

/** Ends left to weave in: of the graft and the seam, and of the thread that sews either tape. Common practice. */
const ENDS = 2;
const CLOSURE_ENDS = 4;

/** A ring of 1 in at each side. Common practice, no source. */
const RING_MM = 25.4;

const asks = {
  width: {
    is: 'window',
    label: 'Width',
    question: 'How wide should the pouch be?',
    words: [...aspects.wide, ...aspects.long],
    minMm: 40,
    maxMm: 1250,
    tolerance: { mm: 6 },
    source: 'tolerance: common practice',
  },
  height: {
    is: 'window',
    label: 'Height',
    words: aspects.tall,
    minMm: 20,
    maxMm: 1000,
    tolerance: { mm: 6 },
    source: 'tolerance: common practice',
  },
  closure: {
    is: 'length',
    label: 'Closure',
    words: aspects.closure,
    beside: aspects.long,
    minMm: 50,
    maxMm: 1000,
  },
  ring: {
    is: 'length',
    label: 'Ring',
    words: aspects.ring,
    beside: [...aspects.wide, ...aspects.diameter],
    minMm: 0,
    maxMm: 100,
    defaultMm: RING_MM,
    source: 'common practice',
  },
  strap: {
    is: 'length',
    label: 'Strap drop',
    words: ['strap', 'straps'],
    beside: aspects.long,
    minMm: 80,
    maxMm: 800,
  },
} as const;
type PouchAsked = Asked<typeof asks>;
type PouchMade = Made<typeof asks>;

/**
 * The window that the width must end in. A closure asks for its own length, both rings and an ease of 1/2 to 1 in;
 * a width given with it must at least take the closure.
 */
function widthWindow({ width, closure, ring }: PouchAsked): Outcome<Window> {
  if (closure === undefined) return width === undefined ? refused({ code: 'missing', anyOf: [] }) : done(width);
  const needed = closureWindow(closure, ring);
  if (width === undefined) return done(needed);
  if (width.hiMm > needed.loMm) return done({ loMm: Math.max(width.loMm, needed.loMm), hiMm: width.hiMm });
  const fitting = longestStockClosureMm((width.loMm + width.hiMm) / 2, ring);
  const shorter =
    fitting === undefined
      ? []
      : [
          {
            label: say`a closure of ${closureLength(fitting)}`,
            edit: { closure: { is: 'length' as const, mm: fitting } },
          },
        ];
  return refused({
    code: 'closure_too_long',
    closureMm: closure,
    needsMm: needed.loMm,
    window: width,
    offers: [{ label: say`the width this closure needs`, edit: { width: { is: 'window', ...needed } } }, ...shorter],
  });
}

/** A ring stands inside the height: at most a third of it. From memory. */
const RING_SHARE = 1 / 3;

const heightOf = (needles: number | undefined, stitchMm: number | undefined): number | undefined =>
  needles && stitchMm && ((needles - 1) * stitchMm) / 2;

/** Rings that were asked for, or that a closure asked for needs; others are kept only where they fit. */
const isMeant = ({ closure, ring }: PouchAsked): boolean => closure !== undefined || ring !== RING_MM;

function ringOf({ asked, needles, stitchMm }: PouchMade): number {
  const heightMm = heightOf(needles, stitchMm);
  return heightMm && !isMeant(asked) && asked.ring > heightMm * RING_SHARE ? 0 : asked.ring;
}

function layouts(asked: PouchAsked, { needles, stitchMm }: Fabric): Outcome<readonly Layout[]> {
  const window = widthWindow(asked);
  if (!window.ok) return window;
  const heightMm = heightOf(needles, stitchMm.round);
  if (heightMm && isMeant(asked) && asked.ring > heightMm * RING_SHARE) {
    const offers = [{ label: say`no rings`, edit: { ring: { is: 'length' as const, mm: 0 } } }];
    return refused({ code: 'ring_too_big', ringMm: asked.ring, heightMm, offers });
  }
  return done([
    {
      id: 'sideways',
      form: 'round',
      parts: 1,
      dimensions: [
        {
          id: 'width',
          figure: 'widthMm',
          label: 'Width',
          adjective: 'wide',
          axis: 'rows',
          share: 1 / 2,
          extra: 1,
          fixedMm: 0,
          window: window.value,
        },
        // The bottom seam takes half a stitch from each edge.
        {
          id: 'height',
          figure: 'heightMm',
          label: 'Height',
          adjective: 'tall',
          axis: 'needles',
          share: 1 / 2,
          extra: -1,
          fixedMm: 0,
          window: asked.height,
        },
      ],
    },
  ]);
}

const widthOf = ({ rowsInPiece, rowMm }: PouchMade): number => (rowsInPiece * rowMm) / 2;

/** The closure asked for, else the longest stock length that the finished width takes. */
function closureOf(made: PouchMade): number | undefined {
  return made.asked.closure ?? longestStockClosureMm(widthOf(made), ringOf(made));
}

function closureAssumed(made: PouchMade): readonly Words[] {
  const closureMm = closureOf(made);
  if (closureMm === undefined) return [];
  const { asked } = made;
  const kept =
    ringOf(made) === 0 ? say`no rings, for which it is too low` : say`${length(RING_MM)} kept for a ring at each side`;
  const ring = asked.ring === RING_MM ? [kept] : [];
  if (asked.closure === undefined)
    return [...ring, say`a closure of ${closureLength(closureMm)}, the longest stock length that fits`];
  return asked.width ? ring : [...ring, say`${range(EASE_MM.lo, EASE_MM.hi)} of ease beside the closure`];
}

const strapAssumed = ({ asked: { strap } }: PouchMade): readonly Words[] =>
  strap === undefined ? [] : [say`a strap that drops ${length(strap)} to the top edge`];

export const pouch = piece({
  id: 'pouch',
  label: 'Pouch',
  words: ['pouch', 'pouches', 'purse', 'purses', 'bag', 'bags', 'clutch'],
  asks,
  pair: ['width', 'height'],
  needs: [['width', 'closure']],
  example: 'rows for a pouch 11 in wide',
  layouts,
  assumes: (made) => [...closureAssumed(made), ...strapAssumed(made)],
  notions: (made) => {
    const closureMm = closureOf(made);
    const { strap } = made.asked;
    return [
      ...(strap === undefined ? [] : [strapNotion(strapMm(strap, widthOf(made)))]),
      ...(closureMm === undefined ? [] : closureNotions(closureMm, ringOf(made))),
    ];
  },
  steps: (made) => {
    const widthMm = widthOf(made);
    const closureMm = closureOf(made);
    return [
      ...startSteps(made, graftTail(made), { threads: true }),
      ...bodySteps(made),
      ...endSteps(made, seamTail(widthMm)),
      ...ringGraftSteps(made),
      ...foldSeamSteps(made.rowsInPiece),
      ...(closureMm === undefined ? [] : closureSteps(made, widthMm, closureMm, ringOf(made))),
      ...(made.asked.strap === undefined ? [] : strapSteps(closureMm !== undefined && ringOf(made) > 0)),
      ...tidySteps(closureMm === undefined ? ENDS : ENDS + CLOSURE_ENDS, 'width', true),
    ];
  },
  outline: ({ rowsInPiece, rowMm, needles, stitchMm }) =>
    rectangle((rowsInPiece * rowMm) / 2, (((needles ?? 1) - 1) * (stitchMm ?? 0)) / 2, {
      bottom: 'seam',
      right: 'fold',
      top: 'opening',
      left: 'graft',
    }),
  traits: (made) => [
    ...(closureOf(made) === undefined ? [] : ['small_parts' as const]),
    ...(made.asked.strap === undefined ? [] : ['long_loop' as const, 'load' as const]),
  ],
});
