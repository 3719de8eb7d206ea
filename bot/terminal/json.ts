import { acrossOf, inShort, notionsFor, type Plan, type Printing, printed } from '../../core/index.js';
import { capital } from '../cards/names.js';
import { plainText } from '../cards/plain-text.js';
import { isoDay } from '../day-words.js';
import type { Exchange } from '../exchanged.js';
import type { Schedule } from '../replies/batch.js';
import type { Took } from '../replies/bench.js';
import type { Reply, ReplyOf, WorkShown } from '../reply.js';
import type { Answered } from '../turn.js';

/**
 * An answer as data: `request` and `reply` of the last request in the message, those before it in `before`.
 * Names carry their unit as a suffix: Mm, M, G, S.
 */
export function asJson(answered: Answered, explain: boolean): Record<string, unknown> {
  if (answered.status === 'seen' || answered.status === 'refused') return { request: null, reply: null };
  if (answered.status === 'apologised') {
    return { request: null, reply: { kind: 'problem', text: answered.text, reference: answered.reference } };
  }
  const { exchanges, card, printing, trace } = answered;
  const last = exchanges.at(-1);
  const before = exchanges.slice(0, -1).map((exchange) => exchangeJson(exchange, printing));
  return {
    request: last?.request,
    reply: last && { kind: kindOf(last.reply), text: plainText(card), ...replyJson(last.reply, printing) },
    ...(before.length > 0 && { before }),
    ...(explain && { trace }),
  };
}

const exchangeJson = ({ request, reply }: Exchange, printing: Printing) => ({
  request,
  reply: { kind: kindOf(reply), ...replyJson(reply, printing) },
});

/** A correction is a plan whose `rows` is the new stop row. */
const kindOf = ({ kind }: Reply): string => (kind === 'correction' ? 'plan' : kind);

function replyJson(reply: Reply, printing: Printing): Record<string, unknown> {
  switch (reply.kind) {
    case 'plan':
      return {
        planId: reply.planId,
        ...(reply.time && { time: timeJson(reply.time) }),
        plan: {
          ...planJson(reply.plan, printing),
          stripes: reply.stripes,
          schedule: reply.schedule && scheduleJson(reply.schedule),
        },
        assumed: reply.assumed.map((w) => printed(w, printing)),
      };
    case 'sizes':
      return {
        sizes: reply.sizes.map(({ name, size, outcome }) => ({
          label: name,
          values: size.values,
          ...(outcome.ok ? { plan: planJson(outcome.value, printing) } : { problems: outcome.problems }),
        })),
        assumed: reply.assumed.map((w) => printed(w, printing)),
      };
    case 'steps':
      return { plan: { ...planJson(reply.plan, printing), stripes: reply.stripes } };
    case 'gauge':
      return { recorded: printed(reply.recorded, printing), gauge: gaugeJson(reply.gauge) };
    case 'correction':
      return { plan: planJson(reply.plan, printing), stopBefore: reply.stopBefore, read: reply.read.reading };
    case 'work':
      return { work: workJson(reply.work), became: reply.became };
    case 'counts':
      return { work: workJson(reply.work), counts: reply.counts, verdict: reply.verdict };
    case 'finished': {
      const { label, rows, size, massG, was, next } = reply;
      return {
        finished: { label, rows, mm: size?.mm, loMm: size?.landing.loMm, hiMm: size?.landing.hiMm, massG },
        was,
        next,
      };
    }
    case 'stocked':
      return { lots: reply.lots };
    case 'shelf':
      return { lots: reply.lots };
    case 'batch': {
      const { pieces, done, members, own, schedule, dueDay } = reply;
      return {
        batch: { pieces, done, dueDay: isoDay(dueDay), members, own, schedule: schedule && scheduleJson(schedule) },
      };
    }
    case 'sold':
      return { yarn: reply.yarn, putUps: reply.putUps };
    case 'time':
      return { time: timeJson(reply.time) };
    case 'logged':
      return { times: reply.times, was: reply.was, now: reply.now, sessions: reply.sessions };
    case 'hours':
      return { hours: reply.hours, timeZone: reply.timeZone };
    case 'yarn_left':
      return { left: leftJson(reply), plan: planJson(reply.plan, printing) };
    case 'helps':
      return { remedies: reply.remedies };
    case 'pieces':
      return { gauge: gaugeJson(reply.gauge), measurements: reply.measurements };
    case 'gauges':
      return { gauges: reply.gauges.map(gaugeJson) };
    case 'machines':
      return { machines: reply.ranked.map(machineJson), untold: reply.untold.map(({ name }) => name) };
    case 'problem':
      return { problems: reply.problems };
    default:
      return {};
  }
}

const timeJson = ({ timing, copies, paced, sessions }: Took) => ({ copies, ...timing, paced, sessions });
/** ISO days: the latest to start and to buy, even if all goes slowly; when all is ready, as a rule and slowly. */
const scheduleJson = ({ readiness, latest, readyDay, slowReadyDay, dueDay }: Schedule) => ({
  readiness,
  startBy: isoDay(latest.startDay),
  buyBy: isoDay(latest.buyDay),
  notionsBy: isoDay(latest.closuresDay),
  readyBy: isoDay(dueDay),
  doneOn: isoDay(readyDay),
  doneSlowlyOn: isoDay(slowReadyDay),
});

function machineJson({ bench, outcome, chance }: ReplyOf<'machines'>['ranked'][number]) {
  const { name, needles, borrowedFrom } = bench;
  const on = { machine: name, needles, borrowedFrom, chance };
  if (!outcome.ok) return { ...on, problems: outcome.problems };
  const { rows, landing } = outcome.value;
  const size = acrossOf(outcome.value);
  const { loMm, hiMm } = landing;
  return {
    ...on,
    rows,
    landing: { dimension: landing.dimension, loMm, hiMm, chance: landing.chance },
    across: size && { dimension: size.id, ...size.across },
  };
}

const workJson = ({ id, label, machine, rows, stopAt, soFarMm, measureAt }: WorkShown) => ({
  id,
  label,
  machine: machine.name,
  rows,
  stopAt,
  toGo: stopAt - rows,
  soFarMm,
  measureAt,
});

function leftJson({ yarn, unit, expected, promised, chance, lasts, joinBy, at, stopAt, reach }: ReplyOf<'yarn_left'>) {
  const { left, toCome, perRow, cv } = yarn;
  return { unit, left, toCome, perRow, cv, expected, promised, chance, lasts, joinBy, at, stopAt, reach };
}

function gaugeJson({ machine, yarn, tension, gauge }: (Reply & { kind: 'gauge' })['gauge']) {
  const spacing = (estimate: typeof gauge.row) =>
    estimate && { medianMm: Math.exp(estimate.mu), sdLog: estimate.sd, nu: estimate.nu };
  return {
    machine: machine.name,
    needles: machine.needles,
    yarn: yarn.name,
    tension,
    pieces: gauge.pieces,
    row: spacing(gauge.row),
    stitch: spacing(gauge.stitch),
    drift: gauge.drift,
  };
}

function planJson(plan: Plan, printing: Printing) {
  const words = (list: readonly Parameters<typeof printed>[0][]) => list.map((w) => printed(w, printing));
  return {
    piece: plan.piece,
    needles: plan.needles,
    rows: plan.rows,
    graftRows: plan.graftRows,
    pieces: plan.pieces,
    finished: Object.fromEntries(plan.sizes.map(({ figure, expectedMm }) => [figure, expectedMm])),
    tube: plan.tube,
    landing: plan.landing,
    across: plan.sizes.flatMap(({ id, across }) => (across === undefined ? [] : [{ dimension: id, ...across }])),
    checkpoint: plan.checkpoint,
    checkpointAtRest: plan.checkpointAtRest,
    work: plan.work,
    yarn: plan.yarn,
    notions: notionsFor(plan.notions, plan.pieces).map(({ say, ...notion }) => ({
      ...notion,
      text: printed(say, printing),
    })),
    steps: plan.steps.map(({ say, ...step }) => ({
      ...step,
      text: printed(say, printing),
      short: capital(printed(inShort(say), printing)),
    })),
    cautions: words(plan.cautions),
    shortfalls: words(plan.shortfalls),
    assumed: words(plan.assumed),
  };
}
