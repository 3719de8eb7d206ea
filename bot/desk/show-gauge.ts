import { evidence, gauge as gaugeOf } from '../../core/index.js';
import type { Desk } from './desk.js';
import { gaugeQuestion } from './question.js';

/** The maker's gauges, surest first; with none yet, what to measure. */
export const showGaugeDesk: Desk<'show_gauge'> = async (request, at) => {
  const profiles = await at.store.profiles.of(at.maker.id);
  const used = await Promise.all(
    profiles.map(async ({ id, machine, yarn }) => ({
      machine,
      yarn,
      gauge: gaugeOf(evidence(await at.store.measurements.of(id))),
    })),
  );
  const gauges = used
    .filter(
      ({ gauge, machine }) =>
        gauge.pieces > 0 && (request.on.needles === undefined || machine.needles === request.on.needles),
    )
    .sort((a, b) => (a.gauge.row?.sd ?? 1) - (b.gauge.row?.sd ?? 1));
  if (gauges.length === 0) {
    const { reply } = gaugeQuestion(request, at);
    return { reply, talk: at.talk };
  }
  return { reply: { kind: 'gauges', gauges, offers: [] }, talk: at.talk };
};
