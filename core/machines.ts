import { type Plan, type PlanInput, plan } from './plan.js';
import type { PlannedSize } from './planned-size.js';
import type { Outcome, Problem } from './problems.js';
import type { NeedleDimension } from './sizing/needles.js';

/** A machine that a piece could be made on, with what was measured on it, or elsewhere in the same yarn. */
export type MachineBench = Pick<PlanInput, 'needles' | 'measurements' | 'inYarn' | 'borrowedFrom'> & { name: string };

/** What one machine makes of a piece. `chance` is what it is ranked by; undefined where it cannot make it and none is known. */
export type OnMachine<B extends MachineBench> = { bench: B; outcome: Outcome<Plan>; chance: number | undefined };

/**
 * Returns what each machine would make of a piece, best first: the plan on it, or why there is none.
 *
 * Where the needles of a machine make a size that was asked for, each counts by the chance of that size; where none was
 * asked, or the piece takes needles of its own choosing everywhere, by the landing chance of its rows. Chances that print alike
 * are ties: the surer rows come first, then the fewer needles. Machines that cannot make it come last, the nearest first.
 * @param ask values by ask id, as for {@link plan}
 */
export function onMachines<B extends MachineBench>(
  ask: Pick<PlanInput, 'piece' | 'values'>,
  benches: readonly B[],
): OnMachine<B>[] {
  const tried = benches.map((bench) => ({ bench, outcome: plan({ ...ask, ...bench, pieces: 1 }) }));
  const isByNeedles = tried.some(
    ({ outcome }) => outcome.ok && outcome.value.tube && chanceAcross(outcome.value) !== undefined,
  );
  return tried.map((one) => ({ ...one, chance: chanceOf(one.outcome, isByNeedles) })).sort(better);
}

/** The size of a plan that its needles make, one that was asked for before any other; undefined where none is known. */
export function acrossOf({ sizes }: Plan): (PlannedSize & { across: NeedleDimension }) | undefined {
  const known = sizes.flatMap((size) => (size.across === undefined ? [] : [{ ...size, across: size.across }]));
  return known.find(({ across }) => across.asked !== undefined) ?? known[0];
}

/** The chance of a size across the needles that was asked for, or that what goes in has room. */
function chanceAcross(made: Plan): number | undefined {
  const { asked, needed } = acrossOf(made)?.across ?? {};
  return (asked ?? needed)?.chance;
}

function chanceOf(outcome: Outcome<Plan>, isByNeedles: boolean): number | undefined {
  if (outcome.ok) return (isByNeedles ? chanceAcross(outcome.value) : undefined) ?? outcome.value.landing.chance;
  return outcome.problems.map((problem) => ('chance' in problem ? problem.chance : undefined))[0];
}

function better(a: OnMachine<MachineBench>, b: OnMachine<MachineBench>): number {
  const made = Number(b.outcome.ok) - Number(a.outcome.ok);
  const likely = printed(b.chance) - printed(a.chance);
  return made || likely || surer(a.outcome, b.outcome) || nearer(a.outcome, b.outcome) || needlesOf(a) - needlesOf(b);
}

const surer = (a: Outcome<Plan>, b: Outcome<Plan>): number =>
  a.ok && b.ok ? printed(b.value.landing.chance) - printed(a.value.landing.chance) : 0;

const nearer = (a: Outcome<Plan>, b: Outcome<Plan>): number =>
  a.ok || b.ok ? 0 : missOf(a.problems) - missOf(b.problems);

/** How far the needles miss what was asked, in logs. */
const missOf = (problems: readonly Problem[]): number =>
  Math.max(0, ...problems.map((one) => (one.code === 'needles_set_it' ? Math.abs(Math.log1p(one.stitchChange)) : 0)));

const printed = (chance = 0): number => Math.round(100 * chance);

const needlesOf = ({ bench }: OnMachine<MachineBench>): number => bench.needles ?? 0;
