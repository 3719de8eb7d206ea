import { aspects } from '../aspects.js';
import { buttonAndLoopSteps, buttonNotion } from '../finishing/buttons.js';
import { closureLength, closureNotions, closureSteps } from '../finishing/closing.js';
import { coverSteps } from '../finishing/covers.js';
import { edgeClosureProblems, longestInEdgeMm } from '../finishing/edge-closure.js';
import { tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { type Asked, type Fabric, type Layout, type Made, piece, type Step } from '../piece.js';
import { done, type Offer, type Outcome, type Problem, refused } from '../problems.js';
import { isNear, KEEPS, lays, ringed, type Sides } from '../sizing/covers.js';
import { madeSizeMm } from '../sizing/made-size.js';
import { middleMm, panelRefused } from '../sizing/panels.js';
import { dimensionMm, type Window } from '../sizing/rows.js';
import { length, say, type Words } from '../words.js';

/** Ends left to weave in of each part, and of a closure's thread. Common practice. */
const ENDS = 2;
const CLOSURE_ENDS = 4;
const asks = {
  width: {
    is: 'length',
    label: 'Width of the form',
    question: 'How wide is the form, by its label?',
    words: [...aspects.wide, ...aspects.long, 'form', 'pad'],
    minMm: 100,
    maxMm: 1200,
  },
  height: {
    is: 'length',
    label: 'Height of the form',
    words: aspects.tall,
    minMm: 100,
    maxMm: 1200,
  },
  own: {
    is: 'window',
    label: 'Width of the cover',
    words: ['finished'],
    beside: aspects.wide,
    minMm: 100,
    maxMm: 1200,
    tolerance: { share: 0.025 },
    source: 'tolerance: common practice',
  },
  closure: {
    is: 'length',
    label: 'Closure',
    words: aspects.closure,
    beside: aspects.long,
    minMm: 50,
    maxMm: 1180,
  },
  closing: {
    is: 'choice',
    label: 'Closing',
    words: ['closing'],
    options: [
      { id: 'closure', label: 'a closure', words: ['with a closure', 'with a zip', 'with a zipper'] },
      { id: 'buttons', label: 'buttons', words: ['buttons', 'button', 'buttoned'] },
    ],
    default: 'closure',
  },
  opening: {
    is: 'choice',
    label: 'Opening',
    words: ['opening'],
    options: [
      { id: 'any', label: 'wherever it fits', words: ['opening anywhere'] },
      {
        id: 'width',
        label: 'along the width',
        words: ['opening along the width', 'along the width', 'opening on top'],
      },
      {
        id: 'height',
        label: 'along the height',
        words: ['opening along the height', 'along the height', 'opening at the side'],
      },
    ],
    default: 'any',
  },
} as const;
type CoverAsked = Asked<typeof asks>;
type CoverMade = Made<typeof asks>;

const under = (labelMm: number): Window => ({ loMm: KEEPS.lo * labelMm, hiMm: KEEPS.hi * labelMm });

/** True for a width of the cover that does not suit its form. */
const isOff = ({ width, own }: CoverAsked): boolean =>
  own !== undefined && width !== undefined && !isNear(middleMm(own), width);

/** Both sides of the form and the windows of the cover; a form given by one side alone is square. */
function sidesOf(asked: CoverAsked): Sides | undefined {
  const { width, height, own } = asked;
  const wideMm = width ?? (own && middleMm(own) / Math.sqrt(KEEPS.lo * KEEPS.hi));
  if (wideMm === undefined) return undefined;
  const tallMm = height ?? wideMm;
  return {
    width: { labelMm: wideMm, window: own === undefined || isOff(asked) ? under(wideMm) : own },
    height: { labelMm: tallMm, window: under(tallMm) },
  };
}

/** The tube or flat ring that comes nearest to the form, with its opening where it must lie and long enough. */
function layouts(asked: CoverAsked, fabric: Fabric): Outcome<readonly Layout[]> {
  const sides = sidesOf(asked);
  if (sides === undefined) return refused({ code: 'missing', anyOf: [{ id: 'width', label: asks.width.label }] });
  const { flat } = fabric.stitchMm;
  if (flat === undefined)
    return refused({ code: 'no_stitch_gauge', field: { id: 'height', label: asks.height.label } });
  const found = lays(sides, fabric, flat).filter(({ opens }) => ['any', opens].includes(asked.opening));
  const taking = found.filter(({ edgeMm }) => edgeClosureProblems(asked.closure, edgeMm, asks.closure).length === 0);
  if (found.length === 0) return refused(unfit(asked, sides, fabric, flat));
  if (asked.width !== undefined && asked.own !== undefined && isOff(asked))
    return refused(offForm(asked.width, asked.own));
  if (taking.length > 0) return done(taking.map(({ layout }) => layout));
  const longest = found.reduce((a, b) => (b.edgeMm > a.edgeMm ? b : a));
  return refused(...edgeClosureProblems(asked.closure, longest.edgeMm, asks.closure));
}

function offForm(labelMm: number, own: Window): Problem {
  const { loMm, hiMm } = under(labelMm);
  return {
    code: 'length_out_of_range',
    field: { id: 'own', label: asks.own.label },
    givenMm: middleMm(own),
    minMm: loMm,
    maxMm: hiMm,
    why: say`a cover is 0 to 5% narrower than its form`,
    offers: [
      { label: say`0 to 5% under the form, with the longest closure that fits`, edit: { own: null, closure: null } },
    ],
  };
}

/** No way of laying it fits: the form that flat rings would make. */
function unfit({ opening }: CoverAsked, sides: Sides, fabric: Fabric, stitchMm: number): Problem {
  const along = opening === 'height' ? 'height' : 'width';
  const across = along === 'width' ? 'height' : 'width';
  const way = ringed(sides, along, fabric.needles, stitchMm);
  const most = Math.min(way.needles, way.most);
  const mm = dimensionMm(way.measure, most, stitchMm);
  const fits = most >= 3 && mm >= asks[across].minMm && mm <= asks[across].maxMm;
  const edit: Offer['edit'] = {
    [across]: { is: 'length', mm },
    closure: null,
    ...(across === 'width'
      ? { own: null, height: { is: 'length', mm: Math.min(sides.height.labelMm, asks.height.maxMm) } }
      : {}),
  };
  const offers = fits ? [{ label: say`a form ${length(mm)} ${across === 'width' ? 'wide' : 'tall'}`, edit }] : [];
  const field = { id: across, label: asks[across].label };
  return panelRefused({ field, ...way, stitchMm }, way.most, offers);
}

/** Rows lie along the opening of a folded ring, and stand on that of an upright tube. */
function opensOf({ layout }: CoverMade): 'width' | 'height' {
  const isRows = layout.dimensions[0]?.id === 'width';
  return isRows === (layout.id !== 'upright') ? 'width' : 'height';
}

const edgeOf = (made: CoverMade): number => madeSizeMm(made, opensOf(made));

/** The closure asked for, else the longest stock length that the opening takes; none with buttons. */
const closureOf = (made: CoverMade): number | undefined =>
  made.asked.closure ?? (made.asked.closing === 'buttons' ? undefined : longestInEdgeMm(edgeOf(made)));

function closingSteps(made: CoverMade): Step[] {
  const closureMm = closureOf(made);
  return closureMm === undefined
    ? buttonAndLoopSteps(edgeOf(made), 'one edge of the opening', 'the other edge')
    : closureSteps(made, edgeOf(made), closureMm, 0);
}

function assumes(made: CoverMade): readonly Words[] {
  const { asked, layout } = made;
  const closureMm = closureOf(made);
  const fit = asked.own === undefined ? [say`0 to 5% smaller than the form, so that it sits full`] : [];
  const square = asked.height === undefined ? [say`as tall as it is wide`] : [];
  const closure =
    closureMm === undefined || asked.closure !== undefined
      ? []
      : [say`a closure of ${closureLength(closureMm)}, the longest stock length that fits`];
  const buttons =
    closureMm === undefined && asked.closing === 'closure' ? [say`buttons, since no stock closure fits`] : [];
  return [
    ...fit,
    ...square,
    ...closure,
    ...buttons,
    say`the opening along the ${opensOf(made)}, ${layout.id === 'sideways' ? 'two layers' : 'one layer'} of fabric`,
  ];
}

export const cushionCover = piece({
  id: 'cushion-cover',
  label: 'Cushion cover',
  words: [
    ...['cushion cover', 'cushion covers', 'pillow cover', 'pillow covers', 'pillowcase', 'pillowcases'],
    ...['throw pillow', 'throw pillows', 'throw cushion', 'throw cushions', 'pillow case', 'pillow cases'],
    ...['bolster cover', 'bolster covers', 'cushion', 'cushions', 'pillow', 'pillows', 'bolster', 'bolsters'],
  ],
  goesOn: ['insert', 'inserts', 'inner', 'inners', 'forms', 'pads'],
  asks,
  pair: ['width', 'height'],
  needs: [['width', 'own']],
  example: 'a cushion cover for a form 30 by 30 cm',
  layouts,
  assumes,
  notions: (made) => {
    const { asked } = made;
    const closureMm = closureOf(made);
    const wideMm = asked.width ?? madeSizeMm(made, 'width');
    return [
      {
        id: 'form',
        count: 1,
        one: 'cushion form',
        after: say` of ${length(wideMm)} by ${length(asked.height ?? wideMm)}`,
      },
      ...(closureMm === undefined ? [buttonNotion(edgeOf(made))] : closureNotions(closureMm, 0)),
    ];
  },
  steps: (made) => [
    ...coverSteps(made, edgeOf(made)),
    ...closingSteps(made),
    ...tidySteps(ENDS * made.layout.parts + CLOSURE_ENDS, opensOf(made), made.layout.form === 'round'),
  ],
  outline: (made) => {
    const [wideMm, tallMm] = [madeSizeMm(made, 'width'), madeSizeMm(made, 'height')];
    const isUpright = made.layout.id === 'upright';
    const [shut, side] = isUpright ? (['graft', 'fold'] as const) : (['seam', 'graft'] as const);
    return opensOf(made) === 'width'
      ? rectangle(wideMm, tallMm, { bottom: shut, right: 'fold', top: 'opening', left: side })
      : rectangle(wideMm, tallMm, { bottom: side, right: 'opening', top: 'fold', left: shut });
  },
  traits: () => ['bed', 'small_parts'],
});
