import { aspects } from '../aspects.js';
import {
  closureLength,
  closureNotions,
  closureSteps,
  EASE_MM,
  longestStockClosureMm,
  unclosed,
} from '../finishing/closing.js';
import { closureWidth } from '../finishing/closure-width.js';
import { foldSeamSteps, graftTail, ringGraftSteps, seamTail } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { lined, liningAssumed, liningNotions, liningSteps } from '../finishing/lining.js';
import { rectangle } from '../finishing/outline.js';
import { isTooBig, RING_MM, ringTooBig } from '../finishing/rings.js';
import { STRAPS, strapAssumed, strapMm, strapNotion, strapSteps } from '../finishing/strap.js';
import { atLeast, type Taker, taken, taking, unheld } from '../finishing/taking.js';
import { type Asked, type Fabric, type Layout, type Made, piece } from '../piece.js';
import { done, type Outcome, refused } from '../problems.js';
import { countFor, dimensionMm, type Measure, type Window } from '../sizing/rows.js';
import { SIDES } from '../sizing/sides.js';
import { layerMm } from '../sizing/thickness.js';
import { length, range, say, type Words } from '../words.js';

/** Ends left to weave in: of the graft and the seam, and of the thread that sews either tape. Common practice. */
const ENDS = 2;
const CLOSURE_ENDS = 4;

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
    named: [{ words: ['open top', 'open topped', 'open at the top'], mm: 0 }],
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
    words: ['strap', 'straps', 'drop', 'drops'],
    beside: aspects.long,
    minMm: 80,
    maxMm: 800,
    named: STRAPS,
    source: 'common practice',
  },
  ...taking,
  ...lined,
} as const;
type PouchAsked = Asked<typeof asks>;
type PouchMade = Made<typeof asks>;

/** The bottom seam takes half a stitch from each edge. */
const HEIGHT: Measure = { share: 1 / 2, extra: -1, fixedMm: 0 };

const heightOf = (needles: number | undefined, stitchMm: number | undefined): number | undefined =>
  needles && stitchMm && dimensionMm(HEIGHT, needles, stitchMm);

/** The wall is a flattened tube: two layers. */
const wallMm = (stitchMm: number | undefined): number => 2 * layerMm(stitchMm);

/** The closure asked for, unless it was refused. */
const closureAsked = ({ closure }: PouchAsked): number | undefined => closure || undefined;

/** What bounds the pouch asked for when it must take something. */
function takerOf(asked: PouchAsked, { needles, stitchMm: { round } }: Fabric): Taker {
  const { width, height } = asked;
  const sized = (id: 'width' | 'height' | 'closure', mostMm: number | undefined, needsMm: number) => {
    return { id, label: asks[id].label, mostMm, needsMm };
  };
  return {
    wallMm: wallMm(round),
    isOpen: asked.closure === 0,
    needles,
    limits: ({ widthMm, heightMm, openingMm }) => [
      sized('width', width?.hiMm, widthMm),
      sized('closure', closureAsked(asked), openingMm),
      sized('height', height?.hiMm, heightMm),
      { ...sized('height', heightOf(needles, round), heightMm), wanted: round && countFor(HEIGHT, heightMm, round) },
    ],
    fabricMm2: ({ widthMm }) => widthMm,
  };
}

const RING = { share: 1 / 2, extra: 1, fixedMm: 0 };
const WIDE = { ...SIDES.width, axis: 'rows', ...RING } as const;
const TALL = { ...SIDES.height, axis: 'needles' } as const;

/** The window that the width must end in: from the width, the closure and the contents asked for. */
function widthWindow(asked: PouchAsked, leastMm: number | undefined): Outcome<Window> {
  const { width, ring } = asked;
  const closure = closureAsked(asked);
  if (closure !== undefined) return closureWidth(closure, ring, width, leastMm);
  if (leastMm !== undefined) return done(atLeast(leastMm, width, asks.width));
  return width === undefined ? refused({ code: 'missing', anyOf: [] }) : done(width);
}

/** Rings that were asked for, or that a closure asked for needs; others are kept only where they fit. */
const isMeant = (asked: PouchAsked): boolean => closureAsked(asked) !== undefined || asked.ring !== RING_MM;

const ringOf = ({ asked, needles, stitchMm }: PouchMade): number =>
  !isMeant(asked) && isTooBig(asked.ring, heightOf(needles, stitchMm)) ? 0 : asked.ring;

function layouts(asked: PouchAsked, fabric: Fabric): Outcome<readonly Layout[]> {
  const { needles, stitchMm } = fabric;
  const open: PouchAsked = { ...asked, closure: 0 };
  const held = taken(asked, (one) => takerOf(one, fabric), { asked: open, edit: { closure: { is: 'length', mm: 0 } } });
  if (!held.ok) return held;
  const need = held.value?.need;
  const window = widthWindow(asked, need?.widthMm);
  if (!window.ok) return window;
  const heightMm = heightOf(needles, stitchMm.round);
  if (heightMm && isMeant(asked) && isTooBig(asked.ring, heightMm)) return refused(ringTooBig(asked.ring, heightMm));
  const height = asked.height && need ? atLeast(need.heightMm, asked.height, asks.height) : asked.height;
  return done([
    {
      id: 'sideways',
      form: 'round',
      parts: 1,
      because: held.value?.because,
      assumed: held.value?.assumed,
      openingMm: need?.openingMm,
      dimensions: [
        { ...WIDE, window: window.value },
        {
          ...TALL,
          ...HEIGHT,
          inPanels: 'one_layer',
          window: height,
          leastMm: height === undefined ? need?.heightMm : undefined,
        },
      ],
    },
  ]);
}

const widthOf = ({ rowsInPiece, rowMm }: PouchMade): number => (rowsInPiece * rowMm) / 2;

/**
 * The closure asked for, else the longest stock length that the finished width takes, if what goes in can pass it; none
 * where it was refused.
 */
function closureOf(made: PouchMade): number | undefined {
  const { asked, layout } = made;
  if (asked.closure !== undefined) return closureAsked(asked);
  const longest = longestStockClosureMm(widthOf(made), ringOf(made));
  return longest !== undefined && longest >= (layout.openingMm ?? 0) ? longest : undefined;
}

function closureAssumed(made: PouchMade): readonly Words[] {
  const closureMm = closureOf(made);
  const { asked, layout } = made;
  if (closureMm === undefined) return asked.closure === undefined ? [unclosed(layout.openingMm)] : [];
  const kept =
    ringOf(made) === 0 ? say`no rings, for which it is too low` : say`${length(RING_MM)} kept for a ring at each side`;
  const ring = asked.ring === RING_MM ? [kept] : [];
  if (asked.closure === undefined)
    return [...ring, say`a closure of ${closureLength(closureMm)}, the longest stock length that fits`];
  return asked.width ? ring : [...ring, say`${range(EASE_MM.lo, EASE_MM.hi)} of ease beside the closure`];
}

export const pouch = piece({
  id: 'pouch',
  label: 'Pouch',
  words: [
    ...['pouch', 'pouches', 'purse', 'purses', 'bag', 'bags', 'clutch', 'clutches', 'pencil case', 'pencil cases'],
    ...['makeup case', 'makeup cases', 'toiletry case', 'toiletry cases'],
  ],
  asks,
  pair: ['width', 'height'],
  needs: [['width', 'closure', 'contents']],
  example: 'rows for a pouch 11 in wide',
  layouts,
  assumes: (made) => [
    ...closureAssumed(made),
    ...strapAssumed(made.asked.strap),
    ...liningAssumed(made.asked),
    ...unheld(made.asked),
  ],
  notions: (made) => {
    const closureMm = closureOf(made);
    const { strap } = made.asked;
    return [
      ...(strap === undefined ? [] : [strapNotion(strapMm(strap, widthOf(made)))]),
      ...(closureMm === undefined ? [] : closureNotions(closureMm, ringOf(made))),
      ...liningNotions(made.asked, widthOf(made), heightOf(made.needles, made.stitchMm), wallMm(made.stitchMm)),
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
      ...liningSteps(made.asked),
      ...(made.asked.strap === undefined ? [] : strapSteps(closureMm !== undefined && ringOf(made) > 0)),
      ...tidySteps(closureMm === undefined ? ENDS : ENDS + CLOSURE_ENDS, 'width', true),
    ];
  },
  outline: (made) =>
    rectangle(widthOf(made), heightOf(made.needles, made.stitchMm) ?? 0, {
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
