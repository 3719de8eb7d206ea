import { aspects } from '../aspects.js';
import { graftTail, looseTail, ringGraftSteps } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { type Asked, type Fabric, type Layout, type Made, piece } from '../piece.js';
import { done, type Offer, type Outcome, refused } from '../problems.js';
import { HEAD_ASK, mayBeChild, RING_STRETCH } from '../sizing/heads.js';
import { middleMm } from '../sizing/panels.js';
import type { Window } from '../sizing/rows.js';
import { SIDES } from '../sizing/sides.js';
import { length, range, say, type Words } from '../words.js';

/** Ends left to weave in: of the graft, and of the start of the main yarn. Common practice. */
const ENDS = 2;
/** Once round the neck it is as round as the head, to a quarter more: 560 to 700 mm. Common practice. */
const ONCE_ROUND = { lo: 1, hi: 1.25 };
/** From here on it goes twice round: twice 560 mm. Common practice. */
const TWICE_ROUND_MM = 1120;
/** A half twist lies well from this many times the height; under √3 a strip cannot close with one. From memory. */
const TWIST_RATIO = 3;

const asks = {
  girth: {
    is: 'window',
    label: 'Girth',
    question: 'How far round should it be? Once round is 56 to 70 cm, twice 115 to 140 cm.',
    words: [...aspects.round, ...aspects.long],
    minMm: 300,
    maxMm: 1800,
    tolerance: { share: 0.05 },
    source: 'tolerance: from memory',
  },
  head: HEAD_ASK,
  height: {
    is: 'window',
    label: 'Height',
    words: [...aspects.tall, ...aspects.wide],
    minMm: 20,
    maxMm: 1000,
    tolerance: { share: 0.05 },
    source: 'tolerance: from memory',
  },
  twist: {
    is: 'choice',
    label: 'Twist',
    words: ['twist'],
    options: [
      // Read first, so that `no twist` is not taken for one.
      { id: 'none', label: 'no twist', words: ['no twist', 'without a twist', 'without twist', 'untwisted'] },
      { id: 'half', label: 'a half twist', words: ['half twist', 'twist', 'twisted', 'mobius', 'moebius'] },
    ],
    default: 'none',
  },
} as const;
type RingAsked = Asked<typeof asks>;
type RingMade = Made<typeof asks>;

const heightOf = (needles: number | undefined, stitchMm: number | undefined): number | undefined =>
  needles && stitchMm && (needles * stitchMm) / 2;

/** The girth asked for, else what goes once round over the head. */
function girthWindow({ girth, head }: RingAsked): Window | undefined {
  return girth ?? (head === undefined ? undefined : { loMm: ONCE_ROUND.lo * head, hiMm: ONCE_ROUND.hi * head });
}

/** A girth that a little rounding leaves above the least. */
const offered = (leastMm: number): number => 1.01 * leastMm;

function layouts(asked: RingAsked, fabric: Fabric): Outcome<readonly Layout[]> {
  const window = girthWindow(asked);
  if (window === undefined) return refused({ code: 'missing', anyOf: [] });
  const heightMm = heightOf(fabric.needles, fabric.stitchMm.round);
  const forTwist = asked.twist === 'half' && heightMm ? TWIST_RATIO * heightMm : 0;
  const overHead = (asked.head ?? 0) / RING_STRETCH;
  const leastMm = Math.max(forTwist, overHead);
  if (middleMm(window) < leastMm) {
    return refused({
      code: 'length_out_of_range',
      field: { id: 'girth', label: asks.girth.label },
      givenMm: (window.loMm + window.hiMm) / 2,
      minMm: leastMm,
      maxMm: Math.max(asks.girth.maxMm, leastMm),
      why:
        forTwist > overHead
          ? say`a half twist bunches under ${TWIST_RATIO} times the height, which is ${length(heightMm ?? 0)} here`
          : say`it must pass over a head of ${length(asked.head ?? 0)}`,
      offers: wider(asked, forTwist, middleMm(window) < overHead),
    });
  }
  return done([
    {
      id: 'ring',
      form: 'round',
      parts: 1,
      dimensions: [
        {
          ...SIDES.girth,
          axis: 'rows',
          share: 1,
          extra: 1,
          fixedMm: 0,
          window,
        },
        {
          ...SIDES.height,
          axis: 'needles',
          inPanels: 'one_layer',
          share: 1 / 2,
          extra: 0,
          fixedMm: 0,
          window: asked.height,
        },
      ],
    },
  ]);
}

/** A girth that will do, and the girth without a twist where there is one. */
function wider({ head = 0 }: RingAsked, forTwistMm: number, isUnderHead: boolean): Offer[] {
  const girth = (mm: number): Offer['edit'] => ({ girth: { is: 'length', mm } });
  const enoughMm = Math.max(offered(forTwistMm), head);
  return [
    ...(enoughMm <= asks.girth.maxMm ? [{ label: say`${length(enoughMm)} round`, edit: girth(enoughMm) }] : []),
    ...(forTwistMm > 0
      ? [
          {
            label: say`no twist`,
            edit: { ...(isUnderHead ? girth(head) : {}), twist: { is: 'choice' as const, id: 'none' } },
          },
        ]
      : []),
  ];
}

const girthOf = ({ rowsInPiece, rowMm }: RingMade): number => rowsInPiece * rowMm;

function assumes(made: RingMade): readonly Words[] {
  const { head, girth, twist } = made.asked;
  const girthMm = girthOf(made);
  const over = say`goes over a head of up to ${length(RING_STRETCH * girthMm)}`;
  const fromHead =
    head === undefined
      ? [over]
      : [say`for a head of ${length(head)}`, ...(girth ? [] : [say`${range(head, ONCE_ROUND.hi * head)} round`])];
  const odd = twist === 'half' && (made.needles ?? 0) % 2 === 1;
  return [
    girthMm < TWICE_ROUND_MM ? say`worn once round` : say`worn twice round`,
    ...fromHead,
    ...(odd ? [say`an odd stitch left over by the half twist, eased in`] : []),
  ];
}

export const cowl = piece({
  id: 'cowl',
  label: 'Cowl',
  words: [
    ...[
      'cowl',
      'cowls',
      'snood',
      'snoods',
      'neck warmer',
      'neck warmers',
      'neckwarmer',
      'neckwarmers',
      'gaiter',
      'gaiters',
    ],
    ...['infinity scarf', 'infinity scarves', 'loop scarf', 'loop scarves'],
  ],
  asks,
  pair: ['girth', 'height'],
  needs: [['girth', 'head']],
  example: 'a cowl 62 cm round',
  layouts,
  assumes,
  notions: () => [],
  steps: (made) => [
    ...startSteps(made, graftTail(made), { threads: true }),
    ...bodySteps(made),
    ...endSteps(made, looseTail),
    ...ringGraftSteps(made, { halfTwist: made.asked.twist === 'half' }),
    ...tidySteps(ENDS, 'girth', true),
  ],
  traits: (made) => {
    const headMm = made.asked.head ?? girthOf(made) / ONCE_ROUND.lo;
    return mayBeChild(headMm) ? ['neck_loop', 'worn_on_head'] : [];
  },
  outline: (made) =>
    rectangle(girthOf(made) / 2, heightOf(made.needles, made.stitchMm) ?? 0, {
      bottom: 'fold',
      right: 'fold',
      top: 'fold',
      left: 'graft',
    }),
});
