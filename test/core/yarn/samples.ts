import type { Outcome } from '../../../core/problems.js';
import type { YarnProblem } from '../../../core/yarn/problems.js';

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
