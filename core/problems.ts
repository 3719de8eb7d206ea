import type { Given } from './given.js';
import type { Way } from './sizing/contents.js';
import type { Panels } from './sizing/in-panels.js';
import type { Window } from './sizing/rows.js';
import type { Words } from './words.js';

/** A way out that works: words for it, and the edit of the values asked that brings it about. */
export type Offer = { label: Words; edit: Record<string, Given | null> };

/** A field as the maker knows it. */
export type FieldName = { id: string; label: string };

/** What is too small for a thing that must go in. `needles`: those there are and those it takes, where they make the size. */
export type Tight = {
  way: Way;
  field: FieldName;
  mostMm: number;
  needsMm: number;
  needles?: { has: number; wanted: number } | undefined;
};

/** What cannot be done with what was asked, as data; cards/sentences words it. */
export type Problem =
  | { code: 'missing'; anyOf: readonly FieldName[] }
  | { code: 'length_out_of_range'; field: FieldName; givenMm: number; minMm: number; maxMm: number }
  /** Out of the range that other things asked leave, with why, and ways out. */
  | {
      code: 'length_out_of_range';
      field: FieldName;
      givenMm: number;
      minMm: number;
      maxMm: number;
      why: Words;
      offers: readonly Offer[];
    }
  | { code: 'count_out_of_range'; field: FieldName; given: number; min: number; max: number }
  | { code: 'percent_out_of_range'; field: FieldName; given: number; min: number; max: number }
  | { code: 'not_whole'; field: FieldName; given: number }
  | {
      code: 'wrong_kind';
      field: FieldName;
      given: Given;
      wanted: 'length' | 'count' | 'choice' | 'percent' | 'contents';
    }
  | { code: 'unknown_choice'; field: FieldName; given: string; options: readonly string[] }
  | { code: 'empty_window'; field: FieldName; window: Window }
  | { code: 'unknown_field'; field: FieldName; takes: readonly FieldName[] }
  | { code: 'closure_too_long'; closureMm: number; needsMm: number; window: Window; offers: readonly Offer[] }
  | { code: 'ring_too_big'; ringMm: number; heightMm: number; offers: readonly Offer[] }
  /** What must go in fits neither way up that may be: for each the first thing in its way. */
  | { code: 'contents_too_big'; tight: readonly [Tight, ...Tight[]]; offers: readonly Offer[] }
  | { code: 'too_many_needles'; given: number; max: number; machine: number; offers: readonly Offer[] }
  | {
      code: 'needles_set_it';
      field: FieldName;
      expectedMm: number;
      window: Window;
      needles: number;
      needlesWanted: number;
      stitchChange: number;
      /** The chance of ending in the window even so, where the spread of the stitch width is known. */
      chance?: number;
      /** Flat panels that would make it. */
      panels?: Panels | undefined;
      offers: readonly Offer[];
    }
  | { code: 'no_row_gauge' }
  | { code: 'no_stitch_gauge'; field: FieldName };

/** What was made, or every problem with it. Parts of core that plan no piece have problems of their own, `P`. */
export type Outcome<T, P = Problem> = { ok: true; value: T } | { ok: false; problems: readonly P[] };

export const done = <T>(value: T): Outcome<T, never> => ({ ok: true, value });
export const refused = <P = Problem>(...problems: readonly P[]): Outcome<never, P> => ({ ok: false, problems });
