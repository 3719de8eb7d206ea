import { v7 } from 'uuid';
import { delivery } from '../../bot/delivery/delivery.js';
import { sender } from '../../bot/delivery/sender.js';
import { type SlackParts, startSlack } from '../../bot/slack/app.js';
import { slackClient } from '../../bot/slack/client.js';
import type { Store } from '../../bot/store/ports.js';
import { openSqlite } from '../../bot/store/sqlite.js';
import type { Log, Surroundings } from '../../bot/surroundings.js';
import { echoed } from './echoed.js';
import { SECRET, type Signing, signedRequest } from './signing.js';
import { type SlackApi, slackApi } from './slack-api.js';

export type Answer = { status: number; text: string };

export type Journey = {
  api: SlackApi;
  store: Store;
  /** What was logged as a warning or worse, as one text. */
  logged(): string;
  /** Posts a payload as Slack would, and resolves with the acknowledgement. */
  send(body: Record<string, unknown>, signing?: Signing): Promise<Answer>;
  /** Resolves once everything due has been posted. */
  settled(): Promise<void>;
  /** Shuts the door and fails when Slack was called otherwise than expected. */
  close(): Promise<void>;
};

const PACE = { gapMs: 0, retryMs: 5, tries: 3, postMs: 10_000, leaseMs: 60_000, inHand: 40 };

/** The bot as it runs, behind a real HTTP receiver on a free port of the loopback, with a store in memory. */
export async function journey(
  taken: SlackParts['taken'] = echoed,
  onWake = () => {},
  scopes: readonly string[] = [],
): Promise<Journey> {
  const api = slackApi(scopes);
  const store = await openSqlite(':memory:');
  const lines: string[] = [];
  const note = (fields: object, message: string) => void lines.push(`${message} ${JSON.stringify(fields)}`);
  const log: Log = { info: () => {}, warn: note, error: note };
  const surroundings: Surroundings = { store, newId: v7, log, now: Date.now };
  const client = slackClient('xoxb-test', log);
  const out = delivery(surroundings, sender(client), PACE);
  const wake = () => {
    onWake();
    out.wake();
  };
  const settings = { botToken: 'xoxb-test', signingSecret: SECRET, port: 0 };
  const slack = await startSlack(settings, surroundings, { client, delivery: { wake }, taken });
  return {
    api,
    store,
    logged: () => lines.join('\n'),
    async send(body, signing) {
      const response = await fetch(`http://127.0.0.1:${slack.port}/slack/events`, signedRequest(body, signing));
      return { status: response.status, text: await response.text() };
    },
    async settled() {
      await new Promise((resolve) => setImmediate(resolve));
      await out.idle();
    },
    async close() {
      await slack.stop();
      await out.stop();
      await store.close();
      api.close();
    },
  };
}
