import { aspects } from '../aspects.js';
import { further } from '../finishing/further.js';
import { graftTail, looseTail, markBars, ringGraftSteps, seamTail } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { panelGraftSteps, panelSeamSteps, panelSteps, SEAM_STITCHES } from '../finishing/panel-seam.js';
import { type Asked, type Dimension, type Fabric, type Layout, type Made, piece, type Step } from '../piece.js';
import { done, type Outcome, refused } from '../problems.js';
import { EASE_PERCENT, easeWords, HEAD_ASK, mayBeChild, ringOnHead } from '../sizing/heads.js';
import { needlesFor } from '../sizing/needles.js';
import { isWithin, middleMm, mostNeedles } from '../sizing/panels.js';
import type { Window } from '../sizing/rows.js';
import { SIDES } from '../sizing/sides.js';
import { count, key, length, say, type Words } from '../words.js';

/** Ends left to weave in: of the graft, and of the start of the main yarn. Common practice. */
const ENDS = 2;
/** What is usually worn. Common practice. */
const USUAL_MM = { loMm: 90, hiMm: 120 };
/** The fewest needles that make a panel to fold. */
const LEAST_PANEL = 4;
/** A change of stitch width up to this share is reached by tension. From memory. */
const TENSION_REACH = 0.1;

const asks = {
  head: HEAD_ASK,
  girth: {
    is: 'window',
    label: 'Girth',
    words: aspects.round,
    minMm: 200,
    maxMm: 800,
    tolerance: { share: 0.05 },
    source: 'tolerance: from memory',
  },
  height: {
    is: 'window',
    label: 'Height',
    words: [...aspects.tall, ...aspects.wide],
    minMm: 20,
    maxMm: 600,
    tolerance: { share: 0.05 },
    source: 'tolerance: from memory',
  },
  ease: {
    is: 'percent',
    label: 'Ease',
    words: ['ease'],
    min: 0,
    max: 15,
    default: EASE_PERCENT,
    source: 'common practice: 5 to 15 % less round than the head',
  },
  lay: {
    is: 'choice',
    label: 'Lay',
    words: ['lay'],
    options: [
      { id: 'fitting', label: 'whichever makes the height', words: ['either way', 'any way'] },
      { id: 'tube', label: 'a tube', words: ['as a tube', 'unfolded'] },
      { id: 'folded', label: 'a tube folded once along', words: ['folded along', 'doubled', 'four layers'] },
      { id: 'panel', label: 'a panel folded once along', words: ['as a panel', 'from a panel', 'narrow strip'] },
    ],
    default: 'fitting',
  },
} as const;
type BandAsked = Asked<typeof asks>;
type BandMade = Made<typeof asks>;
type Lay = { form: Layout['form']; height: Pick<Dimension, 'share' | 'extra'> };

/** How each lay makes the height: two layers, four, or a panel of which the seam takes two stitches. */
const LAYS = {
  tube: { form: 'round', height: { share: 1 / 2, extra: 0 } },
  folded: { form: 'round', height: { share: 1 / 4, extra: 0 } },
  panel: { form: 'flat', height: { share: 1 / 2, extra: -SEAM_STITCHES } },
} as const satisfies Record<string, Lay>;
type LayId = keyof typeof LAYS;

/** The lay that makes the height asked for: a tube if tension reaches it, else folded, else a panel of its own needles. */
function layOf({ lay, height }: BandAsked, { needles, stitchMm }: Fabric): LayId {
  if (lay !== 'fitting') return lay as LayId;
  if (height === undefined || needles === undefined || stitchMm.round === undefined) return 'tube';
  const tubeMm = (needles * stitchMm.round) / 2;
  if (isWithin(tubeMm, height) || Math.abs(middleMm(height) / tubeMm - 1) <= TENSION_REACH) return 'tube';
  if (isWithin(tubeMm / 2, height)) return 'folded';
  return panelNeedles(height, stitchMm.flat ?? stitchMm.round) <= mostNeedles(needles) ? 'panel' : 'tube';
}

const panelNeedles = (height: Window, stitchMm: number): number =>
  Math.max(LEAST_PANEL, needlesFor(height, { ...LAYS.panel.height, fixedMm: 0 }, stitchMm));

function layouts(asked: BandAsked, fabric: Fabric): Outcome<readonly Layout[]> {
  const lay = layOf(asked, fabric);
  const height = asked.height ?? (lay === 'panel' ? USUAL_MM : undefined);
  const stitchMm = fabric.stitchMm.flat;
  const field = { id: 'height', label: asks.height.label };
  if (lay === 'panel' && stitchMm === undefined) return refused({ code: 'no_stitch_gauge', field });
  const window = ringOnHead(asked, asks.girth.label);
  if (!window.ok) return window;
  const needles = lay === 'panel' && height && stitchMm ? panelNeedles(height, stitchMm) : undefined;
  const max = mostNeedles(fabric.needles);
  if (needles !== undefined && fabric.needles !== undefined && needles > max) {
    const edit = { height: null, lay: { is: 'choice' as const, id: 'tube' } };
    const offers = [{ label: say`a tube, as tall as its needles make it`, edit }];
    return refused({ code: 'too_many_needles', given: needles, max, machine: fabric.needles, offers });
  }
  const girth = { ...SIDES.girth, axis: 'rows' } as const;
  const tall = { ...SIDES.height, axis: 'needles' } as const;
  return done([
    {
      id: lay,
      form: LAYS[lay].form,
      parts: 1,
      needles,
      because: because(asked, lay, fabric),
      dimensions: [
        { ...girth, share: 1, extra: 1, fixedMm: 0, window: window.value },
        { ...tall, ...LAYS[lay].height, fixedMm: 0, window: height },
      ],
    },
  ]);
}

function because({ lay }: BandAsked, chosen: LayId, { needles, stitchMm }: Fabric): Words | undefined {
  if (lay !== 'fitting' || chosen === 'tube') return undefined;
  const tube = say`a tube on ${count(needles ?? 0, 'needle')} is ${length(((needles ?? 0) * (stitchMm.round ?? 0)) / 2)} tall`;
  return chosen === 'folded' ? say`${tube}, so it is folded once along` : say`${tube}, so a panel is folded instead`;
}

const girthOf = ({ rowsInPiece, rowMm }: BandMade): number => rowsInPiece * rowMm;
const layIn = ({ layout }: BandMade): LayId => layout.id as LayId;

function heightOf(made: BandMade): number {
  const { share, extra } = LAYS[layIn(made)].height;
  return share * Math.max(0, (made.needles ?? 0) + extra) * (made.stitchMm ?? 0);
}

/** The two folds of a ring sewn to each other all round, when it was folded once along. */
const alongSteps = ({ rowsInPiece }: BandMade): Step[] => [
  further('fold_along', say`${key`Fold the ring once along`}, so that its two folds meet all round.`),
  markBars(say`both folds, from the graft`),
  {
    id: 'mattress',
    driver: 'mattress',
    count: rowsInPiece,
    say: say`${key`Mattress ${count(rowsInPiece, 'bar')}`}, one bar a side, meeting at each marker.`,
  },
];

/** A panel laid in a ring and folded once along, its edges sewn together all round. */
const foldedSteps = (made: BandMade): Step[] => [
  ...panelSteps(made, graftTail(made), seamTail(girthOf(made))),
  ...panelGraftSteps(made),
  ...panelSeamSteps(made.rowsInPiece, say`the ring folded once along, right side out`),
  ...tidySteps(ENDS, 'girth'),
];

/** A tube grafted into a ring, folded once along or not. */
function tubeSteps(made: BandMade): Step[] {
  const isFolded = layIn(made) === 'folded';
  return [
    ...startSteps(made, graftTail(made), { threads: true }),
    ...bodySteps(made),
    ...endSteps(made, isFolded ? seamTail(girthOf(made)) : looseTail),
    ...ringGraftSteps(made),
    ...(isFolded ? alongSteps(made) : []),
    ...tidySteps(ENDS, 'girth', true),
  ];
}

function assumes(made: BandMade): readonly Words[] {
  const { head, height } = made.asked;
  const tallMm = heightOf(made);
  return [
    head === undefined
      ? say`for a head of about ${length(girthOf(made) / (1 - EASE_PERCENT / 100))}`
      : easeWords(1 - girthOf(made) / head, head),
    ...(layIn(made) === 'panel' && height === undefined ? [say`of the usual height`] : []),
    ...(height === undefined && tallMm > USUAL_MM.hiMm
      ? [say`folded once in wear to ${length(tallMm / 2)}, for ${length(tallMm)} is tall`]
      : []),
  ];
}

export const headband = piece({
  id: 'headband',
  label: 'Headband',
  words: [
    ...['headband', 'headbands', 'head band', 'earwarmer', 'earwarmers', 'ear warmer', 'ear warmers'],
    ...['ear band', 'ear bands', 'earband', 'earbands'],
  ],
  asks,
  pair: ['girth', 'height'],
  needs: [['head', 'girth']],
  example: 'a headband for a 56 cm head',
  layouts,
  assumes,
  notions: () => [],
  steps: (made) => (layIn(made) === 'panel' ? foldedSteps(made) : tubeSteps(made)),
  traits: (made) => (mayBeChild(made.asked.head ?? girthOf(made)) ? ['worn_on_head'] : []),
  outline: (made) =>
    rectangle(girthOf(made) / 2, heightOf(made), {
      bottom: layIn(made) === 'tube' ? 'fold' : 'seam',
      right: 'fold',
      top: 'fold',
      left: 'graft',
    }),
});
