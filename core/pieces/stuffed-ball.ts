import { aspects } from '../aspects.js';
import { gatherSteps, gatherTail, gatherTailMm, plugRadiusMm } from '../finishing/gathering.js';
import { tailOf } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, type Tail, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { panelSeamSteps, panelSteps } from '../finishing/panel-seam.js';
import { ballFilling, stuffingNotion, stuffStep } from '../finishing/stuffing.js';
import { mattressTailMm } from '../finishing/tails.js';
import { type Asked, type Fabric, type Layout, type Made, piece, type Step } from '../piece.js';
import { done, type Offer, type Outcome, type Problem, refused } from '../problems.js';
import { madeSizeMm } from '../sizing/made-size.js';
import { needlesFor } from '../sizing/needles.js';
import { isWithin, middleMm, mostNeedles, panelRefused } from '../sizing/panels.js';
import { dimensionMm, type Measure, type Window } from '../sizing/rows.js';
import { key, length, say } from '../words.js';

const asks = {
  diameter: {
    is: 'window',
    label: 'Diameter',
    question: 'How big across should the ball be?',
    words: [...aspects.wide, ...aspects.diameter, 'big'],
    minMm: 25,
    maxMm: 1500,
    tolerance: { share: 0.05 },
    source: 'tolerance: from memory',
  },
  lay: {
    is: 'choice',
    label: 'Lay',
    words: ['lay'],
    options: [
      { id: 'tube', label: 'a tube of all needles', words: ['as a tube', 'in the round'] },
      { id: 'panel', label: 'a panel sewn up', words: ['as a panel', 'from a panel', 'sewn up'] },
    ],
    default: 'tube',
  },
} as const;
type BallAsked = Asked<typeof asks>;
type BallMade = Made<typeof asks>;

/** A machine's own ball is taken for one asked for that differs by up to this share. From memory. */
const NEAR = 0.05;
/** The gathered loops must close to a plug smaller than this share of the ball. From memory. */
const PLUG_SHARE = 1 / 6;

/** Across the ball from the needles round its middle: all of a tube, all but the two that a seam takes of a panel. */
const TUBE: Measure = { share: 1 / Math.PI, extra: 0, fixedMm: 0 };
const PANEL: Measure = { ...TUBE, extra: -2 };

/** Rows from pole to pole are half the girth that the needles make; the asked one's while those are not known. */
function laid(id: 'tube' | 'panel', asked: Window, madeMm: number | undefined, needles?: number): Layout {
  const about = madeMm === undefined ? asked : { loMm: madeMm * (1 - NEAR), hiMm: madeMm * (1 + NEAR) };
  const half = Math.PI / 2;
  return {
    id,
    form: id === 'tube' ? 'round' : 'flat',
    parts: 1,
    needles,
    dimensions: [
      {
        id: 'length',
        figure: 'lengthMm',
        label: 'Pole to pole',
        adjective: 'from pole to pole, before it is stuffed',
        axis: 'rows',
        share: 1,
        extra: 0,
        fixedMm: 0,
        window: { loMm: half * about.loMm, hiMm: half * about.hiMm },
      },
      {
        id: 'diameter',
        figure: 'diameterMm',
        label: 'Diameter',
        adjective: 'across',
        axis: 'needles',
        ...(id === 'tube' ? TUBE : PANEL),
        window: asked,
      },
    ],
  };
}

type Working = { id: 'tube' | 'panel'; needles: number; measure: Measure; stitchMm: number };

const isNear = (mm: number, window: Window): boolean =>
  isWithin(mm, window) || Math.abs(mm / middleMm(window) - 1) <= NEAR;

const madeMm = ({ measure, needles, stitchMm }: Working): number => dimensionMm(measure, needles, stitchMm);

/** Whether the gathered loops close to a plug small enough for the ball, and that is one to ask for. */
const isMade = (working: Working): boolean =>
  plugRadiusMm(working.needles, working.stitchMm) < madeMm(working) * PLUG_SHARE &&
  madeMm(working) >= asks.diameter.minMm &&
  madeMm(working) <= asks.diameter.maxMm;

/** The needles make the diameter: all of them as a tube, where that is near enough, or as many as a panel takes. */
function layouts({ diameter, lay }: BallAsked, { needles, stitchMm }: Fabric): Outcome<readonly Layout[]> {
  if (diameter === undefined) return refused({ code: 'missing', anyOf: [] });
  const { flat, round } = stitchMm;
  const most = mostNeedles(needles);
  const tube: Working | undefined =
    needles === undefined || round === undefined ? undefined : { id: 'tube', needles, measure: TUBE, stitchMm: round };
  const ofNeedles = (n: number, w: number): Working => ({ id: 'panel', needles: n, measure: PANEL, stitchMm: w });
  const panel = flat === undefined ? undefined : ofNeedles(needlesFor(diameter, PANEL, flat), flat);
  if (lay === 'panel' && panel === undefined) return refused({ code: 'no_stitch_gauge', field: DIAMETER });
  const working = lay === 'panel' ? panel : tube;
  if (working === undefined) return done([laid('tube', diameter, undefined)]);
  const offers = [
    ...(tube && isMade(tube) ? [asMade(tube, null)] : []),
    ...(panel && panel.needles <= most && isMade(panel) && lay === 'tube' ? [ofPanel(panel)] : []),
    ...(panel && panel.needles > most ? [ofNeedles(most, panel.stitchMm)] : [])
      .filter(isMade)
      .map((largest) => asMade(largest, { is: 'choice', id: 'panel' })),
  ];
  if ((lay === 'panel' && working.needles > most) || !isNear(madeMm(working), diameter))
    return refused(unlike(diameter, working, lay === 'panel' ? most : working.needles, offers));
  if (!isMade(working)) return refused(tooSmall(diameter, working));
  return done([laid(working.id, diameter, madeMm(working), working.id === 'panel' ? working.needles : undefined)]);
}

const DIAMETER = { id: 'diameter', label: asks.diameter.label };

const asMade = (working: Working, lay: Offer['edit'][string]): Offer => ({
  label: say`${length(madeMm(working))} across, as ${lay === null ? 'all your needles make it' : 'your widest panel makes it'}`,
  edit: { lay, diameter: { is: 'length', mm: madeMm(working) } },
});

const ofPanel = ({ needles }: Working): Offer => ({
  label: say`a panel of ${needles} needles, sewn up`,
  edit: { lay: { is: 'choice', id: 'panel' } },
});

function unlike(window: Window, working: Working, most: number, offers: readonly Offer[]): Problem {
  const problem = panelRefused({ field: DIAMETER, window, ...working }, most, offers);
  const needlesWanted = needlesFor(window, working.measure, working.stitchMm);
  return problem.code === 'needles_set_it' ? { ...problem, needlesWanted } : problem;
}

/** The smallest ball whose ends close, against the one asked for. */
function tooSmall(window: Window, working: Working): Problem {
  let needles = working.needles;
  while (needles < 100 && plugRadiusMm(needles, working.stitchMm) >= madeMm({ ...working, needles }) * PLUG_SHARE)
    needles++;
  return {
    code: 'length_out_of_range',
    field: DIAMETER,
    givenMm: middleMm(window),
    minMm: Math.max(asks.diameter.minMm, madeMm({ ...working, needles })),
    maxMm: asks.diameter.maxMm,
    why: say`in this fabric the gathered ends of a smaller one do not close`,
    offers: [],
  };
}

/** Across the ball: by its needles, or while those are not known by its rows. */
function diameterOf(made: BallMade): number {
  const { needles, stitchMm, rows, rowMm } = made;
  if (needles === undefined || stitchMm === undefined) return (2 * rows * rowMm) / Math.PI;
  return madeSizeMm(made, DIAMETER.id);
}

function steps(made: BallMade): Step[] {
  const { layout, needles, stitchMm, rows, rowMm } = made;
  const roundMm = needles === undefined || stitchMm === undefined ? undefined : needles * stitchMm;
  const tail = gatherTail(roundMm);
  const { volumeCm3 } = ballFilling(diameterOf(made));
  const closing = [
    stuffStep(volumeCm3),
    ...gatherSteps(made, say`the last row`),
    {
      id: 'through',
      driver: 'fold' as const,
      count: 1,
      say: say`${key`Take both tails through the middle`}, each to the other end; draw the ends in a little and ${key`fasten`}.`,
    },
    ...tidySteps(2, 'diameter', false, false),
  ];
  const first = gatherSteps(made, say`the first row`);
  if (layout.id === 'tube')
    return [...startSteps(made, tail), ...bodySteps(made), ...endSteps(made, tail), ...first, ...closing];
  const sewing = sewAndGatherTail(rows * rowMm, roundMm ?? 0);
  return [
    ...panelSteps(made, sewing, tail),
    ...first,
    ...panelSeamSteps(rows, say`the side edges together up from there`),
    ...closing,
  ];
}

const sewAndGatherTail = (seamMm: number, roundMm: number): Tail =>
  tailOf(gatherTailMm(roundMm) + mattressTailMm(seamMm), 'gather and sew with');

export const stuffedBall = piece({
  id: 'stuffed-ball',
  label: 'Stuffed ball',
  words: [
    ...['stuffed ball', 'stuffed balls', 'toy ball', 'toy balls', 'soft ball', 'soft balls', 'bauble', 'baubles'],
  ],
  nearestTo: [
    {
      words: [
        'teddy',
        'teddies',
        'teddy bear',
        'doll',
        'dolls',
        'stuffed toy',
        'stuffed toys',
        'soft toy',
        'soft toys',
      ],
      lacks: 'parts that are shaped',
    },
  ],
  sizedWords: ['ball', 'balls'],
  asks,
  pair: ['diameter'],
  needs: [['diameter']],
  example: 'a stuffed ball 11.5 cm across',
  layouts,
  assumes: ({ needles, stitchMm }) => [
    ...(needles === undefined || stitchMm === undefined
      ? [say`needles that make this diameter; your needles and stitch width will tell`]
      : []),
    say`as round as its needles make it; stuffed firmly it comes out up to 5% bigger`,
    say`fullness at both poles, where a ball has room for less than the rows make`,
  ],
  notions: (made) => [stuffingNotion(ballFilling(diameterOf(made)).massG)],
  steps,
  outline: (made) => {
    const right = made.layout.id === 'tube' ? 'fold' : 'seam';
    return rectangle((Math.PI * diameterOf(made)) / 2, made.rows * made.rowMm, {
      bottom: 'gather',
      right,
      top: 'gather',
      left: 'fold',
    });
  },
  traits: () => ['stuffed'],
});
