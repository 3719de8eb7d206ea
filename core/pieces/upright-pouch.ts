import { aspects } from '../aspects.js';
import { buttonAndLoopSteps, buttonNotion } from '../finishing/buttons.js';
import { closureNotions, closureSteps } from '../finishing/closing.js';
import { drawstringNotion, drawstringSteps } from '../finishing/drawstring.js';
import { edgeClosureProblems, edgeForMm } from '../finishing/edge-closure.js';
import { flapSteps } from '../finishing/flap.js';
import { hemSteps, hemTail } from '../finishing/hemming.js';
import { castOffSteps, looseTail, shutSteps, shutTail } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { NEEDLES_FREE, PANEL_NEEDLES, panelSeamSteps, TO_AND_FRO } from '../finishing/panel-seam.js';
import { mattressTailMm } from '../finishing/tails.js';
import { type Asked, type Fabric, type Layout, type Made, piece, type Step } from '../piece.js';
import { done, type Outcome, type Problem, refused } from '../problems.js';
import { needlesFor } from '../sizing/needles.js';
import { dimensionMm, type Measure } from '../sizing/rows.js';
import { key, length, say, tail, type Words } from '../words.js';

/** A hem for a cord to run in. From memory. */
const HEM_MM = 25;

/** A flap that covers a third of the height. Common practice. */
const FLAP_SHARE = 1 / 3;

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
      { id: 'single', label: 'single', words: ['single', 'one layer', 'unlined'] },
      {
        id: 'double',
        label: 'double, turned into itself',
        words: ['double', 'two layers', 'two layer', '2 layers', '2 layer', 'self lined', 'doubled'],
      },
    ],
    default: 'single',
  },
  top: {
    is: 'choice',
    label: 'Top',
    words: ['top'],
    options: [
      {
        id: 'plain',
        label: 'open',
        words: ['no drawstring', 'without a drawstring', 'without drawstring', 'open top'],
      },
      { id: 'drawstring', label: 'a drawstring', words: ['drawstring', 'drawstrings', 'draw string'] },
      { id: 'flap', label: 'a flap', words: ['with a flap', 'with flap', 'with flaps', 'flap top', 'flapped'] },
    ],
    default: 'drawstring',
  },
  closure: {
    is: 'length',
    label: 'Closure',
    words: aspects.closure,
    beside: aspects.long,
    minMm: 50,
    maxMm: 1000,
  },
  hem: {
    is: 'length',
    label: 'Hem',
    words: ['hem', 'hems', 'channel'],
    beside: [...aspects.tall, ...aspects.wide],
    minMm: 0,
    maxMm: 100,
    defaultMm: HEM_MM,
    source: 'from memory',
  },
  flap: {
    is: 'length',
    label: 'Flap length',
    words: ['flap', 'flaps'],
    beside: [...aspects.long, ...aspects.tall],
    minMm: 20,
    maxMm: 1000,
  },
} as const;
type BagAsked = Asked<typeof asks>;
type BagMade = Made<typeof asks>;

/** Flat width from the needles: all of a tube, all but the two that the side seam takes of a panel. */
const TUBE: Measure = { share: 1 / 2, extra: 0, fixedMm: 0 };
const PANEL: Measure = { ...TUBE, extra: -2 };
const isDouble = ({ layers }: BagAsked): boolean => layers === 'double';

/** How it shuts: a closure takes the place of a cord or flap, and a flap given a length that of a cord. */
const closing = ({ closure, flap, top }: BagAsked): string =>
  closure !== undefined ? 'closure' : flap !== undefined ? 'flap' : top;

/** The fold is the rim of a double one, and a flap is grafted to the loops that a hem would take. */
const hemOf = (asked: BagAsked): number => (isDouble(asked) || closing(asked) === 'flap' ? 0 : asked.hem);

/** A bottom shut flat makes half a row; of a double one either end does, and the turn at the rim takes that row. */
const upward = (asked: BagAsked): Measure =>
  isDouble(asked) ? { share: 1 / 2, extra: 0, fixedMm: 0 } : { share: 1, extra: 1 / 2, fixedMm: 0 - hemOf(asked) };

function laid(asked: BagAsked, way: Pick<Layout, 'id' | 'form' | 'needles' | 'because'>, across: Measure): Layout {
  return {
    ...way,
    parts: 1,
    dimensions: [
      {
        id: 'height',
        figure: 'heightMm',
        label: 'Height',
        adjective: 'tall',
        axis: 'rows',
        ...upward(asked),
        window: asked.height,
      },
      {
        id: 'width',
        figure: 'widthMm',
        label: 'Width',
        adjective: 'wide',
        axis: 'needles',
        ...across,
        window: asked.width,
      },
    ],
  };
}

/** A tube of all needles, or where that is too wide a panel with a seam at one side. */
function layouts(asked: BagAsked, { needles, stitchMm: { round, flat } }: Fabric): Outcome<readonly Layout[]> {
  const { width } = asked;
  const tubeMm = needles && round && dimensionMm(TUBE, needles, round);
  const n = width && flat && needlesFor(width, PANEL, flat);
  const panelMm = n && flat && dimensionMm(PANEL, n, flat);
  const isPanel =
    width !== undefined && needles && n && tubeMm && panelMm && tubeMm > width.hiMm && n <= needles - NEEDLES_FREE;
  const problems = unfit(asked, isPanel ? panelMm : tubeMm);
  if (problems.length > 0) return refused(...problems);
  if (!isPanel) return done([laid(asked, { id: 'tube', form: 'round' }, TUBE)]);
  const because = say`a flat panel with a seam at one side, since a tube of all your needles is ${length(tubeMm)} wide`;
  return done([laid(asked, { id: 'panel', form: 'flat', needles: n, because }, PANEL)]);
}

/** A closure wider than the top, and a flap longer than what it hangs on. */
function unfit({ closure, flap, height }: BagAsked, widthMm: number | undefined): Problem[] {
  const isLong = flap !== undefined && height !== undefined && flap > height.loMm;
  if (!isLong || closure !== undefined)
    return edgeClosureProblems(closure, widthMm, asks.closure, isLong ? { flap: null } : {});
  return [
    {
      code: 'length_out_of_range',
      field: { id: 'flap', label: asks.flap.label },
      givenMm: flap,
      minMm: asks.flap.minMm,
      maxMm: height.loMm,
      why: say`a flap is no longer than what it hangs on`,
      offers: [
        { label: say`a flap of a third of the height`, edit: { flap: null, top: { is: 'choice', id: 'flap' } } },
      ],
    },
  ];
}

const heightOf = ({ asked, rows, rowMm }: BagMade): number => dimensionMm(upward(asked), rows, rowMm);
const widthOf = ({ layout, needles, stitchMm }: BagMade): number | undefined =>
  needles && stitchMm && dimensionMm(layout.form === 'round' ? TUBE : PANEL, needles, stitchMm);
const flapMm = (made: BagMade): number => made.asked.flap ?? FLAP_SHARE * heightOf(made);

/** The width of the top: where none is known yet, what the closure needs. */
const topMm = (made: BagMade): number => widthOf(made) ?? edgeForMm(made.asked.closure ?? 0);

function topSteps(made: BagMade): Step[] {
  const { asked, needles, rowMm } = made;
  const way = closing(asked);
  const flapRows = Math.max(1, Math.round(flapMm(made) / rowMm));
  const hemMm = hemOf(asked);
  const castOff = isDouble(asked) ? [] : castOffSteps(needles, 'the first row');
  return [
    ...(way === 'flap' ? flapSteps(made, flapRows, isDouble(asked)) : hemMm > 0 ? hemSteps(made, hemMm) : castOff),
    // Where no hem holds it, a cord goes in as far down as a hem would.
    ...(way === 'drawstring' ? drawstringSteps(needles, hemMm, HEM_MM) : []),
    ...(way === 'closure' ? closureSteps(made, topMm(made), asked.closure ?? 0, 0) : []),
    ...(way === 'flap' ? buttonAndLoopSteps(topMm(made), 'the edge of the flap', 'the front') : []),
  ];
}

function steps(made: BagMade): Step[] {
  const { asked, layout, rows, rowMm } = made;
  const double = isDouble(asked);
  const first = double ? shutTail(made) : hemOf(asked) > 0 ? hemTail(made) : looseTail;
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
    ...topSteps(made),
    ...tidySteps(ENDS + (isTube ? 0 : 2), 'height', isTube),
  ];
}

const PUSHED_IN: Step = {
  id: 'fold',
  driver: 'fold',
  count: 1,
  say: say`${key`Push one half into the other`} until the two bottoms meet; the rim folds half way, in one row.`,
};

function assumes({ asked, ...made }: BagMade): readonly Words[] {
  const way = closing(asked);
  const hemMm = hemOf(asked);
  return [
    isDouble(asked) ? say`two layers, the rim a fold` : say`one layer, the bottom shut flat`,
    ...(hemMm === 0 || asked.hem !== HEM_MM ? [] : [say`a hem of ${length(hemMm)} folded in`]),
    ...(way === 'drawstring' ? [say`a drawstring`] : []),
    ...(way === 'flap' ? [say`a flap of ${length(flapMm({ asked, ...made }))}, half of the stitches wide`] : []),
    ...(way === 'closure' && (asked.top === 'flap' || asked.flap !== undefined)
      ? [say`the closure alone, without a flap`]
      : []),
  ];
}

export const uprightPouch = piece({
  id: 'upright-pouch',
  label: 'Upright pouch',
  words: [
    ...['upright pouch', 'upright pouches', 'drawstring pouch', 'drawstring pouches', 'upright bag', 'upright bags'],
    ...['drawstring bag', 'drawstring bags', 'sack', 'sacks', 'draw string bag', 'draw string bags'],
    ...['draw string pouch', 'bag with a drawstring', 'pouch with a drawstring'],
  ],
  asks,
  pair: ['width', 'height'],
  needs: [['height']],
  example: 'a drawstring bag 20 cm tall',
  layouts,
  assumes,
  notions: (made) => {
    const widthMm = widthOf(made);
    switch (closing(made.asked)) {
      case 'drawstring':
        return [drawstringNotion(widthMm && 2 * widthMm)];
      case 'closure':
        return closureNotions(made.asked.closure ?? 0, 0);
      case 'flap':
        return [buttonNotion(topMm(made))];
      default:
        return [];
    }
  },
  steps,
  outline: (made) => {
    const right = made.layout.form === 'round' ? 'fold' : 'seam';
    return rectangle(widthOf(made) ?? 0, heightOf(made), { bottom: 'graft', right, top: 'opening', left: 'fold' });
  },
  traits: ({ asked }) => {
    const way = closing(asked);
    if (way === 'plain') return [];
    return way === 'drawstring' ? ['cord', 'small_parts', 'load'] : ['small_parts'];
  },
});
