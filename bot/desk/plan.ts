import {
  ENGINE,
  evidence,
  gauge,
  type Measurement,
  type Plan,
  type Problem,
  pieceById,
  say,
  type Words,
} from '../../core/index.js';
import type { Conversation } from '../conversation.js';
import { inUnits } from '../language/lengths.js';
import type { Offered } from '../reply.js';
import type { PlanAsk, Request, Value } from '../request.js';
import type { Profile } from '../store/ports.js';
import { changesBetween } from './changes.js';
import { type At, type Desk, type DeskAnswer, refusal } from './desk.js';
import { needleProblems } from './gauge-checks.js';
import { unitRead } from './measured.js';
import { tried } from './planning.js';
import { gaugeQuestion, pieceQuestion, sizeQuestion, unitsQuestion, widthQuestion } from './question.js';

/** A size asked for → rows in the maker's own gauge; or the one question, or why it cannot be. */
export const planDesk: Desk<'plan'> = async ({ ask: wanted, follows = false }, at) => {
  const piece = wanted.piece === undefined ? undefined : pieceById(wanted.piece);
  if (piece === undefined) return pieceQuestion(wanted, at);
  const impossible = needleProblems(wanted.on);
  if (impossible.length > 0) return refusal(at, ...impossible);

  const values = Object.fromEntries(Object.entries(wanted.values).map(([id, v]) => [id, inUnits(v, at.maker.units)]));
  const bare = Object.values(values).find((value) => value.is === 'bare');
  if (bare !== undefined)
    return unitsQuestion({ kind: 'plan', ask: { ...wanted, values }, follows }, bare.said ?? '', at);

  const { outcome, profile, measurements, ask } = await tried({ ...wanted, values }, piece, at);
  if (!outcome.ok) return notPlanned(ask, outcome.problems, at);
  if (profile === undefined) throw new Error('a plan without a gauge');
  return planned(ask, outcome.value, profile, measurements, follows, at);
};

async function planned(
  ask: PlanAsk,
  made: Plan,
  profile: Profile,
  measurements: readonly Measurement[],
  follows: boolean,
  at: At,
): Promise<DeskAnswer> {
  const planId = at.newId();
  const numbers = { needles: made.needles, rows: made.rows, graftRows: made.graftRows, chance: made.landing.chance };
  const { piece } = made;
  const makerId = at.maker.id;
  await at.store.plans.add({
    id: planId,
    makerId,
    piece,
    profileId: profile.id,
    ask,
    numbers,
    engine: ENGINE,
    at: at.now,
  });
  await at.store.profiles.used(profile.id, at.now);
  const { subject } = at.talk;
  const talk: Conversation = { ...at.talk, subject: ask, planId, pending: undefined };
  const offers: Offered[] = [
    {
      button: 'Show Steps',
      say: 'steps',
      spoken: `Show the steps for this ${made.label.toLowerCase()}`,
      request: { kind: 'steps', planId },
    },
    { button: 'My Gauge', say: 'my gauge', request: { kind: 'show_gauge', on: {} } },
  ];
  const reply = {
    kind: 'plan' as const,
    plan: made,
    planId,
    ask,
    gauge: { machine: profile.machine, yarn: profile.yarn, gauge: gauge(evidence(measurements)) },
    changed: follows ? changesBetween(subject, ask) : [],
    assumed: unitsAssumed(ask),
    offers,
  };
  return { reply, talk };
}

/** `11 read in inches`, for every number whose unit was taken for granted. */
const unitsAssumed = (ask: PlanAsk): Words[] =>
  Object.values(ask.values).flatMap((value) =>
    value.said !== undefined && (value.assumed === 'unit' || value.assumed === 'field')
      ? [say`${value.said} read in ${unitRead(value)}`]
      : [],
  );

function notPlanned(ask: PlanAsk, problems: readonly Problem[], at: At): DeskAnswer {
  const request: Request & { kind: 'plan' } = { kind: 'plan', ask };
  const missing = problems.find((problem) => problem.code === 'missing');
  const others = problems.filter((problem) => problem.code !== 'missing');
  const [first] = others;
  if (first === undefined && missing !== undefined) return sizeQuestion(request, missing, at);
  if (others.length === 1 && first?.code === 'no_row_gauge')
    return gaugeQuestion(request, at, ask.on.yarn || undefined);
  if (others.length === 1 && first?.code === 'no_stitch_gauge') return widthQuestion(request, at);
  const ways = others.flatMap((problem) => ('offers' in problem ? problem.offers : []));
  const offers: Offered[] = ways.map((way, i) => ({
    button: `Way ${i + 1}`,
    say: ['the first', 'the second', 'the third'][i] ?? '',
    request: { kind: 'plan', ask: { ...ask, values: edited(ask.values, way.edit) } },
  }));
  return { reply: { kind: 'problem', problems: others, ways, offers }, talk: at.talk };
}

/** One level deep: a value is replaced whole, null removes it. */
function edited(values: Record<string, Value>, edit: Record<string, Value | null>): Record<string, Value> {
  const kept = Object.entries({ ...values, ...edit });
  return Object.fromEntries(kept.flatMap(([id, value]) => (value === null ? [] : [[id, value]])));
}
