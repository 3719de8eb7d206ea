import { evidence, type Gauge, gauge as gaugeOf, say } from '../../../core/index.js';
import type { Bench } from '../../request.js';
import type { Profile } from '../../store/ports.js';
import type { At, Desk } from '../desk.js';
import { benchName, machineName, sameName } from '../names.js';
import { MY_GAUGE } from '../offers.js';
import { gaugeQuestion } from '../question.js';

/** The maker's gauges on the machine and in the yarn named, surest first; with none at all, what to measure. */
export const showGaugeDesk: Desk<'show_gauge'> = async (request, at) => {
  const { on } = request;
  const measured = await measuredGauges(at);
  if (measured.length === 0) return { reply: gaugeQuestion(request, at).reply, talk: at.talk };
  const gauges = measured.filter((profile) => isOn(profile, on));
  if (gauges.length > 0) return { reply: { kind: 'gauges', gauges, offers: [] }, talk: at.talk };
  const known = measured.map(({ machine, yarn, tension }) => benchName(machine, yarn, tension));
  return {
    reply: {
      kind: 'answer',
      lead: say`No gauge${whereabouts(on)} yet`,
      lines: [say`What there is: ${known.join('; ')}.`],
      examples: [],
      offers: [MY_GAUGE],
    },
    talk: at.talk,
  };
};

/** Every profile with something measured, and its gauge; surest first. */
export async function measuredGauges({ maker, store }: At): Promise<(Profile & { gauge: Gauge })[]> {
  const profiles = await store.profiles.of(maker.id);
  const used = await Promise.all(
    profiles.map(async (profile) => ({
      ...profile,
      gauge: gaugeOf(evidence(await store.measurements.of(profile.id))),
    })),
  );
  return used.filter(({ gauge }) => gauge.pieces > 0).sort((a, b) => (a.gauge.row?.sd ?? 1) - (b.gauge.row?.sd ?? 1));
}

/** `in grey medium on the 48`, whichever was named. */
function whereabouts({ machine, needles, yarn }: Bench): string {
  const name = machine ?? needles?.toString();
  return `${yarn === undefined ? '' : ` in ${yarn}`}${name === undefined ? '' : ` on ${machineName({ name })}`}`;
}

/** True for the machine of this name or this many needles, in the yarn named. */
export function isOn({ machine, yarn }: Profile, on: Bench): boolean {
  const isNamed = on.machine !== undefined && sameName(machine.name, on.machine);
  const hasNeedles = on.needles !== undefined && machine.needles === on.needles;
  const isAny = on.machine === undefined && on.needles === undefined;
  return (isAny || isNamed || hasNeedles) && (on.yarn === undefined || sameName(yarn.name, on.yarn));
}
