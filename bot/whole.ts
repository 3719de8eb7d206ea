import { pieceById } from '../core/index.js';
import { type Conversation, subjectOf } from './conversation.js';
import { inCurrency, isOfMoney } from './desk/money/prices.js';
import { amended } from './desk/slips.js';
import { changed, rebenched } from './follow-up.js';
import { inUnits } from './language/lengths.js';
import { sizeMeant } from './language/readers/lone.js';
import {
  type BallAsk,
  isOfPiece,
  type Meaning,
  type OfPiece,
  type Request,
  type Value,
  type WayAsk,
} from './request.js';
import { offersOfShare } from './shared-offers.js';
import { ofSize } from './sizes.js';
import type { Units } from './store/ports.js';
import { offersOfWork } from './work-card.js';

/**
 * A meaning made whole by the talk it stands in: an edit joins the plan it changes, an answer fills the hole it was
 * asked for, a pick becomes what was offered. Pure; the talk is not changed.
 */
export function whole(meaning: Meaning, talk: Conversation, units: Units | undefined): Request {
  switch (meaning.kind) {
    case 'change':
      return changed(meaning.edit, talk);
    case 'reply':
      return filled(meaning.value, talk, units);
    case 'pick':
      return picked(meaning, talk);
    case 'size':
      return chosen(meaning, talk);
    case 'record_gauge':
      return benched(meaning, talk);
    case 'finish':
      return finishing(meaning, talk);
    case 'correct':
      return correcting(meaning, talk);
    case 'of_lot':
      return withLot(meaning, talk) ?? { kind: 'unread', why: 'nothing', words: '' };
    case 'of_time':
      return withTime(meaning, talk) ?? { kind: 'unread', why: 'nothing', words: '' };
    case 'set_currency':
      return withCurrency(meaning, talk) ?? meaning;
    default:
      return meaning;
  }
}

/** Sizes told after "done" are of the piece that was said to be done, with the rows and weight it was said to have. */
function finishing(request: Request & { kind: 'finish' }, { pending }: Conversation): Request {
  if (pending?.request.kind !== 'finish') return request;
  const { rows, mass, workId } = pending.request;
  return { ...request, rows: request.rows ?? rows, mass: request.mass ?? mass, workId: request.workId ?? workId };
}

/** "No, 21.5" right after a plan is another size for it; after a measurement it puts that right. */
function correcting(request: Request & { kind: 'correct' }, talk: Conversation): Request {
  const last = talk.changes.findLast(({ undone }) => !undone);
  const piece = pieceById(talk.subject?.piece ?? '');
  const meant = piece && talk.rowsMake && sizeMeant(piece, request.value, talk.rowsMake);
  const id = meant || piece?.needs[0]?.[0];
  if (last?.kind !== 'plan' || id === undefined) return request;
  return changed({ values: { [id]: request.value }, on: {}, focus: [] }, talk);
}

/** A gauge given because a plan waits for it is of the machine and yarn that the plan named. */
function benched(request: Request & { kind: 'record_gauge' }, { pending }: Conversation): Request {
  if (!isOfPiece(pending?.request) || pending.holes[0] !== 'gauge') return request;
  const on = rebenched(pending.request.ask?.on ?? {}, request.gauge.on);
  return { kind: 'record_gauge', gauge: { ...request.gauge, on } };
}

function filled(value: Value, talk: Conversation, units: Units | undefined): Request {
  const { pending } = talk;
  const hole = pending?.holes[0];
  if (pending === undefined || hole === undefined) return { kind: 'unread', why: 'nothing', words: value.said ?? '' };
  const { request } = pending;
  const ask = isOfPiece(request) ? request.ask : undefined;
  if (
    ask !== undefined &&
    hole !== 'gauge' &&
    hole !== 'piece' &&
    hole !== 'units' &&
    hole !== 'due' &&
    hole !== 'hours'
  ) {
    const values = { ...ask.values, [hole]: inUnits(value, units) };
    return { ...request, ask: { ...ask, values } } as OfPiece;
  }
  if (request.kind === 'record_gauge' && hole === 'length' && request.gauge.rows !== undefined) {
    const rows = { ...request.gauge.rows, over: inUnits(value, units) };
    return { kind: 'record_gauge', gauge: { ...request.gauge, rows } };
  }
  if (request.kind === 'record_gauge' && hole === 'needles' && (value.is === 'bare' || value.assumed !== undefined)) {
    const needles = countOf(value);
    return { kind: 'record_gauge', gauge: { ...request.gauge, on: { ...request.gauge.on, needles } } };
  }
  const ball = hole === 'ball' ? ballOf(value) : undefined;
  if (ball !== undefined) return withLot({ ball }, talk) ?? { kind: 'unread', why: 'nothing', words: value.said ?? '' };
  if (request.kind === 'what_to_make' && hole === 'left' && value.is === 'mass') return { ...request, massG: value.g };
  if (request.kind === 'yarn_left' && hole === 'left') {
    const left = ballOf(value);
    if (left !== undefined) return { ...request, ...left };
  }
  const figure = inUnits(value, units);
  const confirmed = hole === 'confirm' ? confirmedAs(request, value, figure) : undefined;
  if (confirmed !== undefined) return confirmed;
  if (request.kind === 'reading' && hole === 'row' && isCount(value)) return { ...request, row: countOf(value) };
  if (request.kind === 'lost_count' && hole === 'length') return { ...request, length: figure };
  if (request.kind === 'finish' && hole === 'size') return { ...request, sizes: [{ value: figure }] };
  return { kind: 'unread', why: 'nothing', words: value.said ?? '' };
}

/** A mass or a length that was typed with its unit, as that of a ball. */
function ballOf(value: Value): BallAsk | undefined {
  if (value.is === 'mass') return { massG: value.g };
  return value.is === 'length' && value.assumed === undefined ? { lengthMm: value.mm } : undefined;
}

type OfBall = Request & { kind: 'sold_as' | 'yarn_left' | 'other_yarn' | 'what_to_make' };

const takesBall = (request: Request | undefined): request is OfBall =>
  request !== undefined && ['sold_as', 'yarn_left', 'other_yarn', 'what_to_make'].includes(request.kind);

/** What was asked about a lot joins the request that waits for it. */
function withLot(
  { ball, dyeLot }: { ball?: BallAsk; dyeLot?: string },
  { pending }: Conversation,
): Request | undefined {
  const request = pending?.request;
  if (takesBall(request)) return { ...request, ball: { ...request.ball, ...ball } };
  if (request?.kind === 'buy' && ball !== undefined) return ofBall(request, ball);
  if (request?.kind !== 'stock') return undefined;
  const { stock } = request;
  const known = { ...(ball && { ball: { ...stock.ball, ...ball } }), ...(dyeLot !== undefined && { dyeLot }) };
  return { kind: 'stock', stock: { ...stock, ...known } };
}

/** The ball that was asked about is that of the first way that lacks a part of it. */
function ofBall({ buy }: Request & { kind: 'buy' }, ball: BallAsk): Request {
  const ways: WayAsk[] = buy.ways.length === 0 ? [{ prices: [] }] : buy.ways;
  const at = ways.findIndex(({ ball: told }) => told?.massG === undefined || told.lengthMm === undefined);
  return {
    kind: 'buy',
    buy: { ...buy, ways: ways.map((way, i) => (i === at ? { ...way, ball: { ...way.ball, ...ball } } : way)) },
  };
}

/** What was asked about the clock joins the request that waits for it. */
function withTime({ seconds, parts }: Meaning & { kind: 'of_time' }, { pending }: Conversation): Request | undefined {
  const request = pending?.request;
  if (request?.kind !== 'clock') return undefined;
  return { ...request, ...(seconds !== undefined && { seconds }), ...(parts && { parts }) };
}

/** The prices that wait for it, in the currency that was asked for. */
function withCurrency(
  { currencies }: Request & { kind: 'set_currency' },
  { pending }: Conversation,
): Request | undefined {
  const request = pending?.holes[0] === 'currency' ? pending.request : undefined;
  const [code, ...others] = currencies;
  const isOne = code !== undefined && others.length === 0;
  return isOne && isOfMoney(request) ? inCurrency(request, code) : undefined;
}

/** A figure in place of the one that was asked about, the row or the length it was really: to be checked again. */
function confirmedAs(request: Request, value: Value, figure: Value): Request | undefined {
  const again = amended(request, value.is === 'count' ? value : figure, undefined);
  if (again?.kind === 'record_gauge') return { kind: 'record_gauge', gauge: { ...again.gauge, confirmed: undefined } };
  return again?.kind === 'reading' || again?.kind === 'finish' ? { ...again, confirmed: undefined } : undefined;
}

const countOf = (value: Value): number =>
  value.is === 'count' ? value.count : value.is === 'bare' ? value.lo : Number.parseFloat(value.said ?? '');

const isCount = (value: Value): boolean => value.is === 'bare' || value.is === 'count' || value.assumed !== undefined;

/** One of the sizes in hand as a plan of its own. */
function chosen({ index, focus }: Meaning & { kind: 'size' }, talk: Conversation): Request {
  const subject = subjectOf(talk);
  const size = subject?.sizes?.[index];
  if (subject === undefined || size === undefined) return { kind: 'unread', why: 'expired', words: '' };
  return { kind: 'plan', ask: { ...ofSize(subject, size), focus }, follows: true };
}

function picked(pick: Meaning & { kind: 'pick' }, talk: Conversation): Request {
  const offer =
    pick.turn === undefined
      ? talk.offered.findLast(({ named }) => named)
      : talk.offered.find(({ turn }) => turn === pick.turn);
  const { turn = '' } = pick;
  const choices = offer?.choices ?? [...offersOfShare(turn), ...offersOfWork(turn)].map(({ request }) => request);
  return choices[pick.index] ?? { kind: 'unread', why: 'expired', words: turn };
}
