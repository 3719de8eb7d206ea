import type { Run } from '../../core/index.js';
import type { Offered } from '../reply.js';

/**
 * The first column names each row. `lines`: each row as a sentence, where plain text can say it better than its cells in
 * a row. `figures`: the other columns are numbers, set to the right.
 */
export type Table = {
  columns: readonly string[];
  rows: readonly (readonly string[])[];
  lines?: readonly string[];
  figures?: boolean;
};

/** An answer ready to be shown, as plain sentences: both renderings of it say the same. */
export type Card = {
  /** The one line the maker came for. */
  lead: string;
  /** An answer worth keeping is led by a heading, a passing one by a bold line. */
  kept: boolean;
  body: readonly string[];
  /** Facts with a label each, always in the order Chance, Better, Yarn, Assumed, Left out. */
  facts: readonly { label: string; text: string }[];
  /** Numbered, in order; key words are shown bold where that can be. */
  steps: readonly (readonly Run[])[];
  table?: Table | undefined;
  offers: readonly Offered[];
  /** Small print: the gauge used, who can see it. */
  foot: readonly string[];
  /** Words that do what the buttons do, and more. */
  sayings: readonly string[];
};

export const plainCard = (lead: string, rest: Partial<Card> = {}): Card => ({
  lead,
  kept: false,
  body: [],
  facts: [],
  steps: [],
  offers: [],
  foot: [],
  sayings: [],
  ...rest,
});
