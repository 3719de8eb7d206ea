import { z } from 'zod';

/** Why a card was not posted, and what to do: wait as told, try again later, or give up with advice for the host. */
type Failure =
  | { kind: 'limited'; why: string; retryAfterMs: number }
  | { kind: 'passing'; why: string }
  | { kind: 'lasting'; why: string; advice?: string | undefined };

/** What the errors of Slack's client and of the response url have in common; each carries one of the three. */
const Thrown = z.object({
  retryAfter: z.number().optional(),
  statusCode: z.number().optional(),
  data: z.object({ error: z.string(), needed: z.string().optional() }).optional(),
});

const PASSING_CODES = new Set([
  'fatal_error',
  'internal_error',
  'ratelimited',
  'request_timeout',
  'service_unavailable',
]);

const ADVICE: Record<string, string> = {
  channel_not_found: 'invite the bot to the channel',
  not_in_channel: 'invite the bot to the channel',
  messages_tab_disabled: 'set features.app_home.messages_tab_enabled to true in the app manifest',
  not_enabled: 'set features.app_home.home_tab_enabled to true in the app manifest',
  account_inactive: 'install the app again and set SLACK_BOT_TOKEN',
  invalid_auth: 'set SLACK_BOT_TOKEN to the token of the installed app',
  token_revoked: 'install the app again and set SLACK_BOT_TOKEN',
};

const SECOND_MS = 1000;

/** What a call to Slack that threw comes to: whether it is worth trying again, and when. */
export function failure(error: unknown): Failure {
  const { retryAfter, statusCode, data } = Thrown.safeParse(error).data ?? {};
  if (retryAfter !== undefined) return { kind: 'limited', why: 'rate limit', retryAfterMs: retryAfter * SECOND_MS };
  if (data !== undefined) return platformFailure(data.error, data.needed);
  if (statusCode !== undefined) {
    const isPassing = statusCode >= 500 || statusCode === 408 || statusCode === 429;
    return { kind: isPassing ? 'passing' : 'lasting', why: `HTTP ${statusCode}` };
  }
  return { kind: 'passing', why: error instanceof Error ? error.name : 'unknown' };
}

function platformFailure(code: string, needed: string | undefined): Failure {
  // Slack's client takes a page that is no JSON for an error code.
  if (!/^[a-z_]+$/.test(code)) return { kind: 'passing', why: 'not an answer of Slack' };
  if (PASSING_CODES.has(code)) return { kind: 'passing', why: code };
  const advice =
    code === 'missing_scope'
      ? `add "${needed}" to oauth_config.scopes.bot in the app manifest and install the app again`
      : ADVICE[code];
  return { kind: 'lasting', why: code, advice };
}
