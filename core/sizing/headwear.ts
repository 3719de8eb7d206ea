import { aspects } from '../aspects.js';
import type { Fabric } from '../piece.js';
import type { Offer, Outcome, Problem } from '../problems.js';
import { done, refused } from '../problems.js';
import { length, say, type Words } from '../words.js';
import { easeWords } from './heads.js';
import type { Panels } from './in-panels.js';
import { panelsInstead } from './panels.js';
import type { Window } from './rows.js';

/** From edge to crown, as a share of the head: .34 by the survey's ears and crowns, and some slack. Common practice. */
const DEPTH_SHARE = 0.36;
const DEPTH_HALF_MM = 10;
/** Usual turn-up: 40 to 70 mm. Common practice. */
const TURN_UP_MM = 50;

/** Asks for the finished depth, from the folded edge to the gather. */
export const DEPTH_ASK = {
  is: 'window',
  label: 'Depth',
  question: 'How deep should it be, from edge to crown?',
  words: [...aspects.tall, ...aspects.long],
  minMm: 100,
  maxMm: 400,
  tolerance: { mm: DEPTH_HALF_MM },
  source: 'tolerance: from memory',
} as const;

/** Asks for the turned-up brim; 0 for none. */
export const BRIM_ASK = {
  is: 'length',
  label: 'Brim',
  words: ['brim', 'cuff', 'turnup', 'turn'],
  beside: [...aspects.tall, ...aspects.wide],
  minMm: 0,
  maxMm: 120,
  defaultMm: TURN_UP_MM,
  source: 'common practice: 4 to 7 cm',
} as const;

/** Asks for what the crown bears. Refusals are read first, so that `no pompom` is not taken for one. */
export const TOP_ASK = {
  is: 'choice',
  label: 'Top',
  words: ['top'],
  options: [
    { id: 'plain', label: 'plain', words: ['no pompom', 'without a pompom', 'without pompom', 'no bobble'] },
    { id: 'pompom', label: 'a pompom', words: ['pompom', 'pompoms', 'pom pom', 'bobble'] },
  ],
  default: 'plain',
} as const;

/** Asks for an elastic in the brim. */
export const ELASTIC_ASK = {
  is: 'choice',
  label: 'Elastic',
  words: ['elastic'],
  options: [
    { id: 'without', label: 'no elastic', words: ['no elastic', 'without elastic'] },
    { id: 'with', label: 'an elastic in the brim', words: ['elastic', 'elasticated'] },
  ],
  default: 'without',
} as const;

type Worn = { head?: number | undefined; depth?: Window | undefined; brim: number };

/** The window of the finished depth: as asked, else by the head. */
export function depthWindow({ head = 0, depth }: Worn): Window {
  const middleMm = DEPTH_SHARE * head;
  return depth ?? { loMm: middleMm - DEPTH_HALF_MM, hiMm: middleMm + DEPTH_HALF_MM };
}

/** The problem of a brim turned up over more than half of the depth, with one that is not. */
export function brimProblems({ brim }: Worn, depthMm: number): Problem[] {
  const maxMm = Math.max(0, depthMm / 2);
  if (brim <= maxMm) return [];
  const fittingMm = Math.floor(maxMm);
  return [
    {
      code: 'length_out_of_range',
      field: { id: 'brim', label: BRIM_ASK.label },
      ...{ givenMm: brim, minMm: 0, maxMm },
      why: say`a brim turns up over half of the depth at most`,
      offers: [
        {
          label: fittingMm === 0 ? say`no brim` : say`a brim of ${length(fittingMm)}`,
          edit: { brim: { is: 'length', mm: fittingMm } },
        },
      ],
    },
  ];
}

/** Ease that still wears well, and from where on it is snug, as shares of the head. Common practice. */
const EASE = { least: -0.02, good: 0.15, most: 0.25 };
/** What needles are chosen for, and panels sewn up come to. */
const EASE_AIMED = 0.1;
const PANEL_EASE = { least: 0.05, most: 0.15 };

/** The girths that a head takes round and round, in mm. */
const fittingGirth = (headMm: number): Window => ({
  loMm: (1 - EASE.most) * headMm,
  hiMm: (1 - EASE.least) * headMm,
});

/** How far round the fabric and the head are, and what the rows measure laid straight. */
type Fitted = {
  /** Girth of the head, with what lies between it and the fabric. */
  headMm: number | undefined;
  needles: number | undefined;
  stitchMm: Fabric['stitchMm'];
  along: Window;
};

/** The girth that needles make, if the head takes it; else why not, and the needles and the panels that would do. */
export function girthFitting(
  { headMm, needles, stitchMm: { round, flat }, along }: Fitted,
  offers: readonly Offer[],
): Outcome<Window | undefined> {
  const girthMm = needles && round && needles * round;
  const window = headMm === undefined ? undefined : fittingGirth(headMm);
  if (window === undefined || headMm === undefined || girthMm === undefined || needles === undefined)
    return done(window);
  if (girthMm >= window.loMm && girthMm <= window.hiMm) return done(window);
  const aimedMm = (1 - EASE_AIMED) * headMm;
  return refused({
    code: 'needles_set_it',
    field: { id: 'girth', label: 'Girth' },
    expectedMm: girthMm,
    window,
    needles,
    needlesWanted: Math.round((aimedMm / girthMm) * needles),
    stitchChange: aimedMm / girthMm - 1,
    panels: flat === undefined ? undefined : sewnRound(headMm, flat, along, needles),
    offers,
  });
}

function sewnRound(headMm: number, stitchMm: number, along: Window, needles: number): Panels | undefined {
  const window = { loMm: (1 - PANEL_EASE.most) * headMm, hiMm: (1 - PANEL_EASE.least) * headMm };
  const measure = { share: 1, extra: 0, fixedMm: 0 };
  return panelsInstead({ way: 'sewn_round', along }, { window, measure, stitchMm }, needles);
}

/** A head that a girth suits, as an offer where there is such a head to ask for. */
export function forThatHead(
  girthMm: number,
  betweenMm: number,
  { minMm, maxMm }: { minMm: number; maxMm: number },
): Offer[] {
  const headMm = girthMm / (1 - EASE_AIMED) - betweenMm;
  if (headMm < minMm || headMm > maxMm) return [];
  return [
    {
      label: say`as it comes, for a head of ${length(headMm)}`,
      edit: { head: { is: 'length', mm: headMm }, depth: null },
    },
  ];
}

/** What is taken for granted of the fit: ease, depth, brim. `betweenMm` is added to the head as in {@link girthFitting}. */
export function fitAssumed({ head, depth, brim }: Worn, girthMm: number | undefined, betweenMm: number): Words[] {
  const ease = head && girthMm ? 1 - girthMm / (head + betweenMm) : undefined;
  const snug = ease !== undefined && ease > EASE.good ? say`, which is snug` : say``;
  return [
    ...(head === undefined || ease === undefined ? [] : [say`${easeWords(ease, head)}${snug}`]),
    ...(depth === undefined
      ? [say`${Math.round(100 * DEPTH_SHARE)}% of the head deep, give or take ${length(DEPTH_HALF_MM)}`]
      : []),
    ...(brim === TURN_UP_MM ? [say`a brim of ${length(TURN_UP_MM)} turned up`] : []),
  ];
}
