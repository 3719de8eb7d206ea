/** Where an answer goes. `ephemeral` is seen by one person only, and `response` too, but for one `inChannel`. */
export type AnswerTo =
  | { to: 'post'; channel: string; threadTs?: string | undefined }
  | { to: 'ephemeral'; channel: string; user: string; threadTs?: string | undefined }
  | { to: 'response'; url: string; inChannel?: boolean | undefined };

/**
 * Where anything goes. `home` is the Home tab of a maker, whose direct message is `channel`; `card` is a message of ours,
 * made anew; `again` is the message that another row of the outbox became, which may not be posted yet. Where it is gone it
 * is posted as a new one, unless it matters only `ifThere`. What waits for these is replaced by what comes after.
 */
export type Address =
  | AnswerTo
  | { to: 'home'; user: string; channel: string }
  | (MadeAnew & { to: 'card'; ts: string })
  | (MadeAnew & { to: 'again'; row: string });

type MadeAnew = { channel: string; threadTs?: string | undefined; ifThere?: true | undefined };

/** A card made ready: plain text that says all, and Block Kit that says the same. */
export type Body = { text: string; blocks: readonly unknown[] };

export type OutboxRow = {
  workspaceId: string;
  slackTeamId: string;
  id: string;
  address: Address;
  body: Body;
  attempts: number;
  expires: number;
};
