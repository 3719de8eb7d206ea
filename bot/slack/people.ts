import type { webApi } from '@slack/bolt';
import { failure } from '../delivery/failure.js';
import { introduced } from '../introduced.js';
import type { Surroundings } from '../surroundings.js';

/** Told of everyone who speaks; it neither waits nor fails. */
export type Meet = (who: { slackTeamId: string; slackUserId: string; at: number }) => void;

export const peopleScope = 'users:read';

/** Asks Slack once about each person, while it runs. */
export function meeting({ users }: webApi.WebClient, surroundings: Surroundings): Meet {
  const met = new Set<string>();
  return (who) => {
    const key = `${who.slackTeamId} ${who.slackUserId}`;
    if (met.has(key)) return;
    met.add(key);
    users
      .info({ user: who.slackUserId })
      .then(({ user }) => {
        const name = user?.profile?.display_name || user?.profile?.real_name || '';
        return introduced(who, { name, timeZone: user?.tz ?? '' }, surroundings);
      })
      .catch((error: unknown) => surroundings.log.info({ why: failure(error).why }, 'person not looked up'));
  };
}

/** Where the app may not look people up. */
export const nobodyMet: Meet = () => {};
