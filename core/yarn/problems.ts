import type { Outcome } from '../problems.js';

/** What cannot be done about yarn with what was given, as data. */
export type YarnProblem =
  | { code: 'count_not_above_zero'; given: number }
  | { code: 'tex_out_of_range'; givenTex: number; minTex: number; maxTex: number }
  | { code: 'empty_ball'; massG: number; lengthM: number }
  | { code: 'nothing_for_sale' }
  /** A price, a pack or a stock that is no whole number, or too small. */
  | { code: 'not_whole'; field: 'price' | 'pack' | 'stock'; given: number; min: number }
  | { code: 'no_currency'; minor: number }
  | { code: 'mixed_currencies'; currencies: readonly string[] }
  | { code: 'unknown_lot'; given: string; lots: readonly string[] }
  | { code: 'not_enough_for_sale'; toHoldM: number; mostM: number }
  | { code: 'sureness_out_of_range'; given: number; min: number; max: number }
  | { code: 'no_stripes' }
  | { code: 'too_many_colours'; given: number; max: number }
  | { code: 'stripe_not_whole'; colour: string; given: number }
  | { code: 'stripe_too_tall'; colour: string; given: number; rowsInPiece: number };

export type YarnOutcome<T> = Outcome<T, YarnProblem>;
