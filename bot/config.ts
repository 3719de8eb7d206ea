import { z } from 'zod';

const present = z.string().trim().min(1);

const Environment = z.object({
  SLACK_BOT_TOKEN: present.startsWith('xoxb-', 'must begin with xoxb-').optional(),
  SLACK_APP_TOKEN: present.startsWith('xapp-', 'must begin with xapp-').optional(),
  SLACK_SIGNING_SECRET: present.optional(),
  PORT: z.coerce.number().int().min(0).max(65_535).default(3000),
  WALEWRIGHT_STORE: present.default('data/walewright.sqlite'),
  LOG_LEVEL: z.enum(['debug', 'info', 'warn', 'error', 'silent']).default('info'),
});

/** How the bot reaches Slack: a socket it opens itself, or requests that Slack sends it. */
export type SlackSettings = {
  botToken: string;
  appToken?: string | undefined;
  signingSecret?: string | undefined;
  port: number;
};

export type Config = { storePath: string; logLevel: string; slack: SlackSettings | undefined };

/**
 * Checks the environment once, at the start.
 * @returns every fault at once, each naming its setting, or the settings; `slack` is undefined without a bot token
 */
export function configFrom(environment: Record<string, string | undefined>): { config: Config } | { faults: string[] } {
  const given = Object.fromEntries(
    Object.entries(environment).filter(([, value]) => value !== undefined && value !== ''),
  );
  const parsed = Environment.safeParse(given);
  if (!parsed.success) {
    return { faults: parsed.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`) };
  }
  const { SLACK_BOT_TOKEN, SLACK_APP_TOKEN, SLACK_SIGNING_SECRET, PORT, WALEWRIGHT_STORE, LOG_LEVEL } = parsed.data;
  const faults = [
    ...(SLACK_BOT_TOKEN !== undefined && SLACK_APP_TOKEN === undefined && SLACK_SIGNING_SECRET === undefined
      ? ['SLACK_APP_TOKEN (Socket Mode) or SLACK_SIGNING_SECRET (HTTP): one of them must stand beside SLACK_BOT_TOKEN']
      : []),
    ...(SLACK_BOT_TOKEN === undefined && (SLACK_APP_TOKEN ?? SLACK_SIGNING_SECRET) !== undefined
      ? ['SLACK_BOT_TOKEN: missing; it stands under OAuth & Permissions in the app settings']
      : []),
  ];
  if (faults.length > 0) return { faults };
  const slack =
    SLACK_BOT_TOKEN === undefined
      ? undefined
      : { botToken: SLACK_BOT_TOKEN, appToken: SLACK_APP_TOKEN, signingSecret: SLACK_SIGNING_SECRET, port: PORT };
  return { config: { storePath: WALEWRIGHT_STORE, logLevel: LOG_LEVEL, slack } };
}
