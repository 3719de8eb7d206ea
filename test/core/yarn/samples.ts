import type { Step } from '../../../core/piece.js';
import type { Outcome } from '../../../core/problems.js';
import { say } from '../../../core/words.js';
import type { LoopEstimate } from '../../../core/yarn/loop-estimate.js';
import type { YarnProblem } from '../../../core/yarn/problems.js';

/** The loop of 7.454 by 5.08 mm at rest. */
export const LOOP_MM = 26.8234;

/** A loop told by gauge alone, unless said. */
export const loopOf = (mm: number, more: Partial<LoopEstimate> = {}): LoopEstimate => ({
  mm,
  cv: 0.2,
  from: 'gauge',
  sources: [],
  peirceMm: undefined,
  differing: undefined,
  gPerStitch: undefined,
  ...more,
});

/** A step with nothing in it but its yarn. */
export const step = (yarn: Step['yarn'], more: Partial<Step> = {}): Step => ({
  id: 'step',
  driver: 'crank',
  count: 1,
  say: say`knit`,
  ...(yarn && { yarn }),
  ...more,
});

/** What came out, where something should. */
export function valueIn<T>(outcome: Outcome<T, YarnProblem>): T {
  if (!outcome.ok) throw new Error(outcome.problems.map((p) => p.code).join(', '));
  return outcome.value;
}

/** The problems, where they are expected. */
export function yarnProblems(outcome: Outcome<unknown, YarnProblem>): readonly YarnProblem[] {
  if (outcome.ok) throw new Error('no problem was found');
  return outcome.problems;
}
