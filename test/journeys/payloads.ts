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
function envelope(event: Record<string, unknown>): Envelope {
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

/** The maker opens the app at one of its tabs. */
export const opened = (tab: 'home' | 'messages'): Envelope =>
  envelope({ type: 'app_home_opened', channel: DIRECT, tab });

/** The payload of a button pressed on a page that `views.publish` was sent. */
export const pressOnHome = (value: string, view: Record<string, unknown>) => ({
  ...press({ actionId: 'do.0', value }),
  channel: undefined,
  message: undefined,
  response_url: undefined,
  container: { type: 'view', view_id: 'V0HOME' },
  view: { id: 'V0HOME', team_id: TEAM, ...view },
});

/** A message shortcut used on a message, which `message` may make another. */
export const messageShortcut = (message: Record<string, unknown>) => ({
  type: 'message_action',
  callback_id: 'size_from_message',
  token: 'unused',
  action_ts: stamp(),
  trigger_id: `trigger ${stamp()}`,
  team: { id: TEAM, domain: 'shed' },
  user: { id: MAKER, name: 'nadia', team_id: TEAM },
  channel: { id: CHANNEL, name: 'bench' },
  message_ts: '1762600000.000100',
  message: { type: 'message', user: 'U0OWEN', ts: '1762600000.000100', ...message },
  response_url: RESPONSE_URL,
});

/** A shortcut of the whole workspace, in no channel. */
export const globalShortcut = (callbackId: string) => ({
  type: 'shortcut',
  callback_id: callbackId,
  token: 'unused',
  action_ts: stamp(),
  trigger_id: `trigger ${stamp()}`,
  team: { id: TEAM, domain: 'shed' },
  user: { id: MAKER, username: 'nadia', team_id: TEAM },
});

/** A view as Slack sends it back: its own fields, and what they hold. */
export type ShownView = Record<string, unknown> & {
  callback_id: string;
  private_metadata: string;
  blocks: readonly Record<string, never>[];
};

type Element = {
  type: string;
  action_id: string;
  initial_value?: string;
  initial_option?: { value: string };
  options?: readonly { value: string }[];
};

/** What a view holds once these fields were typed or chosen over those it was filled with. */
function stateOf({ blocks }: ShownView, typed: Record<string, string>) {
  const values: Record<string, unknown> = {};
  for (const { block_id: id, element } of blocks as unknown as { block_id: string; element: Element }[]) {
    const { type, action_id, initial_value = null, initial_option = null, options = [] } = element;
    const to = typed[id];
    const held =
      type === 'plain_text_input'
        ? { type, value: to ?? initial_value }
        : type === 'multi_users_select'
          ? { type, selected_users: (to ?? '').split(',').filter((id) => id !== '') }
          : {
              type,
              selected_option:
                to === undefined ? initial_option : (options.find(({ value }) => value === to) ?? { value: to }),
            };
    values[id] = { [action_id]: held };
  }
  return { values };
}

/** The submission of a view, with what was typed over what it was filled with. */
export const submission = (view: ShownView, typed: Record<string, string> = {}, id = 'V1') => ({
  type: 'view_submission',
  team: { id: TEAM, domain: 'shed' },
  user: { id: MAKER, username: 'nadia', name: 'nadia', team_id: TEAM },
  api_app_id: 'A0APP',
  token: 'unused',
  trigger_id: 'trigger',
  view: { ...view, id, hash: 'h1', team_id: TEAM, state: stateOf(view, typed) },
  response_urls: [],
});

/** A choice made in a view on which other fields depend. */
export const chosen = (view: ShownView, field: string, option: string, typed: Record<string, string> = {}) => ({
  ...submission(view, { ...typed, [field]: option }),
  type: 'block_actions',
  container: { type: 'view', view_id: 'V1' },
  actions: [
    {
      type: 'static_select',
      action_id: 'form.redraw',
      block_id: field,
      action_ts: stamp(),
      selected_option: { value: option },
    },
  ],
});
