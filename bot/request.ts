import { z } from 'zod';

const Person = z.union([
  z.object({ is: z.enum(['woman', 'man']) }),
  z.object({ is: z.literal('child'), months: z.number(), sex: z.enum(['boy', 'girl']).optional() }),
]);

/** A value a maker gave for one ask of a piece, with what was typed and what was taken for granted. */
const provenance = {
  said: z.string().optional(),
  assumed: z.enum(['unit', 'same_unit', 'field', 'rate', 'body', 'usual', 'named']).optional(),
  /** Whose published measure the value is, with `assumed: 'body'`; the label is that of the ask. */
  body: z.object({ label: z.string(), person: Person }).optional(),
  /**
   * What was made of the words: `around`: a length once round, of which the value is half, as the piece lies flat.
   * `across`: a diameter, of which the value is once round.
   * `at_least`, `at_most`: a window from the size typed to the usual tolerance on the side allowed. Empty
   * for a window of both bounds.
   */
  given: z.array(z.enum(['around', 'across', 'at_least', 'at_most'])).optional(),
};

const Sides = z.tuple([z.number(), z.number(), z.number()]).readonly();

export const Value = z.discriminatedUnion('is', [
  z.object({ is: z.literal('length'), mm: z.number(), ...provenance }),
  z.object({ is: z.literal('window'), loMm: z.number(), hiMm: z.number(), ...provenance }),
  /** A number, or three `sides`, whose unit nobody has said yet; it becomes a length once the maker's unit is known. */
  z.object({ is: z.literal('bare'), lo: z.number(), hi: z.number(), sides: Sides.optional(), ...provenance }),
  z.object({ is: z.literal('count'), count: z.number(), ...provenance }),
  z.object({ is: z.literal('mass'), g: z.number(), ...provenance }),
  z.object({ is: z.literal('percent'), percent: z.number(), ...provenance }),
  z.object({ is: z.literal('choice'), id: z.string(), ...provenance }),
  /** The sides of a thing that a piece must take, with its name in what was said. */
  z.object({ is: z.literal('contents'), sidesMm: Sides, ...provenance }),
]);
export type Value = z.infer<typeof Value>;

/** Which machine and yarn, in the maker's words; absent parts follow what was used last. */
export const Bench = z.object({
  machine: z.string().optional(),
  needles: z.number().optional(),
  yarn: z.string().optional(),
  /** The tension setting, as the machine marks it. */
  tension: z.string().optional(),
});
export type Bench = z.infer<typeof Bench>;

/** ISO dates. `day`: when the piece must be ready. `event`: the day named, when that is the day after. */
export const Due = z.object({ day: z.string(), said: z.string(), event: z.string().optional() });
export type Due = z.infer<typeof Due>;

/** One of several sizes: what the maker calls it, and the values that it alone has. */
export const Size = z.object({ label: z.string(), values: z.record(z.string(), Value) });
export type Size = z.infer<typeof Size>;

/** So many sizes are planned in one go at most. */
export const MOST_SIZES = 12;
const Sizes = z.array(Size).min(2).max(MOST_SIZES).optional();

export const PlanAsk = z.object({
  piece: z.string().optional(),
  copies: z.number().int().min(1).max(500).default(1),
  values: z.record(z.string(), Value).default({}),
  /** Several sizes of the piece in one go; `values` are those that all of them share. */
  sizes: Sizes,
  on: Bench.default({}),
  focus: z.array(z.enum(['rows', 'needles', 'yarn', 'notions', 'steps', 'checklist'])).default([]),
  due: Due.optional(),
  /** The maker's words for the sizes, kept while the piece is not known and so cannot be asked what they mean. */
  words: z.string().optional(),
});
export type PlanAsk = z.infer<typeof PlanAsk>;

/** Rows or stitches, and the length they were counted over; `over` is absent when a rate names none. */
export const Tension = z.object({
  count: z.number(),
  over: Value.optional(),
  /** `counted`: whole rows inside a fixed ruler length. `read`: a known number of rows, its length read. */
  how: z.enum(['counted', 'read']),
  said: z.string().optional(),
});
export type Tension = z.infer<typeof Tension>;

const State = z.enum(['hanging', 'rested', 'washed']);

/** Rows of one object measured in one state. */
export const StateReading = z.object({ rows: Tension, state: State });
export type StateReading = z.infer<typeof StateReading>;

const PastDay = z.object({ day: z.string(), said: z.string() });

/** Yarn by its category in the standard yarn weight system, its count in tex, and the ISO day its lot came. */
const YarnFacts = z.object({
  category: z.number().optional(),
  tex: z.number().optional(),
  since: PastDay.optional(),
  said: z.string(),
});

export const GaugeAsk = z.object({
  on: Bench.default({}),
  /** As last measured; see `earlier`. */
  rows: Tension.optional(),
  stitches: Tension.optional(),
  /** Flat width of the whole tube; with needles it gives the stitch width. */
  flatWidth: Value.optional(),
  state: State.optional(),
  /** The same object in the states before: readings of one swatch. */
  earlier: z.array(StateReading).optional(),
  form: z.enum(['tube', 'panel']).optional(),
  /** Another reading of the swatch recorded last. */
  same: z.boolean().optional(),
  mass: Value.optional(),
  /** Yarn drawn out of this many stitches, and its length. */
  unravelled: z.object({ stitches: z.number(), over: Value }).optional(),
  /** What is known of the yarn: its category in the standard yarn weight system, its count. */
  weight: YarnFacts.optional(),
  /** The ISO day it was measured, when that is not today. */
  day: PastDay.optional(),
  note: z.string().max(200).optional(),
  /** Set when the maker has said that an unusual figure is right. */
  confirmed: z.boolean().optional(),
});
export type GaugeAsk = z.infer<typeof GaugeAsk>;

/** Money as it was typed, in whole units of one of these currencies by ISO 4217; none where none was named. */
export const MoneyAsk = z.object({ amount: z.number(), currencies: z.array(z.string()), said: z.string() });
export type MoneyAsk = z.infer<typeof MoneyAsk>;

/** What so many of a thing cost together. */
export const PriceAsk = MoneyAsk.extend({ count: z.number() });
export type PriceAsk = z.infer<typeof PriceAsk>;

/** What a ball weighs and how long its yarn is, as far as it was said. */
export const BallAsk = z.object({ massG: z.number().optional(), lengthMm: z.number().optional() });
export type BallAsk = z.infer<typeof BallAsk>;

/** What is on hand, came, or went. */
export const StockAsk = z.object({
  way: z.enum(['set', 'add', 'take']),
  kind: z.enum(['yarn', 'notion']),
  /** In the maker's words; the yarn of the plan in hand or used last where none was said. */
  name: z.string().optional(),
  dyeLot: z.string().optional(),
  /** Balls, or pieces of a notion. */
  count: z.number().optional(),
  /** Loose yarn. */
  massG: z.number().optional(),
  /** All there is, in place of an amount. */
  all: z.boolean().optional(),
  ball: BallAsk.optional(),
  price: PriceAsk.optional(),
  /** On the shelf of the team rather than the maker's own. */
  team: z.boolean().optional(),
  said: z.string(),
});
export type StockAsk = z.infer<typeof StockAsk>;

/** Which work in hand: the one a button names, that on the machine named, else the one of this talk. */
const which = { workId: z.string().optional(), on: Bench.optional() };

/** A counter of rows and what it shows. */
export const Counter = z.object({ name: z.string(), rows: z.number() });
export type Counter = z.infer<typeof Counter>;

/** What a maker wants, whole: every door, button and form ends in one of these. */
export const Request = z.discriminatedUnion('kind', [
  /** `follows` marks a change to the plan before it. */
  z.object({ kind: z.literal('plan'), ask: PlanAsk, follows: z.boolean().optional() }),
  /** Which of the maker's machines makes a piece best; without `ask`, the plan in hand. */
  z.object({ kind: z.literal('which_machine'), ask: PlanAsk.optional() }),
  z.object({ kind: z.literal('record_gauge'), gauge: GaugeAsk }),
  z.object({ kind: z.literal('show_gauge'), on: Bench.default({}) }),
  z.object({ kind: z.literal('show_pieces'), on: Bench.default({}) }),
  z.object({ kind: z.literal('what_helps') }),
  /** The value that replaces one of the last record: its length, its rows. */
  z.object({ kind: z.literal('correct'), value: Value, was: z.number().optional() }),
  /** Takes back the measurement that these words name. */
  z.object({ kind: z.literal('take_back'), said: z.string(), id: z.string().optional() }),
  z.object({ kind: z.literal('start'), planId: z.string().optional() }),
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
  z.object({ kind: z.literal('show_shelf'), team: z.boolean().optional(), name: z.string().optional() }),
  /** The ways a yarn is sold: what a ball of it holds, and what one or several cost. */
  z.object({
    kind: z.literal('sold_as'),
    yarn: z.string().optional(),
    ball: BallAsk.optional(),
    prices: z.array(PriceAsk).default([]),
    said: z.string(),
  }),
  /** Several currencies where the words fit them all. */
  z.object({ kind: z.literal('set_currency'), currencies: z.array(z.string()).min(1), said: z.string() }),
  z.object({ kind: z.literal('set_units'), units: z.enum(['cm', 'in']) }),
  z.object({ kind: z.literal('undo'), redo: z.boolean().default(false) }),
  z.object({ kind: z.literal('drop') }),
  z.object({ kind: z.literal('help') }),
  z.object({ kind: z.literal('thanks') }),
  z.object({
    kind: z.literal('unread'),
    why: z.enum([
      'empty',
      'nothing',
      'words',
      'too_long',
      'too_many_sizes',
      'too_many_at_once',
      'contradiction',
      'guess',
      'bare_gauge',
      'which_yarn',
      'expired',
    ]),
    words: z.string().default(''),
  }),
]);
export type Request = z.infer<typeof Request>;
export type RequestKind = Request['kind'];

/** A request about a piece that is asked for: to plan it, or to find its machine. */
export type OfPiece = Extract<Request, { kind: 'plan' | 'which_machine' }>;
export const isOfPiece = (request: Meaning | undefined): request is OfPiece =>
  request?.kind === 'plan' || request?.kind === 'which_machine';

/**
 * What one message part means before the conversation is known: a whole request, an edit to the last plan ask
 * (one level deep: a value is replaced whole, null removes it), or the pick of something offered.
 */
export const Edit = z.object({
  piece: z.string().optional(),
  copies: z.number().int().min(1).max(500).optional(),
  values: z.record(z.string(), Value.nullable()).default({}),
  sizes: Sizes,
  on: Bench.default({}),
  focus: PlanAsk.shape.focus,
  due: PlanAsk.shape.due,
});
export type Edit = z.infer<typeof Edit>;

export type Meaning =
  | Request
  | { kind: 'change'; edit: Edit }
  /** A bare answer to the one open question: a length, a count or words, whichever it asked for. */
  | { kind: 'reply'; value: Value }
  /** What a ball holds, or which dye lot is meant: the answer to a question about a lot. */
  | { kind: 'of_lot'; ball?: BallAsk; dyeLot?: string }
  | { kind: 'pick'; turn?: string; index: number }
  /** One of the sizes in hand, by its place among them, and what is wanted of it first. */
  | { kind: 'size'; index: number; focus: PlanAsk['focus'] };
