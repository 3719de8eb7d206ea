import { webApi } from '@slack/bolt';
import type { Log } from '../surroundings.js';
import { boltLog } from './bolt-log.js';

const TIMEOUT_MS = 10_000;

/** Slack's Web API, each call tried once: bot/delivery tries again, and counts its tries in the store. */
export function slackClient(botToken: string, log: Log): webApi.WebClient {
  return new webApi.WebClient(botToken, {
    logger: boltLog(log),
    timeout: TIMEOUT_MS,
    retryConfig: { retries: 0 },
    rejectRateLimitedCalls: true,
  });
}
