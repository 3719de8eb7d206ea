/** What sharing cannot do. */
export type ShareProblem =
  | { code: 'no_such_maker'; said: string }
  | { code: 'several_makers'; said: string }
  | { code: 'with_oneself' }
  | { code: 'with_the_bot' }
  | { code: 'not_in_a_channel' }
  /** No one in particular; `isChannel`: said where it can be posted. */
  | { code: 'with_everyone'; isChannel: boolean }
  /** Another kind of piece than the plan in hand is of; both by their labels. */
  | { code: 'another_piece'; named: string; inHand: string }
  /** A channel by name, from elsewhere. */
  | { code: 'in_another_channel' }
  /** The plan in hand came from nobody. */
  | { code: 'nobody_to_share_back' }
  /** Nothing was shared with the maker; `by` whom, where that was said. */
  | { code: 'nothing_shown'; by?: string | undefined }
  /** The plan in hand is no one else's, so that there is none to lay it beside. */
  | { code: 'nothing_beside' }
  /** Nothing the maker shared fits the words; '' for none named. */
  | { code: 'nothing_shared'; said: string }
  | { code: 'share_withdrawn'; owner: string }
  | { code: 'nothing_changed' }
  /** `said`: the maker who was to be told. */
  | { code: 'no_result'; said?: string | undefined };
