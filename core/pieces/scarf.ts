import { aspects } from '../aspects.js';
import { type Fringe, fringeNotion, fringeSteps, tasselsAlong } from '../finishing/fringe.js';
import { gatherSteps, gatherTail } from '../finishing/gathering.js';
import { castOffSteps, looseTail, shutSteps, shutTail } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, type Tail, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { type Asked, type Layout, type Made, piece, type Step } from '../piece.js';
import { done, type Outcome } from '../problems.js';
import { SIDES } from '../sizing/sides.js';
import { count, length, range, say, type Words } from '../words.js';

/** Strands a tassel, and how far apart tassels are: about 4 stitches. Common practice. */
const STRANDS = 3;
const APART_MM = 30;
/** What hangs at either end where a fringe is wanted. Common practice, no source. */
const FRINGE_MM = 120;
/** What adults wear. Common practice. */
const ADULT_MM = { lo: 1400, hi: 1800 };
/** Shorter than this it is taken for a child's. From memory. */
const CHILD_MM = 1200;
/** It grows by this share in wear. From memory. */
const WEAR_PERCENT = 5;

const asks = {
  length: {
    is: 'window',
    label: 'Length',
    question: 'How long should it be? Adults wear 140 to 180 cm.',
    words: [...aspects.long, ...aspects.tall],
    minMm: 300,
    maxMm: 4000,
    tolerance: { share: 0.05 },
    source: 'tolerance: from memory',
  },
  width: {
    is: 'window',
    label: 'Width',
    words: aspects.wide,
    minMm: 20,
    maxMm: 1000,
    tolerance: { share: 0.05 },
    source: 'tolerance: from memory',
  },
  ends: {
    is: 'choice',
    label: 'Ends',
    words: ['ends', 'end'],
    options: [
      { id: 'shut', label: 'shut flat', words: ['shut', 'closed', 'closed ends', 'ends closed', 'ends shut'] },
      { id: 'gathered', label: 'gathered', words: ['gathered', 'gathered ends', 'ends gathered'] },
      { id: 'cast_off', label: 'cast off', words: ['cast off', 'bound off', 'bind off'] },
    ],
    default: 'shut',
  },
  fringe: {
    is: 'length',
    label: 'Fringe',
    words: ['fringe', 'fringes', 'fringed', 'tassels'],
    beside: aspects.long,
    minMm: 20,
    maxMm: 400,
    usualMm: FRINGE_MM,
    source: 'usual: common practice, no source',
  },
  strands: { is: 'count', label: 'Strands a tassel', words: ['strands', 'strand'], min: 1, max: 20 },
  apart: {
    is: 'length',
    label: 'Tassels apart',
    words: ['apart', 'spacing'],
    minMm: 5,
    maxMm: 200,
    defaultMm: APART_MM,
    source: 'common practice',
  },
} as const;
type LongAsked = Asked<typeof asks>;
type LongMade = Made<typeof asks>;

/** Each end shut flat makes half a row. */
const rowsAdded = ({ ends }: LongAsked): number => (ends === 'shut' ? 1 : 0);

function layouts(asked: LongAsked): Outcome<readonly Layout[]> {
  return done([
    {
      id: 'round',
      form: 'round',
      parts: 1,
      dimensions: [
        {
          ...SIDES.length,
          axis: 'rows',
          share: 1,
          extra: rowsAdded(asked),
          fixedMm: 0,
          window: asked.length,
        },
        {
          ...SIDES.width,
          axis: 'needles',
          inPanels: 'one_layer',
          share: 1 / 2,
          extra: 0,
          fixedMm: 0,
          window: asked.width,
        },
      ],
    },
  ]);
}

const lengthOf = ({ rowsInPiece, rowMm }: LongMade): number => rowsInPiece * rowMm;
const widthOf = ({ needles, stitchMm }: LongMade): number | undefined =>
  needles && stitchMm && (needles * stitchMm) / 2;

/** One tassel at a gathered end; along others as many as the width takes, which may not be known yet. */
function fringeOf(made: LongMade): Fringe | undefined {
  const { fringe, strands = STRANDS, apart, ends, width } = made.asked;
  const wideMm = widthOf(made) ?? (width && (width.loMm + width.hiMm) / 2);
  if (fringe === undefined || (wideMm === undefined && ends !== 'gathered')) return undefined;
  return { tassels: ends === 'gathered' ? 1 : tasselsAlong(wideMm ?? 0, apart), strands, hangsMm: fringe };
}

/** The tail at each end, and how the ends are closed. */
function ends(made: LongMade): { left: Tail; closed: Step[] } {
  const { needles, stitchMm, asked } = made;
  switch (asked.ends) {
    case 'gathered':
      return {
        left: gatherTail(needles && stitchMm && needles * stitchMm),
        closed: [...gatherSteps(made, say`the first row`), ...gatherSteps(made, say`the last row`)],
      };
    case 'cast_off':
      return { left: looseTail, closed: castOffSteps(needles) };
    default:
      return { left: shutTail(made), closed: shutSteps(made, 2) };
  }
}

function assumes(made: LongMade): readonly Words[] {
  const { asked } = made;
  const fringe = fringeOf(made);
  const lengthMm = lengthOf(made);
  const size = say`adults wear ${range(ADULT_MM.lo, ADULT_MM.hi)}`;
  const tassels =
    fringe === undefined
      ? []
      : [
          say`${count(fringe.tassels, 'tassel')} an end of ${count(fringe.strands, 'strand')}, with which it is ${length(lengthMm + 2 * fringe.hangsMm)} long`,
        ];
  return [
    ...(asked.ends === 'shut' ? [say`both ends shut flat`] : []),
    ...(asked.ends === 'cast_off' ? [say`cast off ends, which roll a little`] : []),
    ...(lengthMm < ADULT_MM.lo || lengthMm > ADULT_MM.hi ? [size] : []),
    ...(asked.fringe !== undefined && fringe === undefined
      ? [say`a fringe to be counted once the width is known, a tassel every ${length(asked.apart)}`]
      : tassels),
    say`worn, it grows about ${WEAR_PERCENT}% longer`,
  ];
}

export const scarf = piece({
  id: 'scarf',
  label: 'Scarf',
  words: ['scarf', 'scarfs', 'scarves', 'muffler', 'mufflers'],
  nearestTo: [{ words: ['shawl', 'shawls', 'shawlette', 'kerchief'], lacks: 'rows that grow wider' }],
  asks,
  pair: ['length', 'width'],
  needs: [['length']],
  example: 'a scarf 150 cm long',
  layouts,
  assumes,
  notions: (made) => {
    const fringe = fringeOf(made);
    return fringe === undefined ? [] : [fringeNotion(fringe)];
  },
  steps: (made) => {
    const { left, closed } = ends(made);
    const fringe = fringeOf(made);
    const isShut = made.asked.ends === 'shut';
    return [
      ...startSteps(made, left, { threads: isShut }),
      ...bodySteps(made),
      ...endSteps(made, left),
      ...closed,
      ...(fringe === undefined ? [] : fringeSteps(fringe)),
      ...tidySteps(2, 'length', isShut),
    ];
  },
  outline: (made) => {
    const shown = { shut: 'graft', gathered: 'gather', cast_off: 'edge' } as const;
    const end = shown[made.asked.ends as keyof typeof shown];
    return rectangle(widthOf(made) ?? 0, lengthOf(made), { bottom: end, right: 'fold', top: end, left: 'fold' });
  },
  traits: (made) => (lengthOf(made) < CHILD_MM ? ['neck_loop'] : []),
});
