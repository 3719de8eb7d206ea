import { aspects } from '../aspects.js';
import { elasticMm, elasticNotion, elasticStep } from '../finishing/elastic.js';
import { gatherFoldSteps, gatherSteps, gatherTail } from '../finishing/gathering.js';
import { hemTail, openedStep, sewnDownSteps } from '../finishing/hemming.js';
import { graftTail, looseTail, ringGraftSteps } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { pompomStep } from '../finishing/pompom.js';
import { type Asked, type Dimension, type Fabric, type Layout, type Made, piece, type Step } from '../piece.js';
import { done, type Offer, type Outcome, refused } from '../problems.js';
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
import { count, key, length, range, say, type Words } from '../words.js';

/** Ends left to weave in: of the crown and of the brim. Common practice. */
const ENDS = 2;
/** Sideways, rows make the girth: 5 to 15 % less round than the head. Common practice. */
const SIDEWAYS = { lo: 0.85, hi: 0.95 };

const asks = {
  head: { ...HEAD_ASK, words: [...aspects.head, ...aspects.round] },
  depth: DEPTH_ASK,
  brim: BRIM_ASK,
  lay: {
    is: 'choice',
    label: 'Lay',
    words: ['lay'],
    options: [
      { id: 'upright', label: 'upright, needles make the girth', words: ['upright'] },
      { id: 'sideways', label: 'sideways, rows make the girth', words: ['sideways'] },
    ],
    default: 'upright',
  },
  top: TOP_ASK,
  elastic: ELASTIC_ASK,
} as const;
type HatAsked = Asked<typeof asks>;
type HatMade = Made<typeof asks>;

const isSideways = ({ lay }: HatAsked): boolean => lay === 'sideways';

/** The turn-up: sideways only one that was asked for, since there the needles make the depth. */
const brimOf = (asked: HatAsked): number => (isSideways(asked) && asked.brim === BRIM_ASK.defaultMm ? 0 : asked.brim);

function layouts(asked: HatAsked, fabric: Fabric): Outcome<readonly Layout[]> {
  const dimensions = isSideways(asked) ? sideways(asked, fabric) : upright(asked, fabric);
  return dimensions.ok ? done([{ id: asked.lay, form: 'round', parts: 1, dimensions: dimensions.value }]) : dimensions;
}

function upright(asked: HatAsked, { needles, stitchMm }: Fabric): Outcome<Dimension[]> {
  const girthMm = needles && stitchMm.round && needles * stitchMm.round;
  const window = depthWindow(asked);
  const instead: Offer = {
    label: say`knitted sideways, where rows make the girth and needles the depth`,
    edit: { lay: { is: 'choice', id: 'sideways' }, depth: null, brim: null },
  };
  const others = girthMm === undefined ? [] : forThatHead(girthMm, 0, HEAD_ASK);
  const along = { loMm: window.loMm + asked.brim, hiMm: window.hiMm + asked.brim };
  const girth = girthFitting({ headMm: asked.head, needles, stitchMm, along }, [instead, ...others]);
  if (!girth.ok) return girth;
  const brims = brimProblems(asked, (window.loMm + window.hiMm) / 2);
  if (brims.length > 0) return refused(...brims);
  return done([
    { ...SIDES.depth, axis: 'rows', share: 1, extra: 0, fixedMm: 0 - asked.brim, window },
    { ...SIDES.girth, axis: 'needles', share: 1, extra: 0, fixedMm: 0, window: girth.value },
  ]);
}

/** A ring with one fold drawn together at the crown. */
function sideways(asked: HatAsked, { needles, stitchMm }: Fabric): Outcome<Dimension[]> {
  const { head = 0, depth } = asked;
  const brim = brimOf(asked);
  const tubeMm = needles && stitchMm.round && (needles * stitchMm.round) / 2;
  const brims = tubeMm === undefined ? [] : brimProblems({ brim }, (2 / 3) * tubeMm);
  if (brims.length > 0) return refused(...brims);
  const window = { loMm: SIDEWAYS.lo * head, hiMm: SIDEWAYS.hi * head };
  return done([
    { ...SIDES.girth, axis: 'rows', share: 1, extra: 1, fixedMm: 0, window },
    {
      ...SIDES.depth,
      axis: 'needles',
      inPanels: 'one_layer',
      share: 1 / 2,
      extra: 0,
      fixedMm: 0 - brim,
      window: depth,
    },
  ]);
}

/** Girth and depth as they come out; undefined while the stitch width is not known. */
function sizes({ asked, needles, stitchMm, rows, rowsInPiece, rowMm }: HatMade) {
  const aroundMm = needles && stitchMm && needles * stitchMm;
  return isSideways(asked)
    ? { girthMm: rowsInPiece * rowMm, depthMm: aroundMm && aroundMm / 2 - brimOf(asked) }
    : { girthMm: aroundMm, depthMm: rows * rowMm - asked.brim };
}

/** The brim opened: its live loops sewn down where it turns up, or cast off where it does not. */
function brimSteps({ asked, needles }: HatMade): Step[] {
  if (asked.brim > 0)
    return sewnDownSteps(needles, say`${key`Turn up ${length(asked.brim)}`} of the first end outside.`, 'the brim');
  const loops = needles === undefined ? say`every loop` : say`the ${count(needles, 'loop')}`;
  const loosely = say`${key`Cast off ${loops} of the first row`} loosely, drawing each through the one before it.`;
  return [{ id: 'cast_off', driver: 'cast_off', count: needles ?? 0, say: loosely }, openedStep('the brim')];
}

function uprightSteps(made: HatMade): Step[] {
  const { needles, stitchMm, asked } = made;
  return [
    ...startSteps(made, asked.brim === 0 ? looseTail : hemTail(made, 'the brim')),
    ...bodySteps(made),
    ...endSteps(made, gatherTail(needles && stitchMm && needles * stitchMm)),
    ...gatherSteps(made, say`the last row`),
    ...brimSteps(made),
  ];
}

function sidewaysSteps(made: HatMade): Step[] {
  const brim = brimOf(made.asked);
  const fold = say`${key`Turn up ${length(brim)}`} of the other fold outside; ${key`tack it`}.`;
  return [
    ...startSteps(made, graftTail(made), { threads: true }),
    ...bodySteps(made),
    ...endSteps(made, gatherTail(made.rowsInPiece * made.rowMm)),
    ...ringGraftSteps(made),
    ...gatherFoldSteps(made.rowsInPiece, made.stitchMm),
    ...(brim === 0 ? [] : [{ id: 'fold', driver: 'fold' as const, count: 1, say: fold }]),
  ];
}

function assumes(made: HatMade): readonly Words[] {
  const { asked } = made;
  const { girthMm, depthMm } = sizes(made);
  if (!isSideways(asked)) return fitAssumed(asked, girthMm, 0);
  const usual = depthWindow({ ...asked, depth: undefined });
  const deep = say`the needles make it ${length(depthMm ?? 0)} deep; ${range(usual.loMm, usual.hiMm)} is usual for the head`;
  return [
    ...fitAssumed({ ...asked, depth: usual, brim: brimOf(asked) }, girthMm, 0),
    ...(depthMm === undefined ? [] : [deep]),
  ];
}

export const hat = piece({
  id: 'hat',
  label: 'Hat',
  words: [
    ...['hat', 'hats', 'beanie', 'beanies', 'toque', 'toques', 'tuque', 'tuques', 'bobble hat', 'bobble hats'],
    ...['watch cap', 'watch caps', 'cap', 'caps'],
  ],
  nearestTo: [
    {
      words: ['beret', 'berets', 'tam', 'bonnet', 'bonnets', 'balaclava', 'balaclavas', 'sun hat', 'sun hats'],
      lacks: 'shaping in its rows',
    },
  ],
  asks,
  pair: ['head', 'depth'],
  needs: [['head']],
  example: 'a hat for a 56 cm head',
  layouts,
  assumes,
  notions: (made) =>
    made.asked.elastic === 'with' ? [elasticNotion(elasticMm(made.asked.head ?? sizes(made).girthMm ?? 0))] : [],
  steps: (made) => [
    ...(isSideways(made.asked) ? sidewaysSteps(made) : uprightSteps(made)),
    ...(made.asked.elastic === 'with' ? [elasticStep('the brim')] : []),
    ...(made.asked.top === 'pompom' ? [pompomStep] : []),
    ...tidySteps(ENDS, 'depth', isSideways(made.asked)),
  ],
  traits: ({ asked }) => ['worn_on_head', ...(asked.top === 'pompom' ? ['small_parts' as const] : [])],
  outline: (made) => {
    const { girthMm = 0, depthMm = 0 } = sizes(made);
    return rectangle(girthMm / 2, depthMm, {
      bottom: brimOf(made.asked) > 0 || isSideways(made.asked) ? 'fold' : 'edge',
      right: 'fold',
      top: 'gather',
      left: isSideways(made.asked) ? 'graft' : 'fold',
    });
  },
});
