import { type Conversation, openMs } from './conversation.js';
import { editMade, withEdit, withNewPlan } from './desk/changes.js';
import type { At, Letter } from './desk/desk.js';
import { answer } from './desk/index.js';
import { isOfMoney } from './desk/money/prices.js';
import { passForm } from './form-sent.js';
import type { Context, Trace } from './language/context.js';
import type { Reply } from './reply.js';
import { isOfPiece, type Meaning, type Request } from './request.js';
import { sizesAlone } from './size-only.js';
import type { Bound, Maker, Profile } from './store/ports.js';
import { type Input, textOf, understood } from './understood.js';
import { unitsIn } from './units-meant.js';
import { resumedBy, waiting } from './waiting.js';
import { whole } from './whole.js';

export type Exchange = { request: Request; reply: Reply };

/** What was said, and by whom. */
export type Said = Input & {
  /** `dm:D1`, `thread:C1:ts`, `command:C1` or `terminal`. With the maker it names the conversation. */
  place: string;
  user: { slackUserId: string; name: string };
  at: number;
  /** Set for the words of someone else, of which only a piece and its size may be taken. */
  sizeOnly?: true;
};

/** What it is read and answered with. */
export type Heard = {
  bound: Bound;
  turn: Said;
  maker: Maker;
  /** Those of the maker, where words are to be read. */
  profiles: readonly Profile[];
  talk: Conversation;
  newId: () => string;
  due: Context['due'];
};

/** Each request of a turn with its reply, and what maker and talk became by them. */
export type Exchanged = {
  exchanges: readonly Exchange[];
  maker: Maker;
  talk: Conversation;
  letters: readonly Letter[];
  trace: Trace;
  /** Requests that were not run: an earlier one failed, or they may not be taken of these words. */
  skipped: number;
};

/** Reads a turn and answers its requests one after another, until one fails or raises a question. */
export async function exchanged(heard: Heard): Promise<Exchanged> {
  const { bound, turn } = heard;
  let { maker, talk } = heard;
  const { meanings, trace, known } = await understood(bound, maker, talk, turn, heard);

  const exchanges: Exchange[] = [];
  const queue = turn.sizeOnly ? sizesAlone(meanings) : [...meanings];
  const notTaken = meanings.length - queue.length;
  const asked = new Set<Meaning>(queue);
  const letters: Letter[] = [];
  while (queue.length > 0) {
    const meaning = queue.shift() as Meaning;
    const request = whole(meaning, talk, maker.units);
    const at = atOf({ ...heard, maker, talk });
    const hadHours = maker.hours.weekly !== undefined;
    const answered = await answer(request, at);
    const { reply } = answered;
    if (known !== undefined && 'form' in turn.input && exchanges.length === 0)
      passForm(turn.input.form, answered, known, { units: maker.units ?? unitsIn(textOf(turn.input)) ?? 'in' });
    const changed = isEdit(meaning, request) && reply.kind !== 'batch' ? editMade(talk, answered.talk) : [];
    letters.push(...(answered.letters ?? []));
    exchanges.push({ request, reply: reply.kind === 'question' ? { ...reply, changed } : reply });
    if (reply.kind === 'problem') break;
    if (!turn.sizeOnly) maker = await withUnitsTyped(bound, maker, turn, request);
    if (setsMaker(request)) maker = await bound.makers.held(turn.user.slackUserId, turn.user.name, turn.at);
    const resumed = [...resumedBy(request, answered, talk), ...datedAgain(request, hadHours, talk)];
    talk =
      asked.has(meaning) && isNewPlan(meaning, request, reply)
        ? { ...withNewPlan(talk, answered.talk), leadsIn: undefined }
        : withEdit(talk, answered.talk, changed, maker.units);
    // Another full request takes the place of the one that waited.
    if (!queue.some(isOfPiece)) queue.push(...resumed);
    if (reply.kind === 'question') {
      const { talk: open, left } = waiting(talk, queue);
      talk = open;
      queue.splice(0, queue.length, ...left);
      break;
    }
  }
  return { exchanges, maker, talk, letters, trace, skipped: queue.length + notTaken };
}

/** What a desk works with. */
export const atOf = ({ bound, turn, maker, talk, newId }: Omit<Heard, 'due'>): At => ({
  maker,
  talk,
  store: bound,
  now: turn.at,
  newId,
  openUntil: turn.at + openMs(turn.place),
  place: turn.place,
});

/** True for what may set something of the maker: a currency, the first of which becomes theirs, their hours and zone. */
const setsMaker = (request: Request): boolean =>
  isOfMoney(request) || ['set_currency', 'set_hours', 'set_time_zone'].includes(request.kind);

/** True for a follow-up to the plan in hand, and for a way out of one that was refused. */
const isEdit = (meaning: Meaning, request: Request): boolean =>
  request.kind === 'allow' ||
  (request.kind === 'plan' &&
    (meaning.kind === 'change' || meaning.kind === 'size' || (meaning.kind === 'pick' && request.follows === true)));

/** True for a plan asked for in full, or taken up from another: it takes the place of the one in hand. */
const isNewPlan = (meaning: Meaning, request: Request, reply: Reply): boolean =>
  (request.kind === 'plan' || request.kind === 'size_share') &&
  (reply.kind === 'plan' || reply.kind === 'sizes') &&
  !isEdit(meaning, request);

/** The unit a maker first types becomes theirs, until they say otherwise. */
async function withUnitsTyped(bound: Bound, maker: Maker, turn: Said, request: Request): Promise<Maker> {
  const units = request.kind === 'set_units' ? request.units : (maker.units ?? unitsIn(textOf(turn.input)));
  if (units === undefined || units === maker.units) return maker;
  await bound.makers.setUnits(maker.id, units);
  return { ...maker, units };
}

/** The plan in hand once more, where its day waited for the first hours that its maker told. */
const datedAgain = (request: Request, hadHours: boolean, { pending, subject }: Conversation): Request[] =>
  request.kind === 'set_hours' && !hadHours && pending === undefined && subject?.due !== undefined
    ? [{ kind: 'plan', ask: subject, follows: true }]
    : [];
