import type { BatchProblem, CostProblem, Plan, Problem, TimeProblem, Words, YarnProblem } from '../core/index.js';
import type { Request } from './request.js';
import type { ShareProblem } from './share-problem.js';

type OfStripes = 'no_stripes' | 'too_many_colours' | 'stripe_not_whole' | 'stripe_too_tall';
/** What cannot be about yarn, but for its stripes. */
export type OfYarn = Exclude<YarnProblem, { code: OfStripes }>;

/** Where the maker stands, so that what was not understood leads on from there: the first of these that holds. */
export type Standing =
  | { is: 'asked'; asks: string; examples: readonly string[] }
  | { is: 'knitting'; label: string; machine: string; row: number; soFarMm: number | undefined }
  | { is: 'planned'; label: string; plan: Plan | undefined }
  | { is: 'measured'; example: string }
  | { is: 'new'; example: string };

/** What the bot itself cannot do, beside core's problems. */
export type BotProblem =
  | { code: 'unread'; why: (Request & { kind: 'unread' })['why']; words: string; standing?: Standing }
  /** What no kind makes; the nearest that one does, and what that would lack. */
  | { code: 'not_made'; said: string; nearest: string; lacks: string; example: string }
  | { code: 'not_a_length'; label: string; said: string }
  | { code: 'length_not_positive'; label: string; said: string }
  | { code: 'count_outside'; label: string; given: number; said?: string | undefined; min: number; max: number }
  | { code: 'count_not_whole'; label: string; given: number }
  | { code: 'spacing_outside'; label: 'row' | 'stitch'; givenMm: number; minMm: number; maxMm: number }
  | { code: 'not_a_weight'; label: string; said: string }
  | { code: 'day_ahead'; said: string }
  | { code: 'before_yarn'; said: string; yarn: string; since: number }
  | { code: 'of_share'; problem: ShareProblem }
  | { code: 'no_work' }
  /** What an undo would turn back has been changed again, from another place. */
  | { code: 'moved_on'; said: string }
  | { code: 'nothing_to_correct'; said: string }
  | { code: 'no_such_piece'; said: string; pieces: readonly string[] }
  | { code: 'nothing_measured' }
  | { code: 'nothing_to_undo'; redo: boolean }
  | { code: 'no_plan_yet' }
  /** An amount out of its range; `unit` stands right behind the number. */
  | { code: 'amount_outside'; label: string; given: number; min: number; max: number; unit: '' | ' g' | ' m' | '%' }
  /** A price finer than its currency. */
  | { code: 'price_too_fine'; said: string; digits: number }
  /** A time that cannot be logged for the piece of this name. */
  | { code: 'of_time'; problem: TimeProblem; said: string; label: string }
  /** All of it is logged for work that is not done yet. */
  | { code: 'timed_already'; said: string; label: string }
  | { code: 'no_clock' }
  | {
      code: 'bad_hours';
      said: string;
      why: 'over_a_day' | 'backwards' | 'overlap' | 'no_such_day' | 'past' | 'too_long';
    }
  | { code: 'no_such_zone'; said: string }
  /** What cannot be scheduled; `who` is a name. */
  | { code: 'of_batch'; problem: BatchProblem }
  /** Somebody who is to make a share, or did, and is not known by that name. */
  | { code: 'not_in_team'; said: string; makers: readonly string[] }
  /** Somebody who is to make a share and has no gauge for it. */
  | { code: 'no_gauge_of'; who: string }
  | { code: 'no_batch' }
  | { code: 'no_reminders' }
  /** Nothing in hand has a day that is still ahead. */
  | { code: 'nothing_to_remind' }
  /** More than the batch has left, or fewer than none. */
  | { code: 'done_outside'; given: number; max: number }
  | { code: 'no_yarn_named'; example?: string | undefined }
  | { code: 'of_yarn'; problem: OfYarn }
  | { code: 'of_cost'; problem: CostProblem }
  /** A question about money that lacks a part: what to say. */
  | { code: 'says_too_little'; needs: string; example: string }
  | { code: 'of_stripes'; problem: YarnProblem }
  | { code: 'not_on_shelf'; name: string; dyeLot: string; lots: readonly string[] }
  /** Less than was to go, or than work was promised. */
  | { code: 'shelf_too_low'; lot: string; holds: Words; aside: Words | undefined };

export type AnyProblem = Problem | BotProblem;
