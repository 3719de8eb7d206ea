import { ENGINE, evidence, gauge, type Plan, pieceById, say, type Words } from '../../../core/index.js';
import type { Conversation } from '../../conversation.js';
import type { Took } from '../../replies/bench.js';
import type { Offered, ReplyOf } from '../../reply.js';
import type { PlanAsk } from '../../request.js';
import { valuesOf } from '../../sizes.js';
import type { Profile } from '../../store/ports.js';
import { batchDealt } from '../batch/batch-deal.js';
import { isOwnHours } from '../batch/hands.js';
import { changesBetween } from '../changes.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { needleProblems } from '../gauge/gauge-checks.js';
import { MY_GAUGE, UNDO } from '../offers.js';
import { HOURS_OFFERS, pieceQuestion, unitsQuestion } from '../question.js';
import { type Behind, holdersBehind } from '../share/send-change.js';
import { channelOf, knownAsShared } from '../share/shares.js';
import { remindersMoved } from '../time/remind.js';
import { scheduleAlone } from '../time/schedule.js';
import { took } from '../time/show-time.js';
import { readAs } from '../typed.js';
import { inUse } from './in-use.js';
import { type Elsewhere, elsewhere } from './machines.js';
import { type InStripes, withMeeting } from './meeting.js';
import { notPlanned } from './not-planned.js';
import { inUnitsOf, type Tried, tried } from './planning.js';
import { sizesPlanned } from './sizes.js';
import { stripesOf, stripesRead, unsettled } from './stripes.js';

/** A size asked for → rows in the maker's own gauge; or the one question, or why it cannot be. */
export const planDesk: Desk<'plan'> = async ({ ask: wanted, follows = false }, at) => {
  const piece = wanted.piece === undefined ? undefined : pieceById(wanted.piece);
  if (piece === undefined) return pieceQuestion(wanted, at);
  const impossible = needleProblems(wanted.on);
  if (impossible.length > 0) return refusal(at, ...impossible);

  const known = follows ? await knownAsShared(wanted, at) : wanted;
  const typed = inUnitsOf(unsettled(known), at.maker.units);
  const bare = valuesOf(typed).find((value) => value.is === 'bare');
  if (bare !== undefined) return unitsQuestion({ kind: 'plan', ask: typed, follows }, bare.said ?? '', at);
  if (typed.sizes !== undefined) return sizesPlanned(typed, typed.sizes, piece, follows, at);

  const { outcome, profile, ...on } = await tried(typed, piece, at);
  if (!outcome.ok) return notPlanned({ kind: 'plan', ask: on.ask, follows }, outcome.problems, at);
  if (profile === undefined) throw new Error('a plan without a gauge');
  return planned({ ...on, profile }, outcome.value, follows, at);
};

/** The machine that makes what the needles here miss, though tension could reach it. */
async function nearer(ask: PlanAsk, made: Plan, at: At): Promise<Elsewhere | undefined> {
  const piece = pieceById(made.piece);
  const fitting = piece === undefined || made.shortfalls.length === 0 ? [] : await elsewhere(ask, piece, at, true);
  return fitting[0];
}

async function planned(
  { ask, profile, measurements, ball }: Omit<Tried, 'outcome' | 'profile'> & { profile: Profile },
  made: Plan,
  follows: boolean,
  at: At,
): Promise<DeskAnswer> {
  const stripes = stripesOf(ask, made);
  if (stripes?.ok === false)
    return refusal(at, ...stripes.problems.map((problem) => ({ code: 'of_stripes' as const, problem })));
  const inStripes = stripes && (await withMeeting(ask, stripes.value, at));
  const there = await nearer(ask, made, at);
  const planId = at.newId();
  const numbers = { needles: made.needles, rows: made.rows, graftRows: made.graftRows, chance: made.landing.chance };
  const { piece } = made;
  const makerId = at.maker.id;
  const keep = async (): Promise<void> => {
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
  };
  if (ask.team !== undefined) return batchDealt({ ask, made, planId, follows, keep }, at);
  await keep();
  if (follows) await remindersMoved(at.talk.planId, planId, at);
  const behind = await holdersBehind(ask, at);
  const { subject } = at.talk;
  const talk: Conversation = { ...at.talk, subject: ask, planId, rowsMake: made.landing.dimension, pending: undefined };
  const changed = follows ? changesBetween(subject, ask) : [];
  const time = await timeOf(ask, made, at);
  const scheduled = await scheduleFor(ask, made, at);
  const how = { ball, there, inStripes, behind, follows, changed, time, scheduled, canPost: canPost(at) };
  const standing = follows ? await standingWork(made, at) : undefined;
  return { reply: { ...planReply({ ask, made, planId, profile, measurements, ...how }), standing }, talk };
}

/** The work begun in this talk goes on as it was planned; how to knit to the plan as changed. */
async function standingWork(
  { piece, label }: Plan,
  { maker, store, talk: { workId } }: At,
): Promise<Words | undefined> {
  const work = workId === undefined ? undefined : await store.works.get(workId, maker.id);
  if (work === undefined || work.endedAt !== undefined) return undefined;
  if ((await store.plans.get(work.planId, maker.id))?.piece !== piece) return undefined;
  const begun = say`On the machine the ${label.toLowerCase()} stays as it was begun: row ${work.rows}, stop at ${work.stopAt}.`;
  return say`${begun} To knit to the change, say "give it up", "start" and "row ${work.rows}".`;
}

/** The plan in hand as it was said, with what is known now and what changed beside it; undefined where there is none. Stores nothing. */
export async function saidAgain(changed: readonly Words[], at: At): Promise<ReplyOf<'plan'> | undefined> {
  const { pending, planId, subject } = at.talk;
  const piece = pieceById(subject?.piece ?? '');
  if (subject === undefined || pending !== undefined || planId === undefined || piece === undefined) return undefined;
  if (subject.sizes !== undefined) return undefined;
  const { outcome, profile, ...on } = await tried(subject, piece, at);
  if (!outcome.ok || profile === undefined) return undefined;
  const made = outcome.value;
  const there = await nearer(on.ask, made, at);
  const stripes = stripesOf(on.ask, made);
  const inStripes = stripes?.ok ? await withMeeting(on.ask, stripes.value, at) : undefined;
  const time = await timeOf(on.ask, made, at);
  const behind = await holdersBehind(on.ask, at);
  const scheduled = await scheduleFor(on.ask, made, at);
  const how = { there, inStripes, behind, follows: true, changed, time, scheduled, canPost: canPost(at) };
  return planReply({ ...on, made, planId, profile, ...how });
}

type Said = Omit<Tried, 'outcome' | 'profile'> & {
  made: Plan;
  planId: string;
  profile: Profile;
  there: Elsewhere | undefined;
  inStripes: InStripes | undefined;
  behind: Behind | undefined;
  follows: boolean;
  changed: readonly Words[];
  time: Took | undefined;
  scheduled: Pick<ReplyOf<'plan'>, 'schedule' | 'unscheduled'>;
  canPost: boolean;
};

/** The answer to a command in a channel is the asker's alone until they post it. */
const canPost = (at: At): boolean => at.place.startsWith('command:') && channelOf(at) !== undefined;

const POST_HERE: Offered = {
  button: 'Post Here',
  say: 'post this here',
  spoken: 'Post the size of this plan in the channel, without your rows',
  request: { kind: 'share', with: 'here', rows: false, sure: false },
};

/** When it is ready for its day, or why that cannot be told; nothing without a day. */
async function scheduleFor(ask: PlanAsk, made: Plan, at: At): Promise<Said['scheduled']> {
  const outcome = ask.due && (await scheduleAlone(made, ask.due, at));
  if (outcome === undefined) return {};
  return outcome.ok ? { schedule: outcome.value } : { unscheduled: outcome.problems };
}

/** How long it takes, where that was asked. */
const timeOf = async ({ focus }: PlanAsk, made: Plan, at: At): Promise<Took | undefined> =>
  focus.includes('time') ? took(made, at) : undefined;

function planReply(said: Said): ReplyOf<'plan'> {
  const { ask, made, planId, profile, measurements, ball, there, inStripes, behind, follows, changed, time } = said;
  const { scheduled, canPost } = said;
  const offers: Offered[] = [
    { button: 'Start Knitting', say: 'start', request: { kind: 'start', planId }, primary: true },
    {
      button: 'Show Steps',
      say: 'steps',
      spoken: `Show the steps for this ${made.label.toLowerCase()}`,
      request: { kind: 'steps', planId, form: 'long' },
    },
    ...(canPost ? [POST_HERE] : []),
    ...(inStripes?.offer === undefined ? [] : [inStripes.offer]),
    ...(there === undefined ? [] : [there.offer]),
    ...(behind === undefined ? [] : [behind.offer]),
    ...(scheduled.unscheduled?.some(isOwnHours) ? HOURS_OFFERS : []),
    ...(follows ? [UNDO] : []),
    MY_GAUGE,
  ];
  return {
    kind: 'plan',
    plan: made,
    planId,
    ask,
    gauge: { ...profile, gauge: gauge(evidence(measurements)) },
    ball,
    changed,
    elsewhere: there && say`On ${there.name} it would fit: ${there.made}.`,
    time,
    stripes: inStripes?.shown,
    assumed: [...readAs(Object.values(inUse(ask))), ...stripesRead(ask)],
    shared: behind && [behind.line],
    ...scheduled,
    offers,
  };
}
