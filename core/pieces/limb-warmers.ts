import { aspects } from '../aspects.js';
import { elasticMm, elasticNotion, elasticStep } from '../finishing/elastic.js';
import { castOffSteps, graftTail, looseTail, seamTail } from '../finishing/joining.js';
import { bodySteps, endSteps, repeated, startSteps, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { panelGraftSteps, panelSeamSteps, panelSteps, SEAMED, WHOLE } from '../finishing/panel-seam.js';
import { type Asked, type Fabric, type Layout, type Made, piece, type Step } from '../piece.js';
import { done, type Offer, type Outcome, type Problem, refused } from '../problems.js';
import { madeSizeMm } from '../sizing/made-size.js';
import { needlesFor } from '../sizing/needles.js';
import { isReached, isWithin, mostNeedles, panelRefused } from '../sizing/panels.js';
import { dimensionMm, type Window } from '../sizing/rows.js';
import { SIDES } from '../sizing/sides.js';
import { seamedWay, sidewaysWay, tubeWay } from '../sizing/sleeves.js';
import { count, key, length, say, type Words } from '../words.js';

/** Half an adult thumb's girth of about 70 mm, and 10 mm. From memory. */
const THUMB_MM = 45;

const WRISTS = { choice: 'limb', options: ['either', 'wrist'] };
const LEGS = { choice: 'limb', options: ['leg'] };

const asks = {
  limb: {
    is: 'choice',
    label: 'Limb',
    words: ['limb'],
    options: [
      { id: 'either', label: 'by the girth given', words: ['either'] },
      {
        id: 'wrist',
        label: 'wrist',
        words: ['wrist', 'wrists', 'wristwarmers', 'wristwarmer', 'fingerless', 'arm', 'armwarmers'],
      },
      { id: 'leg', label: 'leg', words: ['leg', 'legs', 'legwarmers', 'legwarmer', 'boot', 'boots'] },
    ],
    default: 'either',
  },
  length: {
    is: 'window',
    label: 'Length',
    question: 'How long should they be?',
    words: [...aspects.long, ...aspects.tall],
    minMm: 60,
    maxMm: 1200,
    tolerance: { mm: 10 },
    source: 'tolerance: from memory',
  },
  hand: {
    is: 'length',
    label: 'Hand girth',
    question: 'How far is it round the hand, at the knuckles?',
    words: ['hand', 'hands', ...aspects.round],
    beside: aspects.round,
    minMm: 100,
    maxMm: 400,
    body: 'hand',
    onlyWith: WRISTS,
  },
  calf: {
    is: 'length',
    label: 'Calf girth',
    question: 'How far is it round the calf at its widest?',
    words: ['calf', 'calves', ...aspects.round],
    beside: aspects.round,
    minMm: 150,
    maxMm: 700,
    body: 'calf',
    onlyWith: LEGS,
  },
  heel: {
    is: 'length',
    label: 'Heel girth',
    words: ['heel', 'heels'],
    beside: aspects.round,
    minMm: 150,
    maxMm: 600,
    body: 'heel_ankle',
    onlyWith: LEGS,
  },
  ankle: {
    is: 'length',
    label: 'Ankle girth',
    words: ['ankle', 'ankles'],
    beside: aspects.round,
    minMm: 100,
    maxMm: 450,
    body: 'ankle',
    onlyWith: LEGS,
  },
  thumb: {
    is: 'length',
    label: 'Thumb opening',
    words: ['thumb', 'thumbs'],
    beside: [...aspects.long, ...aspects.tall],
    minMm: 0,
    maxMm: 120,
    defaultMm: THUMB_MM,
    source: 'from memory',
  },
} as const;
type LimbAsked = Asked<typeof asks>;
type LimbMade = Made<typeof asks>;

const PARTS = 2;
/** The share of a limb's girth that the piece has: 10 to 15 % under a hand, 5 to 15 % under a calf. From memory. */
const WRIST_KEEPS = { lo: 0.85, hi: 0.9 };
const LEG_KEEPS = { lo: 0.85, hi: 0.95 };
/** Knitting stretches across by 40 % to let a hand or a heel pass. From memory. */
const PASSES = 1.4;

/** Legs where they are named, or where only a calf is given. */
const isLeg = ({ limb, hand, calf }: LimbAsked): boolean =>
  limb === 'leg' || (limb === 'either' && hand === undefined && calf !== undefined);

/** What was asked with the girth of the limb and the window that the piece's own girth must end in. */
function fitted(asked: LimbAsked): Outcome<{ length: Window; girth: Window }> {
  const { length, hand, calf, heel, thumb } = asked;
  const leg = isLeg(asked);
  const [id, aroundMm, keeps] = leg ? (['calf', calf, LEG_KEEPS] as const) : (['hand', hand, WRIST_KEEPS] as const);
  if (length === undefined || aroundMm === undefined)
    return refused({ code: 'missing', anyOf: [{ id, label: asks[id].label }] });
  const girth = { loMm: keeps.lo * aroundMm, hiMm: keeps.hi * aroundMm };
  const tooLong = (field: 'heel' | 'thumb', givenMm: number, maxMm: number): Problem => ({
    code: 'length_out_of_range',
    field: { id: field, label: asks[field].label },
    givenMm,
    minMm: Math.min(asks[field].minMm, maxMm),
    maxMm,
  });
  if (leg && heel !== undefined && heel > PASSES * girth.hiMm)
    return refused(tooLong('heel', heel, PASSES * girth.hiMm));
  if (!leg && thumb !== THUMB_MM && thumb > length.loMm / 2) return refused(tooLong('thumb', thumb, length.loMm / 2));
  return done({ length, girth });
}

/** A tube where the needles make the girth; else a panel sewn up; else one laid sideways, its rows round the limb. */
function layouts(asked: LimbAsked, { needles, stitchMm: { round, flat } }: Fabric): Outcome<readonly Layout[]> {
  const fit = fitted(asked);
  if (!fit.ok) return fit;
  if (flat === undefined)
    return refused({ code: 'no_stitch_gauge', field: { id: SIDES.girth.id, label: SIDES.girth.label } });
  const { girth } = fit.value;
  const most = mostNeedles(needles);
  const upright = needlesFor(girth, SEAMED, flat);
  const sideways = needlesFor(fit.value.length, WHOLE, flat);
  const tubeMm = needles === undefined || round === undefined ? undefined : needles * round;
  const sleeve = {
    parts: PARTS,
    girth: { ...SIDES.girth, window: girth },
    along: { ...SIDES.length, window: fit.value.length },
  };
  const whyPanel = tubeMm && say`a flat panel sewn up, since a tube of all your needles is ${length(tubeMm)} round`;
  const whySideways = say`laid sideways, its rows round the limb, since neither a tube nor a panel of your needles has its girth`;
  const ways: Layout[] = [
    ...(tubeMm !== undefined && isWithin(tubeMm, girth) ? [tubeWay(sleeve)] : []),
    ...(upright <= most && isReached(dimensionMm(SEAMED, upright, flat), girth)
      ? [seamedWay(sleeve, upright, whyPanel || undefined)]
      : []),
    ...(sideways <= most && isReached(sideways * flat, fit.value.length)
      ? [sidewaysWay(sleeve, sideways, whySideways)]
      : []),
  ];
  return ways.length > 0 ? done(ways) : refused(unfit(asked, girth, upright, most, flat));
}

/** No way of laying it has its girth: what a panel would take, and the length that fits on the needles sideways. */
function unfit({ thumb }: LimbAsked, window: Window, needles: number, most: number, stitchMm: number): Problem {
  const longest = most * stitchMm;
  const fits = longest >= asks.length.minMm && longest <= asks.length.maxMm;
  const noThumb: Offer['edit'] = thumb === THUMB_MM ? {} : { thumb: null };
  const edit: Offer['edit'] = { ...noThumb, length: { is: 'length', mm: longest } };
  const offers: Offer[] = fits ? [{ label: say`${length(longest)} long, laid sideways`, edit }] : [];
  return panelRefused({ field: SIDES.girth, window, needles, measure: SEAMED, stitchMm }, most, offers);
}

/** The thumb opening: its rows, and the row it begins after; none on a leg, in a ring, or in a piece too short for it. */
function thumbOf({ asked, layout, rows, rowMm }: LimbMade): { rows: number; from: number } {
  const long = asked.length?.loMm ?? 0;
  const isOpen = !isLeg(asked) && layout.id !== 'sideways' && asked.thumb <= long / 2;
  return { rows: isOpen ? Math.round(asked.thumb / rowMm) : 0, from: Math.round(rows / 2) };
}

const elasticOf = (asked: LimbAsked): number | undefined =>
  isLeg(asked) && asked.ankle !== undefined ? elasticMm(asked.ankle) : undefined;

const openRows = (from: number, rows: number): Words => say`rows ${from + 1} to ${from + rows}`;

function oneOf(made: LimbMade): Step[] {
  const { asked, layout, rows, rowMm, needles } = made;
  const thumb = thumbOf(made);
  const elastic = elasticOf(asked) === undefined ? [] : [elasticStep('the edge at the ankle')];
  const ends = [...elastic, ...tidySteps(2, 'length')];
  if (layout.id === 'tube') {
    const slit = thumb.rows > 0 ? say`, but ${openRows(thumb.from, thumb.rows)} to and fro for the thumb` : say``;
    const manner = { crank: slit, stop: say`; stop with the yarn at needle ${1}`, end: say`` };
    const knitted = [...startSteps(made, looseTail), ...bodySteps(made, manner), ...endSteps(made, looseTail)];
    return [...knitted, ...castOffSteps(needles), ...ends];
  }
  if (layout.id === 'sideways')
    return [...panelSteps(made, graftTail(made), looseTail), ...panelGraftSteps(made), ...ends];
  const open =
    thumb.rows > 0
      ? say`; leave ${key`${openRows(thumb.from, thumb.rows)} open`} for the thumb and sew two stitches across each end of the opening`
      : say``;
  const knitted = [...panelSteps(made, looseTail, seamTail(rows * rowMm)), ...castOffSteps(needles)];
  return [...knitted, ...panelSeamSteps(rows - thumb.rows, say`the side edges from either end${open}`), ...ends];
}

function thumbAssumed(made: LimbMade): Words[] {
  const { asked, layout, rowMm } = made;
  const { rows, from } = thumbOf(made);
  if (asked.thumb === 0 || (isLeg(asked) && asked.thumb === THUMB_MM)) return [];
  if (rows > 0) return [say`a thumb opening of ${length(rows * rowMm)}, ${count(rows, 'row')} from row ${from} on`];
  if (isLeg(asked)) return [say`no thumb opening in a leg warmer`];
  return [
    layout.id === 'sideways'
      ? say`no thumb opening, for which it has no side seam`
      : say`no thumb opening, for which it is too short`,
  ];
}

export const limbWarmers = piece({
  id: 'limb-warmers',
  label: 'Wrist or leg warmers',
  words: [
    ...['warmers', 'wrist warmers', 'wrist warmer', 'wristwarmers', 'wristwarmer', 'hand warmers', 'fingerless mitts'],
    ...['fingerless gloves', 'fingerless mittens', 'leg warmers', 'leg warmer', 'legwarmers', 'legwarmer'],
    ...['fingerless glove', 'fingerless mitt', 'fingerless mitten', 'arm warmers', 'arm warmer', 'armwarmers'],
    ...['boot cuffs', 'boot cuff', 'boot toppers', 'boot topper', 'pulse warmers'],
  ],
  nearestTo: [
    {
      words: [
        'sock',
        'socks',
        'stocking',
        'stockings',
        'slipper',
        'slippers',
        'bootie',
        'booties',
        'bootee',
        'bootees',
      ],
      lacks: 'a heel and a toe',
    },
    { words: ['mitten', 'mittens', 'glove', 'gloves'], lacks: 'a thumb of its own' },
    { words: ['leggings', 'tights', 'trousers', 'shorts'], lacks: 'a body that two legs join' },
  ],
  isPair: true,
  asks,
  pair: ['length', 'hand'],
  needs: [['length'], ['hand', 'calf']],
  example: 'wrist warmers 18 cm long for a hand of 18.5 cm',
  layouts,
  assumes: (made) => [
    isLeg(made.asked)
      ? say`5 to 15% narrower than the calf, so that they stay up`
      : say`10 to 15% narrower than the hand, which stretches them to pass`,
    ...thumbAssumed(made),
  ],
  notions: ({ asked }) => {
    const mm = elasticOf(asked);
    return mm === undefined ? [] : [elasticNotion(mm, PARTS)];
  },
  steps: (made) => repeated(oneOf(made), PARTS),
  outline: (made) => {
    const sideways = made.layout.id === 'sideways';
    const right = made.layout.id === 'tube' ? 'fold' : sideways ? 'graft' : 'seam';
    return rectangle(madeSizeMm(made, SIDES.girth.id) / 2, madeSizeMm(made, SIDES.length.id), {
      bottom: 'edge',
      right,
      top: 'edge',
      left: 'fold',
    });
  },
  traits: () => [],
});
