import type { GlobalShortcut, MessageShortcut } from '@slack/bolt';
import type { Turn } from '../turn.js';
import type { Door, SlackApp } from './door.js';
import { openForm } from './forms.js';
import { plainText } from './plain-text.js';

export const shortcutNames = { size: 'size_from_message', gauge: 'record_gauge' } as const;

/** True for a shortcut that a listener here answers. */
export const isOurs = (callbackId: string): boolean => Object.values<string>(shortcutNames).includes(callbackId);

/**
 * A message of whomever, read for the size of a piece and answered to the asker alone. Its place is that of commands in
 * the channel, since that is where a button on such an answer is pressed.
 */
function sizeTurn(said: MessageShortcut, botUserId: string, slackTeamId: string, at: number): Turn {
  const { message, channel } = said;
  const isOfBot = message.bot_id !== undefined || message.subtype === 'bot_message';
  const text = message.subtype === 'tombstone' ? '' : plainText(message.text ?? '', botUserId);
  return {
    key: `shortcut:${said.trigger_id}`,
    slackTeamId,
    place: `command:${channel.id}`,
    user: { slackUserId: said.user.id, name: said.user.username ?? said.user.name },
    at,
    input: isOfBot ? { request: { kind: 'unread', why: 'of_bot', words: '' } } : { text },
    sizeOnly: true,
    address: { to: 'response', url: said.response_url },
  };
}

/** Where a gauge is told: in the direct message, in words where no form opened. */
const gaugeTurn = (said: GlobalShortcut, slackTeamId: string, at: number) => ({
  key: `shortcut:${said.trigger_id}`,
  slackTeamId,
  place: `dm:${said.user.id}`,
  user: { slackUserId: said.user.id, name: said.user.username },
  at,
  input: { request: { kind: 'tell_gauge' as const } },
  // Slack posts to the direct message of a user whose id stands for a channel.
  address: { to: 'post' as const, channel: said.user.id },
});

/** Slack sends no shortcut twice; one that the store refuses is not acknowledged, so that the asker sees it. */
export function hearShortcuts(app: SlackApp, door: Door): void {
  app.shortcut<MessageShortcut>(
    { type: 'message_action', callback_id: shortcutNames.size },
    async ({ shortcut, context, ack }) => {
      await door.taken(sizeTurn(shortcut, context.botUserId, context.teamId, door.now()));
      await ack();
      door.wake();
    },
  );
  app.shortcut<GlobalShortcut>(
    { type: 'shortcut', callback_id: shortcutNames.gauge },
    async ({ shortcut, context, ack }) => {
      const { address, ...turn } = gaugeTurn(shortcut, context.teamId, door.now());
      const isOpen = await openForm(door, shortcut.trigger_id, { ...turn, address }, { form: 'gauge' });
      if (!isOpen) await door.taken({ ...turn, address });
      await ack();
      door.wake();
    },
  );
}
