import type { Letter } from './desk/desk.js';
import type { AnyProblem } from './problems.js';
import type { Reply } from './reply.js';
import type { AnswerTo } from './store/ports.js';

const OWN = [
  'batch',
  'gauge',
  'gauges',
  'pieces',
  'shelf',
  'stocked',
  'sold',
  'buy',
  'time',
  'logged',
  'hours',
  'rates',
  'cost',
];
const OWN_PROBLEMS = ['not_on_shelf', 'shelf_too_low', 'of_cost'];
/** Where a maker stands, that tells of their work or their gauge. */
const OWN_STANDINGS = ['knitting', 'measured'];

/** What tells of a maker's gauge, shelf, pace or hours, which are theirs alone until they share them. */
const isOwn = (reply: Reply): boolean =>
  OWN.includes(reply.kind) ||
  ((reply.kind === 'answer' || reply.kind === 'question') && reply.isOwn === true) ||
  // Help speaks of work, machines and yarn, once there are any.
  (reply.kind === 'help' && !reply.first) ||
  (reply.kind === 'plan' && (reply.time !== undefined || reply.schedule !== undefined)) ||
  (reply.kind === 'work' && reply.notes.length > 0) ||
  (reply.kind === 'plan' && reply.shared !== undefined) ||
  (reply.kind === 'finished' && reply.shelf.length > 0) ||
  (reply.kind === 'yarn_left' && reply.from === 'shelf') ||
  (reply.kind === 'problem' && reply.problems.some(isOwnProblem));

const isOwnProblem = (problem: AnyProblem): boolean =>
  OWN_PROBLEMS.includes(problem.code) ||
  (problem.code === 'unread' && OWN_STANDINGS.includes(problem.standing?.is ?? ''));

/** Slack's ids of direct messages begin so, and those of persons, posts to whom go there. */
const isDirect = (channel: string): boolean => /^[DUW]/.test(channel);

/** Where answers go: in a channel, those about gauge, shelf, pace or hours to the one who asked alone. */
export function seenBy(replies: readonly Reply[], address: AnswerTo, user: string): AnswerTo {
  if (address.to !== 'post' || isDirect(address.channel) || !replies.some(isOwn)) return address;
  return { to: 'ephemeral', channel: address.channel, user, threadTs: address.threadTs };
}

type From = { place: string; address?: AnswerTo | undefined };

/** A card for the channel of a command goes by its response url, since the bot need not be in that channel. */
export function reaching(letter: Letter, { place, address }: From): Letter {
  const isThere = letter.to.to === 'post' && place === `command:${letter.to.channel}`;
  return isThere && address?.to === 'response' ? { ...letter, to: { ...address, inChannel: true } } : letter;
}
