import { aspects } from '../aspects.js';
import { castOffSteps, looseTail, shutSteps, shutTail } from '../finishing/joining.js';
import { bodySteps, endSteps, repeated, startSteps, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { PANEL_NEEDLES, TO_AND_FRO } from '../finishing/panel-seam.js';
import { alikeStep, borderStep, evenedStep, joinSteps } from '../finishing/strips.js';
import { type Asked, type Fabric, type Layout, type Made, type Outline, piece, type Step } from '../piece.js';
import { done, type Outcome, type Problem, refused } from '../problems.js';
import { needlesFor } from '../sizing/needles.js';
import { isReached, isWithin, middleMm, mostNeedles, panelRefused } from '../sizing/panels.js';
import { dimensionMm, type Window } from '../sizing/rows.js';
import { SIDES } from '../sizing/sides.js';
import { fewestStrips, MOST_STRIPS, stripsWide } from '../sizing/strips.js';
import { count, length, say, type Words } from '../words.js';

/** A strip of the usual machine, until its needles are known. From memory. */
const USUAL_STRIP_MM = 170;

const asks = {
  length: {
    is: 'window',
    label: 'Length',
    question: 'How long should it be?',
    words: [...aspects.long, ...aspects.tall],
    minMm: 300,
    maxMm: 3000,
    tolerance: { share: 0.03 },
    source: 'tolerance: from memory',
  },
  width: {
    is: 'window',
    label: 'Width',
    question: 'How wide should it be?',
    words: aspects.wide,
    minMm: 300,
    maxMm: 3000,
    tolerance: { share: 0.03 },
    source: 'tolerance: from memory',
  },
  border: {
    is: 'length',
    label: 'Border',
    words: ['border', 'borders', 'edging'],
    beside: aspects.wide,
    minMm: 0,
    maxMm: 100,
    defaultMm: 0,
    source: 'no border unless said',
  },
  strips: { is: 'count', label: 'Strips', words: ['strips', 'strip'], min: 1, max: MOST_STRIPS },
  fabric: {
    is: 'choice',
    label: 'Strips from',
    words: ['fabric'],
    options: [
      { id: 'any', label: 'whichever fits', words: ['whichever fits'] },
      { id: 'tube', label: 'flattened tubes', words: ['tubes', 'tube strips', 'double layer', 'two layers'] },
      {
        id: 'panel',
        label: 'flat panels',
        words: ['panels', 'panel strips', 'flat strips', 'one layer', 'single layer'],
      },
    ],
    default: 'any',
  },
} as const;
type WideAsked = Asked<typeof asks>;
type WideMade = Made<typeof asks>;

/** A tube strip is shut at both ends, which makes a row; its seams take half a stitch of each fold. */
const TUBE = { form: 'round', share: 1 / 2, rows: 1 } as const;
const PANEL = { form: 'flat', share: 1, rows: 0 } as const;
type Way = typeof TUBE | typeof PANEL;

function laid({ length, width, border }: WideAsked, way: Way, parts: number, more: Partial<Layout> = {}): Layout {
  return {
    id: way.form === 'round' ? 'tubes' : 'panels',
    form: way.form,
    parts,
    ...more,
    dimensions: [
      {
        ...SIDES.length,
        axis: 'rows',
        share: 1,
        extra: way.rows,
        fixedMm: 2 * border,
        window: length,
      },
      {
        ...SIDES.width,
        axis: 'needles',
        ...stripsWide(parts, way.share, border),
        window: width,
      },
    ],
  };
}

/** How many strips of a width, unless that was asked: the fewest that reach the least it may be. */
const stripsOf = ({ strips, border }: WideAsked, { loMm }: Window, stripMm: number, seamMm: number): number =>
  strips ?? fewestStrips(loMm - 2 * border, stripMm, seamMm);

/** Flattened tubes of all needles where some number of them comes to the width; else panels, which come to any. */
function layouts(asked: WideAsked, { needles, stitchMm: { round, flat } }: Fabric): Outcome<readonly Layout[]> {
  const { width, border, fabric } = asked;
  if (width === undefined) return refused({ code: 'missing', anyOf: [{ id: 'width', label: asks.width.label }] });
  if (needles === undefined || round === undefined || flat === undefined) {
    const parts = asked.strips ?? fewestStrips(middleMm(width) - 2 * border, USUAL_STRIP_MM, 0);
    if (fabric !== 'panel') return done([laid(asked, TUBE, parts)]);
    const n = flat && needlesFor(width, stripsWide(parts, 1, border), flat);
    return n ? done([laid(asked, PANEL, parts, { needles: n })]) : refused({ code: 'no_stitch_gauge', field: WIDTH });
  }
  const tubes = stripsOf(asked, width, (needles * round) / 2, round);
  const tubesMm = dimensionMm(stripsWide(tubes, TUBE.share, border), needles, round);
  const most = mostNeedles(needles);
  const panels = stripsOf(asked, width, most * flat, 2 * flat);
  const measure = stripsWide(panels, PANEL.share, border);
  const n = needlesFor(width, measure, flat);
  if (fabric === 'tube' || (fabric === 'any' && isWithin(tubesMm, width)))
    return tubes > MOST_STRIPS ? refused(tooMany(tubes)) : done([laid(asked, TUBE, tubes)]);
  if (panels > MOST_STRIPS) return refused(tooMany(panels));
  const because =
    fabric === 'any'
      ? say`panels, since ${count(tubes, 'tube')} of all your needles would come to ${length(tubesMm)}`
      : undefined;
  const used = asked.strips === undefined ? Math.min(n, most) : n;
  const panelsMm = dimensionMm(measure, used, flat);
  if (used <= most && (isWithin(panelsMm, width) || isReached(panelsMm, width)))
    return done([laid(asked, PANEL, panels, { needles: used, because })]);
  const enough = stripsOf({ ...asked, strips: undefined }, width, most * flat, 2 * flat);
  const offers =
    asked.strips === undefined || enough > MOST_STRIPS
      ? []
      : [{ label: say`as many strips as the width takes`, edit: { strips: null } }];
  return refused(panelRefused({ field: WIDTH, window: width, needles: used, measure, stitchMm: flat }, most, offers));
}

const WIDTH = { id: 'width', label: asks.width.label };
const tooMany = (given: number): Problem => ({
  code: 'count_out_of_range',
  field: { id: 'strips', label: asks.strips.label },
  given,
  min: asks.strips.min,
  max: asks.strips.max,
});

/** Finished length and width, in mm; 0 wide while the needles are not known. */
function sizes({ layout, rows, rowMm, needles, stitchMm }: WideMade): { longMm: number; wideMm: number } {
  const [rowsUp, across] = layout.dimensions;
  return {
    longMm: rowsUp ? dimensionMm(rowsUp, rows, rowMm) : 0,
    wideMm: across && needles && stitchMm ? dimensionMm(across, needles, stitchMm) : 0,
  };
}

/** Bars along the edge of a strip: a row each, in tubes also the one that its shut ends make. */
const barsOf = ({ layout, rows, rowsInPiece }: WideMade): number => (layout.form === 'round' ? rowsInPiece : rows);
function oneStrip(made: WideMade): Step[] {
  const isTube = made.layout.form === 'round';
  const left = isTube ? shutTail(made) : looseTail;
  return [
    ...startSteps(made, left, isTube ? { threads: true } : { beside: PANEL_NEEDLES }),
    ...bodySteps(made, isTube ? undefined : TO_AND_FRO),
    ...endSteps(made, left),
    ...(isTube ? shutSteps(made, 2) : castOffSteps(made.needles)),
  ];
}

/** The strips sewn together, half a stitch of each in the folds of a tube. */
function joinedSteps(made: WideMade): Step[] {
  const { parts, form } = made.layout;
  const taken = form === 'round' ? say`along the folds, half a stitch from each` : say`a full stitch from each edge`;
  return [evenedStep, ...joinSteps('strips', { parts, bars: barsOf(made), rowMm: made.rowMm, taken })];
}

/** Stitches of a border all round, corners counted once. */
function borderStitches(made: WideMade): number {
  const { border } = made.asked;
  const { longMm, wideMm } = sizes(made);
  if (!made.stitchMm || wideMm === 0) return 0;
  return Math.round((2 * border * (wideMm + longMm) - 4 * border ** 2) / (made.stitchMm * made.rowMm));
}

function assumes(made: WideMade): readonly Words[] {
  const { asked, layout, needles } = made;
  const isGuess = asked.strips === undefined && needles === undefined;
  const guess = say`${count(layout.parts, 'strip')}, each about ${length(USUAL_STRIP_MM)} wide until your needles are known`;
  return [
    layout.form === 'round'
      ? say`strips from flattened tubes, two layers, both ends shut`
      : say`strips from flat panels, one layer, ends cast off`,
    ...(isGuess ? [guess] : []),
    ...(asked.border > 0 ? [say`a border of ${length(asked.border)} all round, within its size`] : [say`no border`]),
  ];
}

/** The blanket with a line at every seam. */
function outline(made: WideMade): Outline {
  const { longMm, wideMm } = sizes(made);
  const end = made.layout.form === 'round' ? 'graft' : 'edge';
  const whole = rectangle(wideMm, longMm, { bottom: end, right: 'edge', top: end, left: 'edge' });
  const { border } = made.asked;
  const eachMm = (wideMm - 2 * border) / made.layout.parts;
  const seams = Array.from({ length: made.layout.parts - 1 }, (_, i) => Math.max(0, border + (i + 1) * eachMm));
  return {
    ...whole,
    points: [...whole.points, ...seams.flatMap((x) => [[x, border] as const, [x, longMm - border] as const])],
    lines: [...whole.lines, ...seams.map((_, i) => ({ is: 'seam' as const, from: 4 + 2 * i, to: 5 + 2 * i }))],
  };
}

export const stripBlanket = piece({
  id: 'strip-blanket',
  label: 'Blanket of strips',
  words: ['blanket', 'blankets', 'throw', 'throws', 'afghan', 'afghans', 'strip blanket', 'coverlet', 'bedspread'],
  nearestTo: [
    { words: ['sleeping bag', 'sleeping bags', 'sleep sack', 'sleep sacks'], lacks: 'a neck and armholes' },
    { words: ['rug', 'rugs', 'bath mat'], lacks: 'a fabric that bears feet' },
  ],
  asks,
  pair: ['width', 'length'],
  needs: [['length'], ['width']],
  example: 'a blanket 90 cm wide and 110 cm long',
  layouts,
  assumes,
  notions: () => [],
  steps: (made) => {
    const { parts } = made.layout;
    return [
      ...(parts > 1 ? [alikeStep(parts)] : []),
      ...repeated(oneStrip(made), parts),
      ...(parts > 1 ? joinedSteps(made) : []),
      ...(made.asked.border > 0 ? [borderStep(made.asked.border, borderStitches(made))] : []),
      ...tidySteps(2 * parts + 2 * (parts - 1), 'length', made.layout.form === 'round'),
    ];
  },
  outline,
  traits: () => ['bed'],
});
