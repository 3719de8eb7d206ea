import { z } from 'zod';
import { AwayAsk, BatchStage } from './asks/batch.js';
import { HoursAsk, TimeAsk } from './asks/bench.js';
import { BuyAsk } from './asks/buy.js';
import { FormId } from './asks/form.js';
import { GaugeAsk, State } from './asks/gauge.js';
import { otherYarn, toMakeFrom } from './asks/other-yarn.js';
import { Bench, type Edit, PlanAsk } from './asks/plan.js';
import { CostAsk, PatternAsk, RateAsk, ShopAsk } from './asks/rates.js';
import { SHARE_REQUESTS } from './asks/share.js';
import { BallAsk, PriceAsk, StockAsk } from './asks/stock.js';
import { Value } from './asks/value.js';
import { Counter, which } from './asks/work.js';
import { yarnLeft } from './asks/yarn-left.js';
import { BENCH_PART_NAMES, type BenchPartName } from './bench-parts.js';

export * from './asks/batch.js';
export * from './asks/bench.js';
export * from './asks/buy.js';
export * from './asks/form.js';
export * from './asks/gauge.js';
export * from './asks/plan.js';
export * from './asks/rates.js';
export * from './asks/share.js';
export * from './asks/stock.js';
export * from './asks/stripes.js';
export * from './asks/value.js';
export * from './asks/work.js';

/** What a maker wants, whole: every door, button and form ends in one of these. */
const requests = z.discriminatedUnion('kind', [
  /** `follows` marks a change to the plan before it. */
  z.object({ kind: z.literal('plan'), ask: PlanAsk, follows: z.boolean().optional() }),
  /** Which of the maker's machines makes a piece best; without `ask`, the plan in hand. */
  z.object({ kind: z.literal('which_machine'), ask: PlanAsk.optional() }),
  z.object({ kind: z.literal('record_gauge'), gauge: GaugeAsk }),
  /** How to tell me a measured piece; with `none` how to come by one. */
  z.object({ kind: z.literal('tell_gauge'), none: z.boolean().optional() }),
  z.object({ kind: z.literal('show_gauge'), on: Bench.default({}) }),
  z.object({ kind: z.literal('show_pieces'), on: Bench.default({}) }),
  z.object({ kind: z.literal('what_helps') }),
  /** What the plan in hand comes to in looser or tighter knitting, by a share in per cent where one was named. */
  z.object({ kind: z.literal('looser'), way: z.enum(['looser', 'tighter']), percent: z.number().optional() }),
  /** Why the plan has its rows; `rows`: counts named, of which others than its own are set beside it. */
  z.object({ kind: z.literal('why'), rows: z.array(z.number()).max(2).default([]) }),
  /** What a word for a chance means, of the plan in hand; without one the word of that plan. */
  z.object({ kind: z.literal('explain_chance'), word: z.string().optional() }),
  /** A count of rows that the maker holds against that of the plan in hand; `by`: so many beside that. */
  z.object({ kind: z.literal('own_count'), rows: z.number().optional(), by: z.number().optional() }),
  /** How far the size that the rows make may be off, either way, or the range it may end in; without one as much as would help. */
  z.object({ kind: z.literal('allow'), value: Value.optional() }),
  /** The value that replaces one of the last record: its length, its rows. */
  z.object({ kind: z.literal('correct'), value: Value, was: z.number().optional() }),
  /** Takes back the measurement that these words name. */
  z.object({ kind: z.literal('take_back'), said: z.string(), id: z.string().optional() }),
  /** `rows`: the maker's own count, where it is to stop. */
  z.object({ kind: z.literal('start'), planId: z.string().optional(), rows: z.number().optional() }),
  /** `settles`: the maker chose between counts that disagreed. */
  z.object({
    kind: z.literal('tally'),
    by: z.number().optional(),
    to: z.number().optional(),
    settles: z.boolean().optional(),
    ...which,
  }),
  z.object({
    kind: z.literal('lost_count'),
    counts: z.array(Counter).max(2).default([]),
    length: Value.optional(),
    state: State.optional(),
    ...which,
  }),
  z.object({
    kind: z.literal('reading'),
    row: z.number().optional(),
    length: Value,
    state: State.optional(),
    confirmed: z.boolean().optional(),
    ...which,
  }),
  z.object({ kind: z.literal('set_stop'), rows: z.number(), ...which }),
  /** `unmeasured`: done, and to be measured later. */
  z.object({
    kind: z.literal('finish'),
    sizes: z.array(z.object({ id: z.string().optional(), value: Value })).default([]),
    rows: z.number().optional(),
    mass: Value.optional(),
    state: State.optional(),
    confirmed: z.boolean().optional(),
    unmeasured: z.boolean().optional(),
    ...which,
  }),
  z.object({ kind: z.literal('give_up'), ...which }),
  /** Gives the work up and starts its plan once more. */
  z.object({ kind: z.literal('start_over'), ...which }),
  z.object({ kind: z.literal('where'), ...which }),
  /** One of several sizes is meant, and not said which. */
  z.object({ kind: z.literal('which_size') }),
  /** `short`: the key words of each, as a checklist. */
  z.object({
    kind: z.literal('steps'),
    planId: z.string().optional(),
    form: z.enum(['long', 'short']).default('long'),
  }),
  z.object({ kind: z.literal('stock'), stock: StockAsk }),
  /** How many rows yarn left makes, and whether it lasts. */
  z.object({ kind: z.literal('yarn_left'), ...yarnLeft, ...which }),
  z.object({ kind: z.literal('other_yarn'), ...otherYarn }),
  z.object({ kind: z.literal('what_to_make'), ...toMakeFrom }),
  z.object({ kind: z.literal('show_shelf'), team: z.boolean().optional(), name: z.string().optional() }),
  /** The ways a yarn is sold: what a ball of it holds, and what one or several cost. */
  z.object({
    kind: z.literal('sold_as'),
    yarn: z.string().optional(),
    ball: BallAsk.optional(),
    prices: z.array(PriceAsk).default([]),
    said: z.string(),
  }),
  /** What to buy for the plan in hand. */
  z.object({ kind: z.literal('buy'), buy: BuyAsk }),
  /** Lines of the rate card, of the maker or of the team. */
  z.object({
    kind: z.literal('set_rates'),
    rates: z.array(RateAsk).min(1),
    team: z.boolean().optional(),
  }),
  z.object({ kind: z.literal('show_rates') }),
  z.object({ kind: z.literal('cost'), cost: CostAsk }),
  z.object({ kind: z.literal('shop_price'), shop: ShopAsk }),
  z.object({ kind: z.literal('pattern_price'), pattern: PatternAsk }),
  /** Several currencies where the words fit them all. */
  z.object({ kind: z.literal('set_currency'), currencies: z.array(z.string()).min(1), said: z.string() }),
  /** Time that work took. `pieces`: how many were made in it. */
  z.object({
    kind: z.literal('log_time'),
    times: z.array(TimeAsk).min(1),
    pieces: z.number().optional(),
    confirmed: z.boolean().optional(),
  }),
  /** `seconds`: how long it really was. */
  z.object({
    kind: z.literal('clock'),
    set: z.enum(['start', 'stop', 'forget']),
    parts: z.array(z.enum(BENCH_PART_NAMES)).optional(),
    seconds: z.number().optional(),
  }),
  /** How long the plan in hand takes, for so many. */
  z.object({ kind: z.literal('show_time'), copies: z.number().optional() }),
  /** What was logged: `isOfWork` of the piece on the machine or done last. */
  z.object({ kind: z.literal('show_log'), isOfWork: z.boolean() }),
  z.object({ kind: z.literal('set_hours'), hours: z.array(HoursAsk).min(1) }),
  z.object({ kind: z.literal('show_hours') }),
  z.object({ kind: z.literal('set_time_zone'), zone: z.string() }),
  ...SHARE_REQUESTS,
  /** How the batch in hand stands, or its rest dealt anew. */
  z.object({ kind: z.literal('batch'), act: z.enum(['show', 'replan']) }),
  /** So many more of the batch are done, by the maker unless `who` says. */
  z.object({
    kind: z.literal('batch_done'),
    count: z.number(),
    who: z.string().optional(),
    stage: BatchStage.optional(),
  }),
  z.object({ kind: z.literal('batch_without'), who: z.string(), when: AwayAsk }),
  z.object({ kind: z.literal('remind'), act: z.enum(['set', 'stop']) }),
  z.object({ kind: z.literal('set_units'), units: z.enum(['cm', 'in']) }),
  /** To fill in a form: without `form` the one that what is asked about calls for. */
  z.object({ kind: z.literal('form'), form: FormId.optional() }),
  z.object({ kind: z.literal('undo'), redo: z.boolean().default(false) }),
  z.object({ kind: z.literal('drop') }),
  z.object({ kind: z.literal('help') }),
  z.object({ kind: z.literal('thanks') }),
  /** The last message was deleted, and what it stored was not. */
  z.object({ kind: z.literal('deleted') }),
  /** What a term of the trade means: its first word in the glossary. */
  z.object({ kind: z.literal('meaning'), term: z.string() }),
  /** How a part of the work is done; `said` asks. */
  z.object({ kind: z.literal('how_to'), said: z.string(), steps: z.array(z.string()) }),
  z.object({
    kind: z.literal('unread'),
    why: z.enum([
      'empty',
      'nothing',
      /** Words that change a plan, where none is in hand; a count or a length of work, where none is. */
      'no_plan',
      'no_work',
      /** A thing that no kind of piece is. */
      'not_made',
      'words',
      'too_long',
      'too_many_sizes',
      'too_many_at_once',
      'contradiction',
      'guess',
      'bare_gauge',
      'which_yarn',
      /** A number that may be a price, a size, a machine or how many. */
      'which_number',
      'which_stripes',
      /** A colour, which changes no plan; a share of the pieces for someone who is no maker here. */
      'colour_alone',
      'whom_with',
      /** A thing to go in, and not how thick it is. */
      'two_sides',
      'one_weight',
      'which_other',
      /** A size wanted beside the one in hand, and not by how much. */
      'relative',
      /** A size wanted beside one that was never told. */
      'no_size_yet',
      'hours',
      'expired',
      /** Someone else's words without a size in them; the words of a bot. */
      'no_size',
      'of_bot',
      /** A message edited that is not read again. */
      'edited',
    ]),
    words: z.string().default(''),
  }),
]);
export type Request = z.infer<typeof requests>;

/** A name of its own, so that the shapes that hold requests are not written out with every kind of them. */
export interface RequestShape extends z.ZodType<Request> {}
export const Request: RequestShape = requests;

export type RequestKind = Request['kind'];

/** A request about a piece that is asked for: to plan it, or to find its machine. */
export type OfPiece = Extract<Request, { kind: 'plan' | 'which_machine' }>;
export const isOfPiece = (request: Meaning | undefined): request is OfPiece =>
  request?.kind === 'plan' || request?.kind === 'which_machine';

/**
 * What one message part means before the conversation is known: a whole request, an edit to the last plan ask,
 * or the pick of something offered.
 */
export type Meaning =
  | Request
  | { kind: 'change'; edit: Edit }
  /** A bare answer to the one open question: a length, a count or words, whichever it asked for. */
  | { kind: 'reply'; value: Value }
  /** What a ball holds, or which dye lot is meant: the answer to a question about a lot. */
  | { kind: 'of_lot'; ball?: BallAsk; dyeLot?: string }
  /** How long it was or which part of the work: the answer to a question about time. */
  | { kind: 'of_time'; seconds?: number; parts?: BenchPartName[] }
  | { kind: 'pick'; turn?: string; index: number }
  /** One of the sizes in hand, by its place among them, and what is wanted of it first. */
  | { kind: 'size'; index: number; focus: PlanAsk['focus'] };
