import { type Plan, pieceById, say } from '../../../core/index.js';
import { MOST_NOTED } from '../../asks/share.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import { isSlackUserId } from '../../mention.js';
import type { Offered } from '../../reply.js';
import type { PlanAsk, Request } from '../../request.js';
import type { ShareProblem } from '../../share-problem.js';
import type { Maker, Share } from '../../store/ports.js';
import { makerMeant, shownName } from '../batch/makers-meant.js';
import type { At, Desk, DeskAnswer, Letter } from '../desk.js';
import { NEVER_MIND, UNDO } from '../offers.js';
import { planMeant } from '../plan/plan-meant.js';
import { asked } from '../question.js';
import { shownLetter } from './share-letters.js';
import {
  channelOf,
  countsOf,
  inOneLine,
  labelOf,
  ownerName,
  ownOrigin,
  shareInHand,
  shareRefusal,
  shownAsk,
  sizeInWords,
} from './shares.js';

type ShareRequest = Request & { kind: 'share' };
/** No one by name. */
const EVERYONE =
  /^@?(?:everyone|everybody|all|all of (?:us|them)|us|them|(?:the |my |our )?(?:whole |entire )?(?:team|group|makers|others|workspace))(?: (?:here|in (?:the|this|my|our) (?:team|group|workspace)))?$/i;

type Reader = { name: string; to: Share['to'] };

/** A plan shown to co-makers or in a channel: its size, and one's own rows only where that was chosen, knowing what they tell. */
export const shareDesk: Desk<'share'> = async (request, at) => {
  const readers = await readersOf(request, at);
  if ('code' in readers) return notShared(request, readers, at);
  const meant = await planMeant(at);
  if ('reply' in meant) return meant.reply.kind === 'question' ? waitsForSize(request, meant, at) : meant;
  const named = pieceById(request.piece ?? '')?.label.toLowerCase();
  if (named !== undefined && request.piece !== meant.ask.piece)
    return shareRefusal(at, { code: 'another_piece', named, inHand: labelOf(meant.ask) });
  const planId = meant.work?.work.planId ?? at.talk.planId ?? (await at.store.plans.latest(at.maker.id))?.id;
  if (planId === undefined) throw new Error('a plan that was never stored');
  if (request.rows && !request.sure) return rowsQuestion(request, readers, at);
  const subject: PlanAsk = {
    ...meant.ask,
    shared: { ...meant.ask.shared, origin: meant.ask.shared?.origin ?? planId },
  };
  return shared({ ...request, planId }, readers, subject, meant.plan, at);
};

const CHOOSE: Offered = { button: 'Choose Who', say: 'share form', request: { kind: 'form', form: 'share' } };

/** Which of several sizes is shared: the share waits until one is chosen. */
const waitsForSize = (request: ShareRequest, { reply, talk }: DeskAnswer, { openUntil }: At): DeskAnswer => ({
  reply,
  talk: { ...talk, pending: { request, holes: ['which_size'], until: openUntil } },
});

/** Why it is not shared: where nobody in particular is named they can be picked, and in a channel it can be posted there. */
function notShared(request: ShareRequest, problem: ShareProblem, at: At): DeskAnswer {
  const { reply, talk } = shareRefusal(at, problem);
  const isOpen = problem.code === 'with_everyone' || problem.code === 'with_the_bot';
  const isHere = problem.code === 'with_everyone' && problem.isChannel;
  const here: Offered = { button: 'Post Here', say: 'post this here', request: { ...request, with: 'here' } };
  return { reply: isOpen ? { ...reply, offers: isHere ? [here, CHOOSE] : [CHOOSE] } : reply, talk };
}

async function readersOf({ with: said }: ShareRequest, at: At): Promise<Reader[] | ShareProblem> {
  if (said === 'back') {
    const came = await shareInHand(at);
    if (came === undefined) return { code: 'nobody_to_share_back' };
    return [{ name: await ownerName(came, at), to: { makerId: came.ownerId } }];
  }
  if (said === 'here') {
    const to = channelOf(at);
    return to === undefined ? { code: 'not_in_a_channel' } : [{ name: 'this channel', to }];
  }
  const meant: (Maker | ShareProblem)[] = [];
  for (const name of said) meant.push(await makerMeant(name, at));
  const problem = meant.find((one): one is ShareProblem => 'code' in one);
  if (problem?.code === 'no_such_maker' && /^<?#/.test(problem.said)) return { code: 'in_another_channel' };
  if (problem?.code === 'no_such_maker' && EVERYONE.test(problem.said))
    return { code: 'with_everyone', isChannel: channelOf(at) !== undefined };
  if (problem !== undefined) return problem;
  const makers = meant.filter((one): one is Maker => !('code' in one));
  return [...new Map(makers.map((maker) => [maker.id, maker])).values()].map((maker) => ({
    name: shownName(maker),
    to: { makerId: maker.id },
  }));
}

/** The words that go along, on one line. */
function noteOf({ note = '' }: ShareRequest): { note: string; isCut: boolean } {
  const line = note.replace(/\s+/g, ' ').trim();
  return { note: [...line].slice(0, MOST_NOTED).join(''), isCut: [...line].length > MOST_NOTED };
}

const namesOf = (readers: readonly Reader[]): string =>
  inOneLine(
    readers.map(({ name }) => name),
    'maker',
  );

/** One's own rows as well, with words for it where each who has it can be named in them. */
function rowsToo({ with: to }: ShareRequest): Offered {
  const words = { here: 'post this here with my rows', back: 'share it back with my rows' };
  const isNamed = typeof to !== 'string' && to.every((name) => !isSlackUserId(name.replace('@', '')));
  const say = typeof to === 'string' ? words[to] : isNamed ? `share my rows with ${to.join(' and ')}` : undefined;
  return {
    button: 'Add My Rows',
    ...(say !== undefined && { say }),
    request: { kind: 'share', with: to, rows: true, sure: false },
  };
}

function rowsQuestion(request: ShareRequest, readers: readonly Reader[], at: At): DeskAnswer {
  const names = namesOf(readers);
  return asked(at, { ...request, sure: true }, ['confirm'], {
    asks: say`Share your rows and needles with ${names} too?`,
    because: say`Your gauge can be worked out from them. The size alone is enough for ${names} to make the same piece.`,
    examples: ['yes', 'never mind'],
    isOwn: true,
    offers: [
      { button: 'Share With My Rows', request: { ...request, sure: true } },
      { button: 'Share Size Only', request: { ...request, rows: false } },
      NEVER_MIND,
    ],
  });
}

async function shared(
  request: ShareRequest & { planId: string },
  readers: readonly Reader[],
  subject: PlanAsk,
  plan: Plan,
  at: At,
): Promise<DeskAnswer> {
  const origin = ownOrigin(subject, at) ?? request.planId;
  const ask = shownAsk(subject);
  const counts = request.rows ? countsOf(plan) : undefined;
  const { note, isCut } = noteOf(request);
  const before = await at.store.shares.of(at.maker.id, origin);
  const letters: Letter[] = [];
  const effects: Effect[] = [];
  for (const { to } of readers) {
    const id = await at.store.shares.add({ id: at.newId(), ownerId: at.maker.id, origin, to, ask, counts, at: at.now });
    const share = await at.store.shares.get(id);
    if (share === undefined) throw new Error('a share that was kept is not there');
    const earlier = before.find((one) => one.id === id);
    effects.push(
      earlier === undefined
        ? { did: 'shared', shareId: id }
        : { did: 'changed_share', shareId: id, from: earlier.revision, to: share.revision },
    );
    letters.push(await shownLetter(share, shownName(at.maker), note, at));
  }
  const names = namesOf(readers);
  const talk = { ...at.talk, subject, planId: request.planId, pending: undefined };
  return {
    reply: {
      kind: 'answer',
      isOwn: true,
      lead: say`Shared with ${names}: the ${labelOf(ask)}`,
      lines: [
        say`They see its size: ${sizeInWords(ask)}. ${request.rows ? 'They see your rows and needles as they are now, too.' : 'Your rows, needles and yarn stay yours.'}`,
        ...(note === '' ? [] : [say`With your note: "${note}"`]),
        ...(isCut ? [say`Your note was longer; its first ${MOST_NOTED} characters went along.`] : []),
        say`You can change or withdraw it any time; what was read cannot be unread.`,
      ],
      examples: ['withdraw it', 'how did it land'],
      offers: [
        ...(request.rows ? [] : [rowsToo(request)]),
        { button: 'Withdraw', request: { kind: 'withdraw_share' } },
        UNDO,
      ],
    },
    talk: withStored(talk, `the share with ${names}`, effects),
    letters,
  };
}
