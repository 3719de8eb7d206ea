import { aspects } from '../aspects.js';
import { further } from '../finishing/further.js';
import { looseTail } from '../finishing/joining.js';
import { bodySteps, countersStep, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { strapMm } from '../finishing/strap.js';
import { LOOSE_TAIL_MM } from '../finishing/tails.js';
import { type Asked, type Layout, type Made, piece, type Step } from '../piece.js';
import { done, type Outcome, refused } from '../problems.js';
import type { Window } from '../sizing/rows.js';
import { count, key, length, say, type Words } from '../words.js';

/** Half the width of the window, as a share of the length. From memory. */
const TOLERANCE = 0.05;

const asks = {
  length: {
    is: 'window',
    label: 'Length',
    question: 'How long should the cord be?',
    words: [...aspects.long, ...aspects.tall],
    minMm: 20,
    maxMm: 5000,
    tolerance: { share: TOLERANCE },
    source: 'tolerance: from memory',
  },
  drop: { is: 'length', label: 'Carry drop', words: ['drop', 'drops'], beside: aspects.long, minMm: 80, maxMm: 800 },
  width: {
    is: 'length',
    label: 'Width it hangs on',
    question: 'How wide is what it hangs on?',
    words: aspects.wide,
    minMm: 40,
    maxMm: 1250,
  },
  use: {
    is: 'choice',
    label: 'Use',
    words: ['use'],
    options: [
      { id: 'tie', label: 'a tie, laid flat', words: ['tie', 'ties', 'laid flat'] },
      { id: 'strap', label: 'a strap, under load', words: ['strap', 'straps', 'handle', 'handles'] },
    ],
    default: 'tie',
  },
  stretch: { is: 'percent', label: 'Stretch under its load', words: ['stretch', 'stretches'], min: 0, max: 100 },
  ends: {
    is: 'choice',
    label: 'Ends',
    words: ['ends', 'end'],
    options: [
      { id: 'plain', label: 'as they are', words: ['plain ends'] },
      { id: 'rings', label: 'through rings', words: ['through rings', 'ring', 'rings'] },
      { id: 'knots', label: 'knotted', words: ['knots', 'knotted', 'knot'] },
    ],
    default: 'plain',
  },
  needles: { is: 'count', label: 'Needles', words: ['needles', 'needle'], min: 3, max: 8 },
} as const;
type CordAsked = Asked<typeof asks>;
type CordMade = Made<typeof asks>;

/** Needles of a cord where none were named. From memory: 3 to 6. */
const NEEDLES = 4;
/** A strap under its load is longer than at rest by this many per cent; a tie is not. From memory. */
const STRAP_STRETCH = 15;
/** What both ends take: turned through rings, or knotted. From memory. */
const THROUGH_RINGS_MM = 2 * 40;
const KNOTTED_MM = 2 * 50;

/** A drop is carried, and hangs from rings. */
const isStrap = ({ use, drop, length }: CordAsked): boolean =>
  use === 'strap' || (length === undefined && drop !== undefined);
const endsOf = ({ ends, drop, length }: CordAsked): string =>
  ends === 'plain' && length === undefined && drop !== undefined ? 'rings' : ends;
const endsMm = (ends: string): number => ({ rings: THROUGH_RINGS_MM, knots: KNOTTED_MM })[ends] ?? 0;
const stretchPercent = (asked: CordAsked): number => asked.stretch ?? (isStrap(asked) ? STRAP_STRETCH : 0);

/** The whole cord under its load: the length that shows and what its ends take, or the strap for a drop. */
function wholeWindow(asked: CordAsked): Outcome<Window> {
  const { length: shown, drop, width } = asked;
  const ends = endsMm(endsOf(asked));
  if (shown !== undefined) return done({ loMm: shown.loMm + ends, hiMm: shown.hiMm + ends });
  if (drop === undefined || width === undefined)
    return refused({ code: 'missing', anyOf: [{ id: 'width', label: asks.width.label }] });
  const wholeMm = strapMm(drop, width) - THROUGH_RINGS_MM + ends;
  return done({ loMm: wholeMm * (1 - TOLERANCE), hiMm: wholeMm * (1 + TOLERANCE) });
}

function layouts(asked: CordAsked): Outcome<readonly Layout[]> {
  const window = wholeWindow(asked);
  if (!window.ok) return window;
  return done([
    {
      id: 'cord',
      form: 'round',
      parts: 1,
      needles: asked.needles ?? NEEDLES,
      dimensions: [
        {
          id: 'length',
          figure: 'lengthMm',
          label: 'Length',
          adjective: 'long with its ends',
          axis: 'rows',
          share: 1 + stretchPercent(asked) / 100,
          extra: 0,
          fixedMm: 0,
          window: window.value,
        },
      ],
    },
  ]);
}

function assumes({ asked, rows, rowMm }: CordMade): Words[] {
  const stretch = stretchPercent(asked);
  const ends = endsOf(asked);
  const taken = say`${length(endsMm(ends))} of it ${ends === 'knots' ? 'in the knots' : 'turned through the rings'}`;
  const told =
    stretch === 0
      ? say`laid flat, no stretch`
      : say`${stretch}% longer under its load than the ${length(rows * rowMm)} at rest${asked.stretch === undefined ? ': hang the load from a piece of cord and tell me the per cent' : ''}`;
  return [
    ...(asked.needles === undefined ? [say`${NEEDLES} needles`] : []),
    say`rows of the gauge you measured: a cord on few needles has its own, so measure one`,
    told,
    ...(endsMm(ends) > 0 ? [taken] : []),
    ...(asked.length !== undefined && asked.drop !== undefined ? [say`the length you gave, whatever the drop`] : []),
  ];
}

function steps(made: CordMade): Step[] {
  const { asked, needles = NEEDLES } = made;
  const ends = endsOf(asked);
  const joined: Record<string, Step[]> = {
    rings: [
      {
        id: 'rings',
        driver: 'ring',
        count: 2,
        say: say`Turn ${length(THROUGH_RINGS_MM / 2)} of ${key`each end through its ring`}; ${key`sew it down`}.`,
      },
    ],
    knots: [
      {
        id: 'knots',
        driver: 'fold',
        count: 2,
        say: say`${key`Knot each end`}, ${length(KNOTTED_MM / 2)} of it in the knot.`,
      },
    ],
  };
  const tried: Step[] = isStrap(asked)
    ? [
        {
          id: 'try',
          driver: 'check',
          count: 1,
          say: say`${key`Hang twice the load on it`} and look at the seams; if it is too thin for that, knit it double.`,
        },
      ]
    : [];
  const tailYarn = [{ role: 'main' as const, lengthMm: LOOSE_TAIL_MM }];
  return [
    {
      id: 'set_up',
      driver: 'set_up',
      count: 1,
      yarn: tailYarn,
      say: say`${key`Cast on ${count(needles, 'needle')}`} with the main yarn, a weight right on it; ${looseTail.say}.`,
    },
    countersStep(needles, false),
    ...bodySteps(made),
    {
      ...further('cut_main', say`${key`Cut`} the yarn; ${looseTail.say}.`),
      yarn: tailYarn,
    },
    {
      id: 'gather',
      driver: 'gather',
      count: needles,
      say: say`Lift the ${count(needles, 'loop')} off; ${key`thread the tail through all ${count(needles, 'loop')}`} and draw it up.`,
    },
    further('hang', say`${key`Hang the cord by one end`} until it has stopped turning.`),
    ...(joined[ends] ?? []),
    ...tried,
    ...tidySteps(2, 'length'),
  ];
}

export const tieCord = piece({
  id: 'tie-cord',
  label: 'Cord',
  words: ['cord', 'cords', 'strap cord', 'strap cords', 'i-cord', 'i-cords', 'icord', 'icords', 'i cord', 'i cords'],
  sizedWords: ['tie', 'ties'],
  asks,
  pair: ['length'],
  needs: [['length', 'drop']],
  example: 'a cord 60 cm long',
  layouts,
  assumes,
  notions: ({ asked }) =>
    endsOf(asked) === 'rings' ? [{ id: 'rings', count: 2, one: 'ring or swivel', many: 'rings or swivels' }] : [],
  steps,
  outline: ({ rows, rowMm, needles, stitchMm }) =>
    rectangle(rows * rowMm, ((needles ?? NEEDLES) * (stitchMm ?? 0)) / 2, {
      bottom: 'fold',
      right: 'gather',
      top: 'fold',
      left: 'edge',
    }),
  traits: ({ asked }) => [
    ...(isStrap(asked) ? (['long_loop', 'load'] as const) : (['cord'] as const)),
    ...(endsOf(asked) === 'rings' ? (['small_parts'] as const) : []),
  ],
});
