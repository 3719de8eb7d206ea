import type { SlackApp } from './door.js';
import { isOurs } from './shortcuts.js';

const ANY = /^/;
const NO_FORM = /^(?!form\.)/;

/** What no card of ours leads to is acknowledged in silence: without a listener Slack would wait and show an error. */
export function hearStrays(app: SlackApp): void {
  // Two listeners that both acknowledge are an error to Bolt.
  app.shortcut(ANY, async ({ shortcut, ack }) => {
    if (!isOurs(shortcut.callback_id)) await ack();
  });
  app.options(ANY, ({ ack }) => ack());
  app.view({ type: 'view_submission', callback_id: NO_FORM }, ({ ack }) => ack());
  app.view({ type: 'view_closed', callback_id: ANY }, ({ ack }) => ack());
}
