import type { Bill, Money, Sale, Words } from '../../core/index.js';
import type { Rate } from '../store/ports.js';

/** Lines of a rate card: those just told, or all that hold. */
type RatesReply = {
  kind: 'rates';
  lead: Words;
  rates: readonly Rate[];
  team: boolean;
  notes: readonly Words[];
  assumed: readonly Words[];
};

/** What a piece costs and what is left of its price. */
export type CostReply = {
  kind: 'cost';
  /** One of them, `cowl`. */
  label: string;
  /** How each notion of the bill is called, by its id. */
  names: Readonly<Record<string, string>>;
  /** What all of them take. */
  minutes: number;
  /** Whole balls for all of them, where those were priced. */
  balls: number | undefined;
  bill: Bill;
  /** Of one piece. */
  eachMinor: number;
  /** `anHour` is undefined where no time is known. */
  sale: (Sale & { anHour: Money | undefined }) | undefined;
  /** The price that leaves so much, where that was asked. */
  wanted: { way: 'margin' | 'markup'; percent: number; price: Money } | undefined;
  fees: { percent: number; fixed?: Money | undefined } | undefined;
  /** `pieces` is undefined where no number of sales pays for it. */
  stall: { minor: number; pieces: number | undefined } | undefined;
  isBreakEven: boolean;
  assumed: readonly Words[];
};

export type CostingReply = RatesReply | CostReply;
