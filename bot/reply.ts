import type { Gauge, Offer, Plan, Problem, Words } from '../core/index.js';
import type { PlanAsk, Request } from './request.js';
import type { Machine, Yarn } from './store/ports.js';

/** The gauge behind an answer, by the maker's own names. */
export type GaugeUsed = { machine: Machine; yarn: Yarn; gauge: Gauge };

/** A way on: a whole request behind a button, and the words that do the same. */
export type Offered = { button: string; request: Request; say?: string; spoken?: string; primary?: boolean };

/** What the bot itself cannot do, beside core's problems. */
export type BotProblem =
  | { code: 'unread'; why: (Request & { kind: 'unread' })['why']; words: string }
  | { code: 'not_a_length'; label: string; said: string }
  | { code: 'length_not_positive'; label: string; said: string }
  | { code: 'count_outside'; label: string; given: number; min: number; max: number }
  | { code: 'count_not_whole'; label: string; given: number }
  | { code: 'spacing_outside'; label: 'row' | 'stitch'; givenMm: number; minMm: number; maxMm: number }
  | { code: 'nothing_measured' }
  | { code: 'nothing_to_undo'; redo: boolean }
  | { code: 'no_plan_yet' };

export type AnyProblem = Problem | BotProblem;

export type Reply = { offers: readonly Offered[] } & (
  | {
      kind: 'plan';
      plan: Plan;
      planId: string;
      ask: PlanAsk;
      gauge: GaugeUsed;
      /** What a follow-up changed, in words; empty for a new plan. */
      changed: readonly Words[];
      assumed: readonly Words[];
    }
  | {
      kind: 'gauge';
      recorded: Words;
      gauge: GaugeUsed;
      assumed: readonly Words[];
      /** How the last plan fares with it: rows and chance before and after. */
      buys?: { label: string; rows: number; was: number | undefined; now: number } | undefined;
    }
  | { kind: 'gauges'; gauges: readonly GaugeUsed[] }
  | { kind: 'steps'; plan: Plan; rowsBefore: number | undefined }
  | {
      kind: 'question';
      asks: Words;
      because: Words;
      examples: readonly string[];
      /** What a follow-up changed in the request that waits for the answer. */
      changed?: readonly Words[] | undefined;
    }
  | { kind: 'problem'; problems: readonly AnyProblem[]; ways: readonly Offer[]; assumed?: readonly Words[] | undefined }
  | { kind: 'answer'; lead: Words; lines: readonly Words[]; examples: readonly string[] }
  | { kind: 'help'; first: boolean; examples: readonly string[] }
);
export type ReplyOf<K extends Reply['kind']> = Extract<Reply, { kind: K }>;
