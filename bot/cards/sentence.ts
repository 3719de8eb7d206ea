/** A problem in words: what field, what was read, what is allowed, and the one next step. */
export type Sentence = { lead: string; body: readonly string[]; sayings: readonly string[] };

/** A lead line, what follows it, and words that can be said. */
export const sentence = (lead: string, body: readonly string[], sayings: readonly string[] = []): Sentence => ({
  lead,
  body,
  sayings,
});
