/** How fast cards go out and how long a failing one is tried. */
export type Pace = {
  /** Between two posts in one channel; Slack allows about one a second. */
  gapMs: number;
  /** Before the second try; it doubles from try to try. */
  retryMs: number;
  tries: number;
  /** The longest that one post may take. */
  postMs: number;
  /** How long a card taken is ours; longer than `inHand` quick posts in one channel take. */
  leaseMs: number;
  inHand: number;
};

export const PACE: Pace = { gapMs: 1000, retryMs: 2000, tries: 6, postMs: 10_000, leaseMs: 60_000, inHand: 40 };
