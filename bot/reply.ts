import type {
  Gauge,
  LoopEstimate,
  MachineBench,
  OnMachine,
  Outcome,
  Piece,
  Plan,
  Reading,
  Remedy,
  Verdict,
  Words,
  YarnNeed,
} from '../core/index.js';
import type { AnyProblem, BotProblem } from './problems.js';
import type { BatchReply, Schedule } from './replies/batch.js';
import type { BenchReply, Took } from './replies/bench.js';
import type { BuyReply } from './replies/buy.js';
import type { CostingReply } from './replies/costing.js';
import type { StripesShown } from './replies/stripes.js';
import type { YarnLeftShown } from './replies/yarn-left.js';
import type { Counter, PlanAsk, Request, Size, Value } from './request.js';
import type { Ball, Lot, Machine, Profile, PutUp, StoredMeasurement, Yarn } from './store/ports.js';

/** The gauge behind an answer, by the maker's own names. */
export type GaugeUsed = { machine: Machine; yarn: Yarn; tension: string; gauge: Gauge };

/** A way on: a whole request behind a button, and the words that do the same. */
export type Offered = { button: string; request: Request; say?: string; spoken?: string; primary?: boolean };

/** Work in hand as it stands. `measureAt` is a row still ahead at which measuring pays. */
export type WorkShown = {
  id: string;
  label: string;
  machine: Machine;
  rows: number;
  stopAt: number;
  soFarMm: number | undefined;
  measureAt: number | undefined;
  /** In stripes: the colour that is on, and the next change. */
  colour?: Words | undefined;
};

/** The yarn of one piece before something was learned of it, and after. */
export type YarnChange = { was: YarnNeed | undefined; now: YarnNeed | undefined };

/** One of several sizes by its name, and what came of it. */
export type SizePlanned = { name: string; size: Size; outcome: Outcome<Plan> };

/** A machine of the maker, and the profile whose gauge stands for it. */
export type MakersBench = MachineBench & { machine: Machine; profile: Profile };

export type Reply = { offers: readonly Offered[] } & (
  | {
      kind: 'plan';
      stripes?: StripesShown | undefined;
      plan: Plan;
      planId: string;
      ask: PlanAsk;
      gauge: GaugeUsed;
      /** What a ball of its yarn holds, where that was told. */
      ball?: Ball | undefined;
      /** How old the card is whose button brought this plan again. */
      since?: Words | undefined;
      /** What a follow-up changed, in words; empty for a new plan. */
      changed: readonly Words[];
      /** The work on the machine that a follow-up leaves as it was. */
      standing?: Words | undefined;
      /** Another machine of the maker that makes what the needles here miss. */
      elsewhere?: Words | undefined;
      /** How long it takes, where that was asked. */
      time?: Took | undefined;
      /** What is to be said of a plan that is shared: beside the owner's, or who has it as it was. */
      shared?: readonly Words[] | undefined;
      /** When it is ready for its day; undefined without a day, or while the maker's hours are not known. */
      schedule?: Schedule | undefined;
      /** Why there is no schedule for the day. */
      unscheduled?: readonly BotProblem[] | undefined;
      assumed: readonly Words[];
    }
  | {
      /** Several sizes of a piece, in the order asked, each planned by itself or with why it cannot be. */
      kind: 'sizes';
      piece: Piece;
      sizes: readonly SizePlanned[];
      ask: PlanAsk;
      gauge: GaugeUsed;
      changed: readonly Words[];
      assumed: readonly Words[];
      notes: readonly Words[];
    }
  | {
      kind: 'gauge';
      recorded: Words;
      /** What it puts right, as it was said. */
      insteadOf?: string | undefined;
      /** What stands out: an unusual gauge for its yarn, a change between two states. */
      notes: readonly Words[];
      gauge: GaugeUsed;
      assumed: readonly Words[];
      /** How the last plan fares with it: rows and chance before and after. */
      buys?: { label: string; rows: number; was: number | undefined; now: number; yarn: YarnChange } | undefined;
      /** The yarn in a stitch, where this told of it. */
      loop?: LoopEstimate | undefined;
    }
  | BenchReply
  | CostingReply
  | BatchReply
  | { kind: 'gauges'; gauges: readonly GaugeUsed[] }
  | { kind: 'pieces'; gauge: GaugeUsed; measurements: readonly StoredMeasurement[] }
  | {
      kind: 'machines';
      label: string;
      ask: PlanAsk;
      /** Best first; those that cannot make it last. At least one. */
      ranked: readonly OnMachine<MakersBench>[];
      /** Machines whose needles nobody has told. */
      untold: readonly Machine[];
      assumed: readonly Words[];
    }
  | { kind: 'helps'; plan: Plan; ask: PlanAsk; remedies: readonly Remedy[] }
  | {
      kind: 'work';
      became: 'started' | 'counted' | 'settled' | 'shown' | 'stop_set' | 'given_up';
      work: WorkShown;
      notes: readonly Words[];
    }
  | {
      kind: 'counts';
      work: WorkShown;
      counts: readonly Counter[];
      /** The length that weighed them, and in which state it was read. */
      length: Value | undefined;
      state: Reading['state'];
      verdict: Verdict | undefined;
    }
  | {
      /** The plan of the work, corrected: its `rows` is the stop row. */
      kind: 'correction';
      plan: Plan;
      ask: PlanAsk;
      machine: Machine;
      stopBefore: number;
      read: { said: string; stateAssumed: boolean; reading: Reading };
      assumed: readonly Words[];
    }
  | {
      kind: 'finished';
      assumed: readonly Words[];
      label: string;
      machine: Machine;
      rows: number;
      rowsAssumed: boolean;
      stateAssumed: boolean;
      size: { said: string; mm: number; adjective: string; landing: Plan['landing'] } | undefined;
      massG: number | undefined;
      /** What such a piece needs, by what was known before it and now. */
      yarn: YarnChange;
      /** Whether its readings on the way and its finished size make a pair of states. */
      paired: boolean;
      was: { rows: number; chance: number } | undefined;
      next: { rows: number; chance: number } | undefined;
      /** What it took from the shelf. */
      shelf: readonly Words[];
      /** What it may tell the owner of a shared plan. */
      shared: readonly Words[];
    }
  | {
      /** The lots that changed, as they are now. */
      kind: 'stocked';
      lead: Words;
      notes: readonly Words[];
      assumed: readonly Words[];
      lots: readonly Lot[];
    }
  | {
      kind: 'shelf';
      whose: 'own' | 'team';
      lots: readonly Lot[];
      /** How many lots the other shelf holds. */
      others: number;
    }
  | {
      kind: 'sold';
      yarn: string;
      putUps: readonly Pick<PutUp, 'ball' | 'balls' | 'price'>[];
      notes: readonly Words[];
      assumed: readonly Words[];
    }
  | BuyReply
  | ({ kind: 'yarn_left' } & YarnLeftShown)
  | {
      kind: 'steps';
      plan: Plan;
      form: 'long' | 'short';
      rowsBefore: number | undefined;
      stripes?: StripesShown | undefined;
    }
  | {
      kind: 'question';
      asks: Words;
      because: Words;
      examples: readonly string[];
      /** What a follow-up changed in the request that waits for the answer. */
      changed?: readonly Words[] | undefined;
      isOwn?: true | undefined;
    }
  /** `ways`: what each offer is called. */
  | { kind: 'problem'; problems: readonly AnyProblem[]; ways: readonly Words[]; assumed?: readonly Words[] | undefined }
  /** `isOwn`: it tells what is the maker's alone until shared. */
  | { kind: 'answer'; lead: Words; lines: readonly Words[]; examples: readonly string[]; isOwn?: true }
  | {
      kind: 'help';
      first: boolean;
      examples: readonly string[];
      /** The work in hand, a machine beside the one used last, and a yarn on the shelf: the maker's own, to speak of. */
      next?: Pick<WorkShown, 'rows' | 'stopAt'> | undefined;
      machine?: string | undefined;
      yarn?: string | undefined;
    }
);
export type ReplyOf<K extends Reply['kind']> = Extract<Reply, { kind: K }>;
