import { describe, expect, test } from 'vitest';
import type { Piece } from '../../core/piece.js';
import { pieces } from '../../core/pieces/index.js';
import { type Plan, type PlanInput, plan } from '../../core/plan.js';
import type { Offer, Problem } from '../../core/problems.js';
import { cornerValues, FABRICS, MACHINES, unprintable } from './asking.js';

const everyCorner = (piece: Piece): PlanInput[] =>
  cornerValues(piece).flatMap((values) =>
    FABRICS.flatMap((measurements) =>
      MACHINES.map((needles): PlanInput => ({ piece, values, needles, measurements, pieces: 1 })),
    ),
  );

/** What must hold of every plan, in words, when it does not. */
function faults(made: Plan): string[] {
  const { landing, checkpoint, yarn } = made;
  const chances = [landing.chance, ...made.sizes.flatMap((s) => s.across?.asked?.chance ?? [])];
  const faulty: [string, boolean][] = [
    ['rows are not whole or none', !(Number.isInteger(made.rows) && made.rows >= 1)],
    ['a chance is outside 0 to 1', chances.some((c) => c < 0 || c > 1)],
    ['a size is not above zero', made.sizes.some((s) => s.expectedMm !== undefined && s.expectedMm <= 0)],
    ['measured after the last row', checkpoint !== undefined && checkpoint.row >= made.rows],
    ['yarn below zero', yarn !== undefined && (yarn.lengthM <= 0 || yarn.wasteM < 0)],
    ['a step counts below zero', made.steps.some((s) => s.count < 0)],
  ];
  return faulty.flatMap(([fault, found]) => (found ? [fault] : []));
}

const offersOf = (problem: Problem): readonly Offer[] => ('offers' in problem ? problem.offers : []);

function edited(input: PlanInput, { edit }: Offer): PlanInput {
  const values = Object.entries({ ...input.values, ...edit }).flatMap(([id, given]) => (given ? [[id, given]] : []));
  return { ...input, values: Object.fromEntries(values) };
}

/** The codes met on the way when every offer is followed until a plan comes of it; empty for a plan. */
function leadsNowhere(input: PlanInput, met: readonly string[] = []): string[] {
  const outcome = plan(input);
  if (outcome.ok) return [];
  return outcome.problems.flatMap((problem) => {
    const offers = offersOf(problem);
    const path = [...met, problem.code];
    if (offers.length === 0 || met.includes(problem.code)) return [path.join(' → ')];
    return offers.flatMap((offer) => leadsNowhere(edited(input, offer), path));
  });
}

const named = pieces.map((piece) => [piece.label, piece] as const);

describe.each(named)('%s at every corner of what it can be asked', (_, piece) => {
  const outcomes = everyCorner(piece).map((input) => ({ input, outcome: plan(input) }));

  test('comes to a plan whose numbers are all finite and sound, or to named problems', () => {
    const wrong = outcomes.flatMap(({ input, outcome }) => {
      const found = outcome.ok ? faults(outcome.value) : outcome.problems.length === 0 ? ['no problem named'] : [];
      const all = [...found, ...unprintable(outcome)];
      return all.length === 0 ? [] : [{ input, all }];
    });
    expect(wrong.slice(0, 1)).toEqual([]);
    expect(outcomes.some(({ outcome }) => outcome.ok)).toBe(true);
  });

  test('makes no offer that does not lead to a plan', () => {
    const dead = outcomes.flatMap(({ input, outcome }) => {
      if (outcome.ok || outcome.problems.flatMap(offersOf).length === 0) return [];
      const ends = leadsNowhere(input);
      return ends.length === 0 ? [] : [{ input, ends }];
    });
    expect(dead.slice(0, 1)).toEqual([]);
  });
});
