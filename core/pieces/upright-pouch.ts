import { aspects } from '../aspects.js';
import { edgeClosureProblems, edgeForMm } from '../finishing/edge-closure.js';
import { flapProblems } from '../finishing/flap.js';
import { hemTail } from '../finishing/hemming.js';
import { looseTail, shutSteps, shutTail } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { lined, liningAssumed, liningNotions, liningSteps } from '../finishing/lining.js';
import { rectangle } from '../finishing/outline.js';
import { NEEDLES_FREE, PANEL_NEEDLES, panelSeamSteps, TO_AND_FRO } from '../finishing/panel-seam.js';
import { mattressTailMm } from '../finishing/tails.js';
import { atLeast, type Taker, taken, taking, unheld } from '../finishing/taking.js';
import { closing, hemMm, topAssumed, topNotions, topped, topSteps, topTraits } from '../finishing/tops.js';
import { type Asked, type Fabric, type Layout, type Made, piece, type Step } from '../piece.js';
import { done, type Offer, type Outcome, refused } from '../problems.js';
import type { Need } from '../sizing/contents.js';
import { needlesFor } from '../sizing/needles.js';
import { countFor, dimensionMm, type Measure, type Window } from '../sizing/rows.js';
import { SIDES } from '../sizing/sides.js';
import { layerMm } from '../sizing/thickness.js';
import { key, length, say, tail, type Words } from '../words.js';

/** Ends left to weave in: start, bottom, top. Common practice. */
const ENDS = 3;
const asks = {
  height: {
    is: 'window',
    label: 'Height',
    question: 'How tall should it be?',
    words: [...aspects.tall, ...aspects.long],
    minMm: 60,
    maxMm: 1000,
    tolerance: { mm: 6 },
    source: 'tolerance: common practice',
  },
  width: {
    is: 'window',
    label: 'Width',
    words: aspects.wide,
    minMm: 20,
    maxMm: 1000,
    tolerance: { mm: 6 },
    source: 'tolerance: common practice',
  },
  layers: {
    is: 'choice',
    label: 'Layers',
    words: ['layers', 'layer'],
    options: [
      { id: 'single', label: 'single', words: ['single', 'one layer'] },
      {
        id: 'double',
        label: 'double, turned into itself',
        words: ['double', 'two layers', 'two layer', '2 layers', '2 layer', 'self lined', 'doubled'],
      },
    ],
    default: 'single',
  },
  ...topped,
  ...taking,
  ...lined,
} as const;
type BagAsked = Asked<typeof asks>;
type BagMade = Made<typeof asks>;

/** Flat width from the needles: all of a tube, all but the two that the side seam takes of a panel. */
const TUBE: Measure = { share: 1 / 2, extra: 0, fixedMm: 0 };
const PANEL: Measure = { ...TUBE, extra: -2 };
/** One of two layers is lined by itself. */
const linedAsked = (asked: BagAsked): { lining: string } => (isDouble(asked) ? { lining: 'none' } : asked);
const isDouble = ({ layers }: BagAsked): boolean => layers === 'double';

/** A bottom shut flat makes half a row; of a double one either end does, and the turn at the rim takes that row. */
const upward = (asked: BagAsked): Measure =>
  isDouble(asked)
    ? { share: 1 / 2, extra: 0, fixedMm: 0 }
    : { share: 1, extra: 1 / 2, fixedMm: 0 - hemMm(asked, false) };

/** The wall: a layer, or two of a tube turned into itself. */
const wallMm = (asked: BagAsked, stitchMm: number | undefined): number => (isDouble(asked) ? 2 : 1) * layerMm(stitchMm);

/** What bounds the pouch asked for when it must take something. */
function takerOf(asked: BagAsked, { needles, stitchMm: { round } }: Fabric): Taker {
  const { width, height } = asked;
  const [wide, tall] = [asks.width.label, asks.height.label];
  const tubeMm = needles && round && dimensionMm(TUBE, needles, round);
  return {
    wallMm: wallMm(asked, round),
    isOpen: closing(asked) === 'plain',
    needles,
    limits: ({ widthMm, heightMm, openingMm }) => [
      { id: 'width', label: wide, mostMm: width?.hiMm, needsMm: widthMm },
      { id: 'height', label: tall, mostMm: height?.hiMm, needsMm: heightMm },
      { id: 'closure', label: asks.closure.label, mostMm: asked.closure, needsMm: openingMm },
      { id: 'width', label: wide, mostMm: tubeMm, needsMm: widthMm, wanted: round && countFor(TUBE, widthMm, round) },
    ],
    fabricMm2: ({ widthMm, heightMm }) => widthMm * (heightMm - upward(asked).fixedMm),
  };
}

/** The pouch as it is asked for, its top left open. */
const opened = (asked: BagAsked) => ({
  asked: { ...asked, top: 'plain', closure: undefined, flap: undefined },
  edit: { top: { is: 'choice' as const, id: 'plain' }, closure: null, flap: null },
});

/** The sizes asked for, and what the contents need of them; a closure in the top needs its own. */
function sizesOf({ width, height, closure }: BagAsked, need: Need | undefined) {
  if (need === undefined) return { width, height };
  const leastMm = width === undefined ? Math.max(need.widthMm, edgeForMm(closure ?? 0)) : need.widthMm;
  return {
    width: atLeast(leastMm, width, asks.width),
    height: atLeast(need.heightMm, height, asks.height),
    leastMm: width === undefined ? leastMm : undefined,
  };
}

/** A panel with a seam at one side, in place of a tube wider than is wanted. */
function panelFor(
  wanted: Window | undefined,
  leastMm: number | undefined,
  { needles, stitchMm: { round, flat } }: Fabric,
) {
  const tubeMm = needles && round && dimensionMm(TUBE, needles, round);
  if (!wanted || !needles || !flat || !tubeMm || tubeMm <= wanted.hiMm) return undefined;
  const n = Math.max(needlesFor(wanted, PANEL, flat), leastMm ? countFor(PANEL, leastMm, flat) : 0);
  return n > needles - NEEDLES_FREE ? undefined : { needles: n, widthMm: dimensionMm(PANEL, n, flat), tubeMm };
}

/** A tube of all needles, or where that is too wide a panel. */
function layouts(asked: BagAsked, fabric: Fabric): Outcome<readonly Layout[]> {
  const { needles, stitchMm } = fabric;
  const held = taken(asked, (one) => takerOf(one, fabric), opened(asked));
  if (!held.ok) return held;
  const { width, height, leastMm } = sizesOf(asked, held.value?.need);
  const panel = panelFor(width, leastMm, fabric);
  const widthMm = panel?.widthMm ?? (needles && stitchMm.round && dimensionMm(TUBE, needles, stitchMm.round));
  const flapped = flapProblems(asked.flap, height, asks.flap);
  // Without the closure what goes in may be turned, and the height change.
  const besides: Offer['edit'] =
    flapped.length > 0 || (asked.flap !== undefined && held.value !== undefined) ? { flap: null } : {};
  const closed = edgeClosureProblems(asked.closure, widthMm, asks.closure, besides);
  const problems = asked.closure === undefined ? flapped : closed;
  if (problems.length > 0) return refused(...problems);
  const seamed =
    panel &&
    say`a flat panel with a seam at one side, since a tube of all your needles is ${length(panel.tubeMm)} wide`;
  const upright = held.value?.because;
  const dimensions: Layout['dimensions'] = [
    { ...TALL, ...upward(asked), window: height },
    {
      ...WIDE,
      inPanels: panel ? undefined : 'sewn_round',
      ...(panel ? PANEL : TUBE),
      window: asked.width && width,
      leastMm,
    },
  ];
  return done([
    {
      ...(panel ? { id: 'panel', form: 'flat', needles: panel.needles } : { id: 'tube', form: 'round' }),
      parts: 1,
      because: upright && seamed ? say`${upright}; ${seamed}` : (upright ?? seamed),
      assumed: held.value?.assumed,
      dimensions,
    },
  ]);
}

const TALL = { ...SIDES.height, axis: 'rows' } as const;
const WIDE = { ...SIDES.width, axis: 'needles' } as const;

const heightOf = ({ asked, rows, rowMm }: BagMade): number => dimensionMm(upward(asked), rows, rowMm);
const widthOf = ({ layout, needles, stitchMm }: BagMade): number | undefined =>
  needles && stitchMm && dimensionMm(layout.form === 'round' ? TUBE : PANEL, needles, stitchMm);
/** It under its top: the rim of a double one is a fold. */
const openOf = (made: BagMade) => ({
  ...made,
  widthMm: widthOf(made),
  heightMm: heightOf(made),
  onFold: isDouble(made.asked),
});

function steps(made: BagMade): Step[] {
  const { asked, layout, rows, rowMm } = made;
  const double = isDouble(asked);
  const first = double ? shutTail(made) : hemMm(asked, double) > 0 ? hemTail(made) : looseTail;
  const isTube = layout.form === 'round';
  const seamMm = mattressTailMm(rows * rowMm);
  const along = say`the side edges together with ${tail(seamMm)} of yarn`;
  const side = panelSeamSteps(rows, along, { cutMm: seamMm });
  return [
    ...startSteps(made, first, isTube ? { threads: true } : { beside: PANEL_NEEDLES }),
    ...bodySteps(made, isTube ? undefined : TO_AND_FRO),
    ...endSteps(made, shutTail(made)),
    ...(isTube ? [] : side),
    ...shutSteps(made, double ? 2 : 1),
    ...(double ? [PUSHED_IN] : []),
    ...topSteps(openOf(made)),
    ...liningSteps(linedAsked(asked)),
    ...tidySteps(ENDS + (isTube ? 0 : 2), 'height', isTube),
  ];
}

const PUSHED_IN: Step = {
  id: 'fold',
  driver: 'fold',
  count: 1,
  say: say`${key`Push one half into the other`} until the two bottoms meet; the rim folds half way, in one row.`,
};

const assumes = (made: BagMade): readonly Words[] => [
  isDouble(made.asked) ? say`two layers, the rim a fold` : say`one layer, the bottom shut flat`,
  ...topAssumed(openOf(made)),
  ...liningAssumed(linedAsked(made.asked)),
  ...(isDouble(made.asked) && made.asked.lining === 'lined'
    ? [say`no cloth in it: its inner layer is the lining`]
    : []),
  ...unheld(made.asked),
];

export const uprightPouch = piece({
  id: 'upright-pouch',
  label: 'Upright pouch',
  words: [
    ...['upright pouch', 'upright pouches', 'drawstring pouch', 'drawstring pouches', 'upright bag', 'upright bags'],
    ...['drawstring bag', 'drawstring bags', 'sack', 'sacks', 'draw string bag', 'draw string bags'],
    ...['draw string pouch', 'bag with a drawstring', 'pouch with a drawstring', 'gift bag', 'gift bags'],
    ...['phone sleeve', 'phone sleeves', 'phone pouch', 'phone pouches', 'phone case', 'phone cases', 'phone cosy'],
    ...['tablet sleeve', 'tablet sleeves', 'book sleeve', 'book sleeves', 'glasses case', 'glasses cases'],
    ...['glasses sleeve', 'glasses sleeves', 'glasses pouch', 'glasses pouches', 'phone cozy'],
  ],
  asks,
  pair: ['width', 'height'],
  needs: [['height', 'contents']],
  example: 'a drawstring bag 20 cm tall',
  layouts,
  assumes,
  notions: (made) => [
    ...topNotions(openOf(made)),
    ...liningNotions(linedAsked(made.asked), widthOf(made), heightOf(made), wallMm(made.asked, made.stitchMm)),
  ],
  steps,
  outline: (made) => {
    const right = made.layout.form === 'round' ? 'fold' : 'seam';
    return rectangle(widthOf(made) ?? 0, heightOf(made), { bottom: 'graft', right, top: 'opening', left: 'fold' });
  },
  traits: ({ asked }) => topTraits(asked),
});
