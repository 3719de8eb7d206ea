import type { KnownEventFromType } from '@slack/bolt';
import { isRecent } from '../edited.js';
import type { Turn } from '../turn.js';
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

type Edited = Extract<Message, { subtype: 'message_changed' }>;

/**
 * Words that a person changed soon after sending them; not a preview of a link that Slack adds, or a card of ours. Nobody
 * waits for an answer to what they changed later.
 */
function isEdited(event: Message, at: number): event is Edited {
  if (event.subtype !== 'message_changed') return false;
  const { message, previous_message: before } = event;
  return (
    isSaid(message) &&
    'edited' in message &&
    message.edited !== undefined &&
    message.text !== (before !== undefined && 'text' in before ? before.text : undefined) &&
    isRecent(message, at)
  );
}

/** What a person said, changed or deleted. */
function heardIn(event: Message, at: number): { said: Message; became: 'sent' | 'edited' | 'deleted' } {
  if (isEdited(event, at)) return { said: event.message, became: 'edited' };
  if (event.subtype === 'message_deleted' && event.previous_message)
    return { said: event.previous_message, became: 'deleted' };
  return { said: event, became: 'sent' };
}

/** A direct message, answered where it stands: in its thread, or on the main line; again once it is edited. */
export function hearMessages(app: SlackApp, door: Door): void {
  app.event(messageEvent.type, async ({ event, body, context }) => {
    if (event.channel_type !== messageEvent.channelType) return;
    const at = door.now();
    const { said, became } = heardIn(event, at);
    if (!isSaid(said)) return;
    const turn: Turn = {
      key: `event:${body.event_id}`,
      slackTeamId: context.teamId,
      ...postPlace(event.channel, said.thread_ts),
      // Events carry no name; the store keeps the one that a command brought.
      user: { slackUserId: said.user, name: '' },
      at,
      message: { ts: said.ts, became },
      input:
        became === 'deleted'
          ? { request: { kind: 'deleted' } }
          : { text: plainText(said.text ?? '', context.botUserId) },
    };
    await door.agent.working(event.channel, said.thread_ts ?? said.ts, door.taken(turn));
    door.wake();
    door.met({ slackTeamId: turn.slackTeamId, slackUserId: said.user, at });
  });
}
