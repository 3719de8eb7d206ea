import { answersFor, type Conversation } from './conversation.js';
import type { DeskAnswer } from './desk/desk.js';
import { isOfPiece, type Meaning, type Request } from './request.js';

/** The request that waited and what waits behind it, once what they waited for is in: a gauge, a unit, a size. */
export function resumedBy(request: Request, { reply }: DeskAnswer, { pending }: Conversation): Request[] {
  if (pending === undefined || reply.kind === 'question') return [];
  const { request: waited, holes, next = [] } = pending;
  const isSet = (kind: Request['kind'], hole: string): boolean => request.kind === kind && holes[0] === hole;
  const told = { gauge: 'gauge', which_size: 'plan' }[holes[0] ?? ''];
  const isTold = reply.kind === told;
  if (isTold || isSet('set_units', 'units') || isSet('set_hours', 'hours')) return [waited, ...next];
  return ['gauge', 'plan', 'sizes'].includes(reply.kind) && answersFor(request, waited) ? next : [];
}

type Waits = Extract<Request, { kind: 'plan' | 'which_machine' | 'share' }>;

const waits = (meaning: Meaning): meaning is Waits => isOfPiece(meaning) || meaning.kind === 'share';

/** The talk in which plans and shares asked for behind a question wait for its answer, and what of the queue does not. */
export function waiting(talk: Conversation, queue: readonly Meaning[]): { talk: Conversation; left: Meaning[] } {
  const { pending } = talk;
  if (pending === undefined) return { talk, left: [...queue] };
  const next = [...(pending.next ?? []), ...queue.filter(waits)];
  return { talk: { ...talk, pending: { ...pending, next } }, left: queue.filter((meaning) => !waits(meaning)) };
}
