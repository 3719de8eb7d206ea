import { aspects } from '../aspects.js';
import { graftTail, seamTail } from '../finishing/joining.js';
import { tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { panelGraftSteps, panelSeamSteps, panelSteps, RING, SEAMED } from '../finishing/panel-seam.js';
import { type Asked, type Fabric, type Layout, type Made, piece } from '../piece.js';
import { done, type Offer, type Outcome, type Problem, refused } from '../problems.js';
import { needlesFor } from '../sizing/needles.js';
import { isReached, isWithin, middleMm, mostNeedles, panelRefused } from '../sizing/panels.js';
import { dimensionMm, type Window } from '../sizing/rows.js';
import { SIDES } from '../sizing/sides.js';
import { key, length, say, tail } from '../words.js';

const asks = {
  outside: {
    is: 'length',
    label: 'Form across its outside',
    question: 'How far is the form across, from outer edge to outer edge?',
    words: [...aspects.wide, ...aspects.diameter, 'outside', 'outer', 'ring', 'hoop'],
    minMm: 100,
    maxMm: 1500,
  },
  length: {
    is: 'window',
    label: 'Length round the middle',
    words: aspects.long,
    minMm: 320,
    maxMm: 4500,
    tolerance: { share: 0.025 },
    source: 'tolerance: from memory',
  },
  girth: {
    is: 'length',
    label: 'Girth of the form',
    question: 'How far is it round the form where you would hold it?',
    words: [...aspects.round, 'section'],
    across: aspects.thick,
    minMm: 40,
    maxMm: 600,
  },
} as const;
type WreathAsked = Asked<typeof asks>;
type WreathMade = Made<typeof asks>;

/** The share of the middle line that the cover is long, and of the form's girth that it is round. From memory. */
const ALONG_KEEPS = { lo: 0.95, hi: 1 };
const ROUND_KEEPS = { lo: 0.85, hi: 0.95 };
/** Knitting stretches along its rows by 30 % at most, of which laying it tight takes 5. From memory. */
const MOST_STRAIN = 0.25;
/** From here on it is near what the knitting takes. */
const NEAR_STRAIN = 0.2;
/** Cord of a hanging loop. Common practice, no source. */
const LOOP_MM = 150;

/** Length of the line through the middle of the form, in mm: from its outside, else as the cover was asked for. */
const middleLineMm = ({ outside, length, girth = 0 }: WreathAsked): number | undefined =>
  outside === undefined ? length && middleMm(length) : Math.PI * outside - girth;

/** How much longer the outer edge of the form is than its middle line: g/L, since the section is round. */
const strain = (girthMm: number, lineMm: number): number => girthMm / lineMm;

/** The thickest form that the outer edge of the cover can stretch over. */
const thickestMm = ({ outside }: WreathAsked, lineMm: number): number =>
  outside === undefined ? MOST_STRAIN * lineMm : (Math.PI * outside * MOST_STRAIN) / (1 + MOST_STRAIN);

/** The window of the cover's length, where the form can be covered. */
function fitted(asked: WreathAsked, girth: number): Outcome<{ window: Window; thickest: number }> {
  const lineMm = middleLineMm(asked);
  if (lineMm === undefined) return refused({ code: 'missing', anyOf: [] });
  const thickest = thickestMm(asked, lineMm);
  if (girth > thickest)
    return refused({
      code: 'length_out_of_range',
      field: { id: 'girth', label: asks.girth.label },
      givenMm: girth,
      minMm: Math.min(asks.girth.minMm, thickest),
      maxMm: thickest,
      why: say`round its outer edge the cover would stretch by more than 25%`,
      offers: [],
    });
  const eased = { loMm: ALONG_KEEPS.lo * lineMm, hiMm: ALONG_KEEPS.hi * lineMm };
  const { length: own = eased } = asked;
  if (asked.outside === undefined || isWithin(middleMm(own), eased)) return done({ window: own, thickest });
  return refused({
    code: 'length_out_of_range',
    field: { id: 'length', label: asks.length.label },
    givenMm: middleMm(own),
    minMm: eased.loMm,
    maxMm: eased.hiMm,
    why: say`it lies along the middle of the form, slightly stretched`,
    offers: [],
  });
}

function layouts(asked: WreathAsked, { needles, stitchMm: { flat } }: Fabric): Outcome<readonly Layout[]> {
  const { girth } = asked;
  if (girth === undefined) return refused({ code: 'missing', anyOf: [{ id: 'girth', label: asks.girth.label }] });
  const fit = fitted(asked, girth);
  if (!fit.ok) return fit;
  if (flat === undefined) return refused({ code: 'no_stitch_gauge', field: { id: 'girth', label: asks.girth.label } });
  const most = mostNeedles(needles);
  const window = { loMm: ROUND_KEEPS.lo * girth, hiMm: ROUND_KEEPS.hi * girth };
  const n = needlesFor(window, SEAMED, flat);
  if (n > most || !isReached(dimensionMm(SEAMED, n, flat), window))
    return refused(unfit(window, n, most, flat, fit.value.thickest));
  return done([
    {
      id: 'wrapped',
      form: 'flat',
      parts: 1,
      needles: n,
      because: say`a panel wrapped round the form and sewn up inside the ring, since a closed form enters no tube`,
      dimensions: [
        {
          id: 'length',
          figure: 'lengthMm',
          label: 'Length round the middle',
          adjective: 'long',
          axis: 'rows',
          ...RING,
          window: fit.value.window,
        },
        {
          ...SIDES.girth,
          axis: 'needles',
          ...SEAMED,
          window,
        },
      ],
    },
  ]);
}

/** Needles that do not go round the form: the form that as many as there are would go round. */
function unfit(window: Window, n: number, most: number, stitchMm: number, thickest: number): Problem {
  const girthMm = dimensionMm(SEAMED, Math.min(n, most), stitchMm) / Math.sqrt(ROUND_KEEPS.lo * ROUND_KEEPS.hi);
  const fits = girthMm >= asks.girth.minMm && girthMm <= Math.min(asks.girth.maxMm, thickest);
  const offers: Offer[] = fits
    ? [{ label: say`a form ${length(girthMm)} round`, edit: { girth: { is: 'length', mm: girthMm } } }]
    : [];
  const field = { id: 'girth', label: 'Girth' };
  return panelRefused({ field, window, needles: n, measure: SEAMED, stitchMm }, most, offers);
}

const lengthMm = ({ rowsInPiece, rowMm }: WreathMade): number => rowsInPiece * rowMm;

export const wreathCover = piece({
  id: 'wreath-cover',
  label: 'Wreath cover',
  words: ['wreath cover', 'wreath covers', 'wreath', 'wreaths'],
  goesOn: ['form', 'forms', 'hoop', 'hoops'],
  asks,
  pair: ['outside', 'girth'],
  needs: [['outside', 'length'], ['girth']],
  example: 'a wreath cover 30 cm across and 16 cm round',
  layouts,
  assumes: ({ asked }) => {
    const share = strain(asked.girth ?? 0, middleLineMm(asked) ?? 1);
    const near = share > NEAR_STRAIN ? ', near the most that knitting takes' : '';
    return [
      ...(asked.length === undefined ? [say`up to 5% shorter than the form along its middle, slightly stretched`] : []),
      say`5 to 15% narrower than the form is round`,
      say`stretched by about ${Math.round(100 * share)}% more along the outer edge${near}`,
    ];
  },
  notions: ({ asked }) => [
    {
      id: 'form',
      count: 1,
      one: 'ring form',
      after:
        asked.outside === undefined
          ? say` ${length(asked.girth ?? 0)} round`
          : say` ${length(asked.outside)} across and ${length(asked.girth ?? 0)} round`,
    },
    { id: 'hanging_loop', count: 1, one: 'hanging cord', cutMm: LOOP_MM },
  ],
  steps: (made) => [
    ...panelSteps(made, graftTail(made), seamTail(lengthMm(made))),
    ...panelGraftSteps(made, say` round the form, where it will hang`),
    ...panelSeamSteps(
      made.rowsInPiece,
      say`the two edges together round the form, ${key`on the inner side`} of the ring; push the fullness toward the seam as you go, and keep the seam off the front`,
    ),
    {
      id: 'hanging_loop',
      driver: 'loop',
      count: 1,
      say: say`${key`Knot a loop of ${tail(LOOP_MM)} of cord`} over the graft.`,
    },
    ...tidySteps(2, 'length round the middle', false, false),
  ],
  outline: (made) =>
    rectangle(lengthMm(made), dimensionMm(SEAMED, made.needles ?? 0, made.stitchMm ?? 0), {
      bottom: 'seam',
      right: 'graft',
      top: 'seam',
      left: 'graft',
    }),
  traits: () => ['small_parts', 'near_flame'],
});
