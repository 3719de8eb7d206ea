import type { Door, SlackApp } from './door.js';

export const homeEvent = 'app_home_opened';

/** A maker opens the app: Home is made for them, and Messages is given prompts of their own. */
export function hearHome(app: SlackApp, door: Door): void {
  app.event(homeEvent, async ({ event, body, context }) => {
    const { user: slackUserId, channel, tab = 'home' } = event;
    const visit = { key: `event:${body.event_id}`, slackTeamId: context.teamId, slackUserId, channel, at: door.now() };
    if (tab === 'messages') return door.prompted(visit);
    await door.visited(visit);
    door.wake();
    door.met(visit);
  });
}
