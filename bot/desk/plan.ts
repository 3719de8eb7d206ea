import { ENGINE, evidence, gauge, type Measurement, type Plan, type Problem, pieceById } from '../../core/index.js';
import type { Conversation } from '../conversation.js';
import { inUnits } from '../language/lengths.js';
import type { Offered } from '../reply.js';
import type { PlanAsk, Request, Value } from '../request.js';
import type { Profile } from '../store/ports.js';
import { changesBetween } from './changes.js';
import { type At, type Desk, type DeskAnswer, refusal } from './desk.js';
import { needleProblems } from './gauge-checks.js';
import { tried } from './planning.js';
import { gaugeQuestion, pieceQuestion, sizeQuestion, unitsQuestion, widthQuestion } from './question.js';
import { readAs } from './typed.js';

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
  if (!outcome.ok) return notPlanned({ kind: 'plan', ask, follows }, outcome.problems, at);
  if (profile === undefined) throw new Error('a plan without a gauge');
  return planned(ask, outcome.value, profile, measurements, follows, at);
};

const UNDO: Offered = {
  button: 'Undo',
  say: 'undo',
  spoken: 'Take this change back',
  request: { kind: 'undo', redo: false },
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
    { button: 'Start Knitting', say: 'start', request: { kind: 'start', planId }, primary: true },
    {
      button: 'Show Steps',
      say: 'steps',
      spoken: `Show the steps for this ${made.label.toLowerCase()}`,
      request: { kind: 'steps', planId },
    },
    ...(follows ? [UNDO] : []),
    { button: 'My Gauge', say: 'my gauge', request: { kind: 'show_gauge', on: {} } },
  ];
  const reply = {
    kind: 'plan' as const,
    plan: made,
    planId,
    ask,
    gauge: { ...profile, gauge: gauge(evidence(measurements)) },
    changed: follows ? changesBetween(subject, ask) : [],
    assumed: readAs(Object.values(ask.values)),
    offers,
  };
  return { reply, talk };
}

function notPlanned(request: Request & { kind: 'plan' }, problems: readonly Problem[], at: At): DeskAnswer {
  const { ask } = request;
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
    request: { ...request, ask: { ...ask, values: edited(ask.values, way.edit) } },
  }));
  return {
    reply: { kind: 'problem', problems: others, ways, offers, assumed: readAs(Object.values(ask.values)) },
    talk: at.talk,
  };
}

/** One level deep: a value is replaced whole, null removes it. */
function edited(values: Record<string, Value>, edit: Record<string, Value | null>): Record<string, Value> {
  const kept = Object.entries({ ...values, ...edit });
  return Object.fromEntries(kept.flatMap(([id, value]) => (value === null ? [] : [[id, value]])));
}
