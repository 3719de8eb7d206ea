import { aspects } from '../aspects.js';
import { elasticMm, elasticNotion, elasticStep } from '../finishing/elastic.js';
import { gatherSteps, gatherTail } from '../finishing/gathering.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { pompomStep } from '../finishing/pompom.js';
import { type Asked, type Fabric, type Layout, type Made, piece, type Step } from '../piece.js';
import { done, type Outcome, refused } from '../problems.js';
import { HEAD_ASK } from '../sizing/heads.js';
import {
  BRIM_ASK,
  brimProblems,
  DEPTH_ASK,
  depthWindow,
  ELASTIC_ASK,
  fitAssumed,
  forThatHead,
  girthFitting,
  TOP_ASK,
} from '../sizing/headwear.js';
import { SIDES } from '../sizing/sides.js';
import { layerMm } from '../sizing/thickness.js';
import { key, length, say } from '../words.js';

/** Ends left to weave in: of either crown. Common practice. */
const ENDS = 2;
/** Rows that the fold of the tube into itself takes. Common practice: one or two. */
const FOLD_ROWS = 1;

const asks = {
  head: { ...HEAD_ASK, words: [...aspects.head, ...aspects.round] },
  depth: DEPTH_ASK,
  brim: BRIM_ASK,
  top: TOP_ASK,
  elastic: ELASTIC_ASK,
} as const;
type DoubleAsked = Asked<typeof asks>;
type DoubleMade = Made<typeof asks>;

/** What the inner layer adds to the girth to be gone round: the two lie a thickness apart from the head on average. */
const betweenMm = (stitchMm: number | undefined): number =>
  stitchMm === undefined ? 0 : 2 * Math.PI * layerMm(stitchMm);

function layouts(asked: DoubleAsked, { needles, stitchMm }: Fabric): Outcome<readonly Layout[]> {
  const between = betweenMm(stitchMm.round);
  const girthMm = needles && stitchMm.round && needles * stitchMm.round;
  const offers = girthMm === undefined ? [] : forThatHead(girthMm, between, HEAD_ASK);
  const window = depthWindow(asked);
  const along = { loMm: 2 * (window.loMm + asked.brim), hiMm: 2 * (window.hiMm + asked.brim) };
  const headMm = asked.head && asked.head + between;
  const girth = girthFitting({ headMm, needles, stitchMm, along }, offers);
  if (!girth.ok) return girth;
  const brims = brimProblems(asked, (window.loMm + window.hiMm) / 2);
  if (brims.length > 0) return refused(...brims);
  return done([
    {
      id: 'round',
      form: 'round',
      parts: 1,
      dimensions: [
        {
          ...SIDES.depth,
          axis: 'rows',
          share: 1 / 2,
          extra: -FOLD_ROWS,
          fixedMm: 0 - asked.brim,
          window,
        },
        {
          ...SIDES.girth,
          axis: 'needles',
          share: 1,
          extra: 0,
          fixedMm: 0,
          window: girth.value,
        },
      ],
    },
  ]);
}

const girthOf = ({ needles, stitchMm }: DoubleMade): number | undefined => needles && stitchMm && needles * stitchMm;
const depthOf = ({ rowsInPiece, rowMm, asked }: DoubleMade): number => (rowsInPiece * rowMm) / 2 - asked.brim;

/** One half of the tube pushed into the other, folded at its middle row. */
function pushedSteps({ asked, rows }: DoubleMade): Step[] {
  const middle = Math.ceil(rows / 2);
  const turnUp = say`${key`Turn up ${length(asked.brim)}`} of the fold for the brim; all four layers lie there.`;
  return [
    {
      id: 'push_in',
      driver: 'fold',
      count: 1,
      say: say`${key`Push one half into the other`} until the crowns meet and ${key`row ${middle} lies on the fold`}.`,
    },
    {
      id: 'tack',
      driver: 'fold',
      count: 1,
      say: say`${key`Tack the two crowns together`} with an end, so that they do not drift apart.`,
    },
    ...(asked.brim === 0 ? [] : [{ id: 'fold', driver: 'fold' as const, count: 1, say: turnUp }]),
  ];
}

/** The middle row marked while it can be counted. */
const middleStep = ({ rows }: DoubleMade): Step => ({
  id: 'mark_fold',
  driver: 'fold',
  count: 1,
  say: say`Count to row ${Math.ceil(rows / 2)} by the markers; run a ${key`contrast thread round row ${Math.ceil(rows / 2)}`}: the tube folds there.`,
});

export const doubleHat = piece({
  id: 'double-hat',
  label: 'Double hat',
  words: [
    ...['double hat', 'double hats', 'doubled hat', 'double layer hat', 'double layer hats', 'lined hat', 'lined hats'],
    ...['double beanie', 'double beanies', 'double layer beanie', 'lined beanie', 'lined beanies'],
  ],
  asks,
  pair: ['head', 'depth'],
  needs: [['head']],
  example: 'a double hat for a 50 cm head',
  layouts,
  assumes: (made) => [
    ...fitAssumed(made.asked, girthOf(made), betweenMm(made.stitchMm)),
    say`one row taken by the fold`,
    ...(made.stitchMm === undefined ? [] : [say`layers ${layerMm(made.stitchMm)} mm thick`]),
  ],
  notions: (made) =>
    made.asked.elastic === 'with' ? [elasticNotion(elasticMm(made.asked.head ?? girthOf(made) ?? 0))] : [],
  steps: (made) => {
    const crown = gatherTail(girthOf(made));
    return [
      ...startSteps(made, crown),
      ...bodySteps(made),
      ...endSteps(made, crown),
      middleStep(made),
      ...gatherSteps(made, say`the last row`),
      ...gatherSteps(made, say`the first row`).map((step) => ({ ...step, id: `${step.id}_first` })),
      ...pushedSteps(made),
      ...(made.asked.elastic === 'with' ? [elasticStep('the fold')] : []),
      ...(made.asked.top === 'pompom' ? [pompomStep] : []),
      ...tidySteps(ENDS, 'depth', true),
    ];
  },
  traits: ({ asked }) => ['worn_on_head', ...(asked.top === 'pompom' ? ['small_parts' as const] : [])],
  outline: (made) =>
    rectangle((girthOf(made) ?? 0) / 2, depthOf(made), { bottom: 'fold', right: 'fold', top: 'gather', left: 'fold' }),
});
