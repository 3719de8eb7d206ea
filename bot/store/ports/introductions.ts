export type Introductions = {
  /** True the first time for a maker, and never again: what Slack says of them is taken once, what they say counts. */
  first(makerId: string, at: number): Promise<boolean>;
};
