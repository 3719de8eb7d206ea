export const TEAM = 'T0SHED';
export const BOT = { userId: 'U0BOT', botId: 'B0BOT' };
export const MAKER = 'U0NADIA';
export const CHANNEL = 'C0BENCH';
export const DIRECT = 'D0NADIA';
export const RESPONSE_URL = 'https://hooks.slack.com/commands/T0SHED/1/answer';

let made = 0;
const stamp = () => `1762700000.${String(++made).padStart(6, '0')}`;

export type Envelope = Record<string, unknown> & { event_id: string; event: Record<string, unknown> };

/** An event as the Events API wraps it. */
export function envelope(event: Record<string, unknown>): Envelope {
  const ts = stamp();
  return {
    type: 'event_callback',
    team_id: TEAM,
    api_app_id: 'A0APP',
    event_id: `Ev${ts.replace('.', '')}`,
    event_time: 1762700000,
    authorizations: [{ enterprise_id: null, team_id: TEAM, user_id: BOT.userId, is_bot: true }],
    event: { user: MAKER, ts, event_ts: ts, team: TEAM, ...event },
  };
}

export const mention = (words: string, extra: Record<string, unknown> = {}): Envelope =>
  envelope({ type: 'app_mention', channel: CHANNEL, text: `<@${BOT.userId}> ${words}`, ...extra });

export const directMessage = (text: string, extra: Record<string, unknown> = {}): Envelope =>
  envelope({ type: 'message', channel: DIRECT, channel_type: 'im', text, ...extra });

/** The form fields of a slash command. */
export const command = (name: string, text: string): Record<string, string> => ({
  command: name,
  text,
  team_id: TEAM,
  team_domain: 'shed',
  channel_id: CHANNEL,
  channel_name: 'bench',
  user_id: MAKER,
  user_name: 'nadia',
  api_app_id: 'A0APP',
  response_url: RESPONSE_URL,
  trigger_id: `trigger ${stamp()}`,
});

type PressOptions = {
  actionId?: string;
  value?: string;
  channel?: string;
  threadTs?: string;
  isEphemeral?: boolean;
};

/** The payload of a pressed button: by default the first offer of a card in a channel. */
export function press({
  actionId = 'pick.0',
  value = JSON.stringify({ turn: 'turn-1', index: 0 }),
  channel = CHANNEL,
  threadTs,
  isEphemeral = false,
}: PressOptions = {}) {
  const thread = threadTs === undefined ? {} : { thread_ts: threadTs };
  return {
    type: 'block_actions' as const,
    user: { id: MAKER, username: 'nadia', name: 'nadia', team_id: TEAM },
    team: { id: TEAM, domain: 'shed' },
    token: 'unused',
    api_app_id: 'A0APP',
    trigger_id: 'trigger',
    channel: { id: channel, name: 'bench' },
    container: { type: 'message', message_ts: '1762600000.000100', channel_id: channel, is_ephemeral: isEphemeral },
    ...(isEphemeral ? {} : { message: { type: 'message' as const, ts: '1762600000.000100', ...thread } }),
    response_url: RESPONSE_URL,
    actions: [
      {
        type: 'button' as const,
        action_id: actionId,
        block_id: 'offers',
        action_ts: stamp(),
        text: { type: 'plain_text' as const, text: 'Show Steps' },
        value,
      },
    ],
  };
}
