import { type Plan, reasons, say, type Words } from '../../../core/index.js';
import type { StoredMeasurement } from '../../store/ports.js';
import type { Desk } from '../desk.js';
import { machineName } from '../names.js';
import { planMeant } from './plan-meant.js';

/** So many measurements are told one by one; the newest stand for the others. */
const MOST_TOLD = 4;

/** Why the plan in hand has its rows, with what stands behind each figure. Nothing is stored. */
export const whyDesk: Desk<'why'> = async ({ rows }, at) => {
  const meant = await planMeant(at);
  if ('reply' in meant) return meant;
  const { plan, ask, profile } = meant;
  const [wanted, ...others] = reasons(
    plan,
    rows.filter((count) => count !== plan.rows),
  );
  const measured = (await at.store.measurements.of(profile.id)).filter((one) => one.rows !== undefined);
  const lines = [
    ...(wanted === undefined ? [] : [wanted]),
    measuredLine(plan, measured, machineName(profile.machine)),
    ...others,
  ];
  const lead = say`Why ${plan.rows} rows`;
  const examples = ['what would help', 'my gauge', 'steps'];
  return {
    reply: { kind: 'answer', lead, lines, examples, isOwn: true, offers: [] },
    talk: { ...at.talk, subject: ask },
  };
};

function measuredLine({ isBorrowed, work }: Plan, measured: readonly StoredMeasurement[], machine: string): Words {
  const told = measured.slice(-MOST_TOLD).map(({ said }) => said);
  const more = measured.length - told.length;
  const all = say`${told.join('; ')}${more === 0 ? '' : `; and ${more} before them`}`;
  const read = work?.standing === undefined ? say`` : say`, and what was read of this piece`;
  return isBorrowed ? say`Measured on ${machine}: ${all}${read}.` : say`Measured: ${all}${read}.`;
}
