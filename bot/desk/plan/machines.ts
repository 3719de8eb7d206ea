import {
  acrossOf,
  chance,
  length,
  type OnMachine,
  onMachines,
  type Piece,
  type Plan,
  say,
  type Words,
} from '../../../core/index.js';
import type { MakersBench, Offered } from '../../reply.js';
import type { Bench, PlanAsk } from '../../request.js';
import type { At } from '../desk.js';
import { yarnMeant } from '../gauge/bench.js';
import { machineName, sameName } from '../names.js';
import { given, inUse } from './in-use.js';
import { basisOf } from './planning.js';

/** The maker's machines, each with the gauge that stands for it in the yarn meant; none where that yarn has no gauge. */
export async function machinesOf(on: Bench, at: At): Promise<MakersBench[]> {
  const profiles = await at.store.profiles.of(at.maker.id);
  const yarn = yarnMeant(on, profiles);
  const machines = [...new Map(profiles.map(({ machine }) => [machine.id, machine])).values()];
  const benches = await Promise.all(
    machines.map(async (own): Promise<MakersBench[]> => {
      // A setting is that of the machine it was said of.
      const tension = sameName(own.name, on.machine ?? '') ? on.tension : undefined;
      const { meant, profile, ...basis } = await basisOf({ machine: own.name, yarn, tension }, at);
      return profile ? [{ ...basis, name: own.name, machine: own, needles: own.needles, profile }] : [];
    }),
  );
  return benches.flat();
}

/** What each machine whose needles are known makes of a piece, best first. */
export const rankedFor = (ask: PlanAsk, piece: Piece, benches: readonly MakersBench[]): OnMachine<MakersBench>[] =>
  onMachines(
    { piece, values: given(inUse(ask)) },
    benches.filter(({ needles }) => needles !== undefined),
  );

/** Another machine that makes all that is asked of a piece: what comes out on it, and the request that plans it there. */
export type Elsewhere = { name: string; made: Words; offer: Offered };

/** The maker's other machines that fit, best first. */
export async function elsewhere(ask: PlanAsk, piece: Piece, at: At, follows?: boolean): Promise<Elsewhere[]> {
  const benches = await machinesOf(ask.on, at);
  const others = benches.filter(({ name }) => !sameName(name, ask.on.machine ?? ''));
  return rankedFor(ask, piece, others).flatMap(({ bench, outcome, chance: odds = 0 }) => {
    if (!outcome.ok || outcome.value.shortfalls.length > 0) return [];
    const name = machineName(bench);
    return [{ name, made: madeThere(outcome.value, odds), offer: plannedOn(ask, bench, follows) }];
  });
}

/** `about 7 in tall, likely (62%)`; the rows where no size across the needles is known. */
function madeThere(plan: Plan, odds: number): Words {
  const size = acrossOf(plan);
  return size === undefined
    ? say`${plan.rows} rows, ${chance(odds)}`
    : say`about ${length(size.across.expectedMm)} ${size.adjective}, ${chance(odds)}`;
}

/** A machine with its yarn, as a plan names them. */
export const benchOf = ({ machine, profile }: MakersBench): Bench => ({
  machine: machine.name,
  needles: machine.needles,
  yarn: profile.yarn.name,
});

/** The piece planned on a machine, by a button and by the words that do the same. */
export function plannedOn(ask: PlanAsk, bench: MakersBench, follows?: boolean): Offered {
  const name = machineName(bench);
  const words = bench.name === '' ? {} : { say: `on ${name}` };
  return { button: `On ${name}`, ...words, request: { kind: 'plan', ask: { ...ask, on: benchOf(bench) }, follows } };
}
