import type { KnownEventFromType } from '@slack/bolt';
import type { Door, SlackApp } from './door.js';
import { postPlace } from './place.js';
import { plainText } from './plain-text.js';

export const messageEvent = { type: 'message', channelType: 'im' } as const;

type Message = KnownEventFromType<'message'>;
type Said = Extract<Message, { subtype: undefined | 'thread_broadcast' | 'file_share' }>;

/** Words of a person: not an edit, a deletion, a notice of Slack's, or a bot. */
const isSaid = (event: Message): event is Said =>
  (event.subtype === undefined || event.subtype === 'thread_broadcast' || event.subtype === 'file_share') &&
  !('bot_id' in event && event.bot_id);

/** A direct message, answered where it stands: in its thread, or on the main line. */
export function hearMessages(app: SlackApp, door: Door): void {
  app.event(messageEvent.type, async ({ event, body, context }) => {
    if (event.channel_type !== messageEvent.channelType || !isSaid(event)) return;
    const turn = {
      key: `event:${body.event_id}`,
      slackTeamId: context.teamId,
      ...postPlace(event.channel, event.thread_ts),
      // Events carry no name; the store keeps the one that a command brought.
      user: { slackUserId: event.user, name: '' },
      at: door.now(),
      input: { text: plainText(event.text ?? '', context.botUserId) },
    };
    await door.agent.working(event.channel, event.thread_ts ?? event.ts, door.taken(turn));
    door.wake();
    door.met({ slackTeamId: turn.slackTeamId, slackUserId: event.user, at: turn.at });
  });
}
