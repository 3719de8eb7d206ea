/** What sharing cannot do. */
export type ShareProblem =
  | { code: 'no_such_maker'; said: string }
  | { code: 'several_makers'; said: string }
  | { code: 'with_oneself' }
  | { code: 'with_the_bot' }
  | { code: 'not_in_a_channel' }
  /** Nothing was shared with the maker. */
  | { code: 'nothing_shown' }
  /** Nothing the maker shared fits the words. */
  | { code: 'nothing_shared'; said: string }
  | { code: 'share_withdrawn'; owner: string }
  | { code: 'nothing_changed' }
  /** `said`: the maker who was to be told. */
  | { code: 'no_result'; said?: string | undefined };
