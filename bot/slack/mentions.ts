import type { Door, SlackApp } from './door.js';
import { postPlace } from './place.js';
import { plainText } from './plain-text.js';

export const mentionEvent = 'app_mention';

/**
 * A mention in a channel, answered in its thread; again where Slack tells it again once it is edited. Other bots are never
 * answered.
 */
export function hearMentions(app: SlackApp, door: Door): void {
  app.event(mentionEvent, async ({ event, body, context }) => {
    if (event.bot_id !== undefined || event.user === undefined) return;
    const turn = {
      key: `event:${body.event_id}`,
      slackTeamId: context.teamId,
      ...postPlace(event.channel, event.thread_ts ?? event.ts),
      // Events carry no name; the store keeps the one that a command brought.
      user: { slackUserId: event.user, name: '' },
      at: door.now(),
      message: { ts: event.ts, became: event.edited === undefined ? 'sent' : 'edited' } as const,
      input: { text: plainText(event.text, context.botUserId) },
    };
    await door.taken(turn);
    door.wake();
    door.met({ slackTeamId: turn.slackTeamId, slackUserId: event.user, at: turn.at });
  });
}
