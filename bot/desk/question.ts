import { MM_PER, type Piece, type Problem, pieceById, pieces, printed, say, type Words } from '../../core/index.js';
import { answersFor, type Pending } from '../conversation.js';
import { pieceExample, widthExample } from '../examples.js';
import { read } from '../language/read.js';
import type { Offered } from '../reply.js';
import type { FormId, OfPiece, PlanAsk, Request, RequestKind } from '../request.js';
import type { At, DeskAnswer } from './desk.js';
import { formOffer, NEVER_MIND } from './offers.js';

/**
 * One question, and the request that waits for its answer. A bare answer fills the first hole.
 * A question about a record that a plan waits for keeps that plan waiting. Nothing else of the talk changes.
 */
export function asked(
  at: At,
  request: Request,
  holes: string[],
  question: { asks: Words; because: Words; examples: readonly string[]; offers?: readonly Offered[]; isOwn?: true },
): DeskAnswer {
  const { pending } = at.talk;
  const { offers = pending === undefined ? [] : secondOffers(pending.request, request), ...rest } = question;
  const put = { asks: printed(question.asks, { units: at.maker.units ?? 'in' }), examples: [...question.examples] };
  const next = pending === undefined ? [] : nextAfter(pending, request);
  return {
    reply: { kind: 'question', ...rest, offers },
    talk: { ...at.talk, pending: { request, holes, next, put, until: at.openUntil } },
  };
}

/** What waits behind a question goes on waiting behind the next one on the same request, or on the record it waits for. */
function nextAfter({ request, holes, next = [] }: Pending, asked: Request): Request[] {
  if (holes[0] === 'gauge' && asked.kind === 'record_gauge') return [request, ...next];
  return answersFor(asked, request) ? next : [];
}

/** What was asked about already gets its form: two questions in a row are the most. */
function secondOffers(before: Request, { kind }: Request): Offered[] {
  const form = kind === before.kind ? FORMS[kind] : undefined;
  return form === undefined ? [] : [formOffer(form)];
}

const FORMS: Readonly<Partial<Record<RequestKind, FormId>>> = {
  plan: 'plan',
  record_gauge: 'gauge',
  reading: 'reading',
  lost_count: 'lost_count',
  set_rates: 'rates',
};

export const pieceQuestion = (ask: PlanAsk, at: At): DeskAnswer =>
  asked(at, { kind: 'plan', ask }, ['piece'], {
    asks: ask.thing === undefined ? say`Which piece is it for?` : say`Which kind of piece is the ${ask.thing}?`,
    because: say`${ask.thing === undefined ? '' : `I do not know "${ask.thing}"; its size is kept. `}Each kind turns rows into a size in its own way. I can size: ${kinds().join(', ')}.`,
    examples: [...kinds().slice(0, 2), 'never mind'],
    offers: [formOffer('plan')],
  });

const kinds = (): string[] => pieces.map((piece) => piece.label.toLowerCase());

export const unitsQuestion = (request: Request, typed: string, at: At): DeskAnswer =>
  asked(at, request, ['units'], {
    asks: say`Is ${typed} in inches or in centimetres?`,
    because: say`I ask once, and read your bare numbers that way from then on.`,
    examples: ['inches', 'cm', 'never mind'],
    offers: [
      { button: 'Inches', request: { kind: 'set_units', units: 'in' } },
      { button: 'Centimetres', request: { kind: 'set_units', units: 'cm' } },
    ],
  });

/** The first size that is missing, in the words of the piece; `isAll` where nothing else is. */
export function sizeQuestion(
  request: OfPiece & { ask: PlanAsk },
  missing: Problem & { code: 'missing' },
  isAll: boolean,
  at: At,
): DeskAnswer {
  const piece = pieceById(request.ask.piece ?? '');
  const ids = missing.anyOf.map((field) => field.id);
  const first = piece?.asks[ids[0] ?? ''];
  const others = missing.anyOf.slice(1).map(({ id, label }) => {
    const field = label.toLowerCase();
    return piece?.asks[id]?.is === 'count' ? `the number of ${field}` : `the ${field}`;
  });
  const or = others.length === 0 ? say`` : say` You can tell me ${others.join(' or ')} instead.`;
  const why = first?.is === 'length' ? 'It is made to fit that.' : 'That sets the rows; nothing else can.';
  // What can be given as a count of needles lies across them.
  const across = ids.some((id) => piece?.asks[id]?.is === 'count');
  return asked(at, request, ids, {
    asks: say`${first?.question ?? `What ${first?.label.toLowerCase() ?? 'size'} should it have?`}`,
    because: say`${across ? 'That sets the needles; rows cannot change it.' : why}${or}`,
    examples: [...sizeExamples(piece, ids, at), 'never mind'],
    ...(!isAll && { offers: [formOffer('plan')] }),
  });
}

/** Two sizes in the range of the first ask, one with room; for a measure of the body a person. */
function sizeExamples(piece: Piece | undefined, ids: readonly string[], { maker }: At): string[] {
  const [id = ''] = ids;
  const ask = piece?.asks[id];
  if (piece === undefined || (ask?.is !== 'window' && ask?.is !== 'length')) return ['12'];
  const units = maker.units ?? 'in';
  const mm = exampleMm(piece, id) ?? Math.sqrt(ask.minMm * ask.maxMm);
  const whole = Math.max(1, Math.round(mm / MM_PER[units]));
  const size = `${whole} ${units}`;
  if (ask.is === 'length') return ask.body === undefined ? [size] : [size, 'a woman'];
  const room = Math.round(whole / 20);
  const least = units === 'cm' || room > 0 ? `${whole - Math.max(1, room)}` : whole === 1 ? '1/2' : `${whole - 1} 1/2`;
  return [size, `${least} to ${size}`];
}

/** What the example of a kind says for an ask, which is a size that makers want. */
function exampleMm({ example }: Piece, id: string): number | undefined {
  const [meaning] = read(example, { pieces, units: undefined, machines: [], yarns: [], holes: [] }).meanings;
  const value = meaning?.kind === 'plan' ? meaning.ask.values[id] : undefined;
  return value?.is === 'length' ? value.mm : undefined;
}

/** What to measure, in the yarn that was named when it has no gauge yet. */
export function gaugeQuestion(request: Request, at: At, yarn?: string): DeskAnswer {
  return asked(at, request, ['gauge'], {
    asks: yarn === undefined ? say`Which piece have you measured?` : say`Which piece in ${yarn} have you measured?`,
    because: say`I count in your own rows. I need the needles, rows, length and flat width of one piece; I ask for it once, and then answer this.`,
    examples: [pieceExample(at.maker.units), '5 rows to the inch', 'never mind'],
    offers: [formOffer('gauge')],
  });
}

export const widthQuestion = (request: Request, at: At): DeskAnswer =>
  asked(at, request, ['gauge'], {
    asks: say`How wide does your knitting come out?`,
    because: say`The needles are chosen from your stitch width, and I have only rows so far. A tube's needles and flat width will do.`,
    examples: [widthExample(at.maker.units), 'never mind'],
    offers: [formOffer('gauge')],
  });

export const lengthQuestion = (request: Request, rows: number, at: At): DeskAnswer =>
  asked(at, request, ['length'], {
    asks: say`How long do those ${rows} rows measure?`,
    because: say`A count and its length make a gauge; neither does alone.`,
    examples: [at.maker.units === 'cm' ? '27 cm' : '22 in', 'never mind'],
  });

/** A figure far from the maker's others is stored only once they say it is right. */
export const unusualQuestion = (request: Request, recorded: string, at: At): DeskAnswer =>
  asked(at, request, ['confirm'], {
    asks: say`Is that right: ${recorded}?`,
    because: say`It is further from your other pieces than one in a hundred comes out. Nothing is stored yet.`,
    examples: ['yes', 'never mind'],
    offers: [{ button: 'It Is Right', request }, NEVER_MIND],
  });

export const needlesQuestion = (request: Request, at: At): DeskAnswer =>
  asked(at, request, ['needles'], {
    asks: say`How many needles made that flat width?`,
    because: say`Half of them span it; that gives the width of a stitch.`,
    examples: ['46 needles', 'never mind'],
  });

/** The same figures twice are more often the same piece told again; counted twice they would seem surer than they are. */
export const sameOrNewQuestion = (request: Request, recorded: string, at: At): DeskAnswer =>
  asked(at, request, ['confirm'], {
    asks: say`Is this a new piece: ${recorded}?`,
    because: say`One with the same figures is in already. Counted twice, it would make me too sure. Nothing is stored yet.`,
    examples: ['yes', 'never mind'],
    offers: [
      { button: 'A New One', request },
      { button: 'The Same Piece', request: { kind: 'drop' } },
    ],
  });

/** Answers to the question for hours: the usual ones, as buttons. */
export const HOURS_OFFERS: readonly Offered[] = [2, 4].map((hours) => ({
  button: `${hours} h on Weekdays`,
  say: `${hours} hours on weekdays`,
  request: { kind: 'set_hours', hours: [{ days: [0, 1, 2, 3, 4], hours, said: `${hours} hours on weekdays` }] },
}));

/** When the maker works, without which no day can be kept. */
export const hoursQuestion = (request: Request, at: At): DeskAnswer =>
  asked(at, request, ['hours'], {
    asks: say`On which days do you work, and how long?`,
    because: say`I count back from the day in your hours. I ask once; you can change them at any time.`,
    examples: ['2 hours on weekdays', 'Mon to Fri 19:00 to 21:00', 'never mind'],
    offers: HOURS_OFFERS,
  });
