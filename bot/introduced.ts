import type { Surroundings } from './surroundings.js';

/** What Slack says of a person. */
type SlackProfile = { name: string; timeZone: string };

type Met = { slackTeamId: string; slackUserId: string; at: number };

/** Takes over the name and the time zone that Slack knows, once, and only where the maker has said neither. */
export const introduced = (
  { slackTeamId, slackUserId, at }: Met,
  { name, timeZone }: SlackProfile,
  { store }: Pick<Surroundings, 'store'>,
): Promise<void> =>
  store.within(slackTeamId, async (bound) => {
    const maker = await bound.makers.held(slackUserId, '', at);
    if (!(await bound.introductions.first(maker.id, at))) return;
    if (maker.name === '') await bound.makers.held(slackUserId, name, at);
    if (maker.timeZone === 'UTC' && isZone(timeZone)) await bound.makers.setTimeZone(maker.id, timeZone);
  });

function isZone(timeZone: string): boolean {
  try {
    return timeZone !== '' && new Intl.DateTimeFormat('en', { timeZone }).resolvedOptions().timeZone !== '';
  } catch {
    return false;
  }
}
