import { done } from '../problems.js';
import { unusualFor, type YarnWeight } from '../tables/yarn-weights.js';
import { MM_PER } from '../units/units.js';
import { count, say, type Words } from '../words.js';
import { type Ball, ballTex } from './count.js';
import { ENOUGH, leastBalls, type Needed } from './enough.js';
import { type Feel, feel, feelSaid, type Knitted } from './fabric.js';
import { guessCv, jams, tightness } from './loop.js';
import type { YarnOutcome } from './problems.js';

/** A plan's own yarn as it is knitted, and another one for it. */
export type Substituting = {
  /** What the plan takes of its own yarn. */
  need: Needed;
  own: Knitted & { stitchMm: number };
  ball: Ball;
  /** Its category in the standard yarn weight system, where its label names one. */
  weight?: YarnWeight | undefined;
  sure?: number | undefined;
};

/** What another yarn comes to for the same plan, knitted to the same loop. */
export type Substitution = {
  /** The length needed is that of the old yarn: a thicker yarn takes more mass for it, never less length. */
  need: Needed;
  tex: number;
  massG: number;
  balls: number;
  chance: number;
  tightness: { own: number; other: number };
  feel: Feel;
  jams: boolean;
  /** How far the gauge lies outside the new category, as {@link unusualFor} tells; undefined where it suits. */
  unusual: { beyond: number; end: number } | undefined;
  /** What to know before it is bought, and what to swatch first. */
  notes: readonly Words[];
};

/** A yarn within this share of the old one's tex mostly keeps its gauge. From memory. */
const ALIKE = 0.1;

/**
 * Another yarn for a plan: the same length of it, by the loop that the plan was made for. How sure the length is falls
 * back to a first guess, since nothing of this yarn was weighed.
 * @returns problems `empty_ball`, `tex_out_of_range`
 */
export function substitution({ need, own, ball, weight, sure = ENOUGH }: Substituting): YarnOutcome<Substitution> {
  const checked = ballTex(ball);
  if (!checked.ok) return checked;
  const tex = checked.value;
  const other: Knitted = { tex, loopMm: own.loopMm };
  const guessed = { lengthM: need.lengthM, cv: Math.max(need.cv, guessCv(own.loopMm, tex)) };
  const unusual = weight && unusualFor(weight, (4 * MM_PER.in) / own.stitchMm);
  return done({
    need: guessed,
    tex,
    massG: (need.lengthM * tex) / 1000,
    ...leastBalls(guessed, ball.lengthM, sure),
    tightness: { own: tightness(own.tex, own.loopMm), other: tightness(tex, own.loopMm) },
    feel: feel(other, own),
    jams: jams(tex, own.loopMm),
    unusual,
    notes: [
      say`${feelSaid(other, own)}`,
      ...outsideItsCategory(weight, own.stitchMm, unusual),
      toSwatch(tex / own.tex),
    ],
  });
}

function outsideItsCategory(
  weight: YarnWeight | undefined,
  stitchMm: number,
  unusual: Substitution['unusual'],
): Words[] {
  if (weight === undefined || unusual === undefined) return [];
  const stitches = Math.round((4 * MM_PER.in) / stitchMm);
  return [
    say`${weight.name} yarn is mostly knitted at ${weight.from} to ${weight.to} stitches over 4 in, and this plan at ${stitches}`,
  ];
}

function toSwatch(texRatio: number): Words {
  const rows = count(60, 'row');
  return Math.abs(texRatio - 1) > ALIKE
    ? say`swatch ${rows} first, at the tension of the plan and one to either side: your gauge will change with this yarn`
    : say`swatch ${rows} first, and weigh them: gauge should stay, but only a swatch shows it`;
}
