/**
 * Where a card goes. `ephemeral` and `response` are seen by one person only. `home` is the Home tab of a maker, whose
 * direct message is `channel`; what waits for it is replaced by what comes after.
 */
export type Address =
  | { to: 'post'; channel: string; threadTs?: string | undefined }
  | { to: 'ephemeral'; channel: string; user: string; threadTs?: string | undefined }
  | { to: 'response'; url: string }
  | { to: 'home'; user: string; channel: string };

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
