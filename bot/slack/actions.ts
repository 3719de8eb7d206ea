import type { BlockAction, BlockElementAction, ViewOutput } from '@slack/bolt';
import { z } from 'zod';
import { Request } from '../request.js';
import type { Turn } from '../turn.js';
import type { Door, SlackApp } from './door.js';
import { postPlace } from './place.js';

/** A button of a card, and what is of forms: those have a listener of their own. */
const BUTTON = /^(?:pick\.|form\.open\.)/;
const NO_FORM = /^(?!form\.)/;

const Picked = z.object({ turn: z.string(), index: z.number().int() });
type Picked = z.infer<typeof Picked>;

/** Names no offer, so that the desk tells the presser kindly that this button leads nowhere any more. */
const GONE: Picked = { turn: '', index: -1 };

function picked(action: BlockElementAction): Picked {
  if (action.type !== 'button' || !BUTTON.test(action.action_id)) return GONE;
  try {
    return Picked.parse(JSON.parse(action.value ?? ''));
  } catch {
    return GONE;
  }
}

const Asked = z.object({ request: Request });

/** What a button of Home asks for: its whole request, since a page outlives the talk. */
function asked(action: BlockElementAction): Turn['input'] {
  if (action.type !== 'button') return { pick: GONE };
  try {
    return Asked.parse(JSON.parse(action.value ?? ''));
  } catch {
    return { pick: GONE };
  }
}

/** The place is that of the card pressed. Outside a direct message the presser alone sees the answer. */
function pressPlace(body: BlockAction, channel: string): Pick<Turn, 'place' | 'address' | 'pressed'> {
  const threadTs: string | undefined = body.container.thread_ts ?? body.message?.thread_ts;
  const isEphemeral: boolean = body.container.is_ephemeral ?? false;
  const isDirect = channel.startsWith('D');
  if (isDirect && !isEphemeral) {
    const ts: string | undefined = body.container.message_ts;
    return { ...postPlace(channel, threadTs), ...(ts !== undefined && { pressed: { to: 'card', channel, ts } }) };
  }
  return {
    place:
      isEphemeral && threadTs === undefined
        ? `command:${channel}`
        : postPlace(channel, threadTs ?? body.container.message_ts).place,
    address: { to: 'response', url: body.response_url },
  };
}

/** The turn of a pressed button, or undefined when it stands in no channel. */
export function pressTurn(body: BlockAction, slackTeamId: string, at: number): Turn | undefined {
  const action = body.actions[0];
  if (action !== undefined && body.view?.type === 'home') return homeTurn(body, action, body.view, slackTeamId, at);
  const channel: string | undefined = body.channel?.id ?? body.container.channel_id;
  if (action === undefined || channel === undefined) return undefined;
  return {
    key: `action:${action.action_id}:${action.action_ts}`,
    slackTeamId,
    ...pressPlace(body, channel),
    user: { slackUserId: body.user.id, name: body.user.username || body.user.name || body.user.id },
    at,
    input: { pick: picked(action) },
  };
}

/** A button of Home does what the same words would do in the maker's direct message. */
function homeTurn(
  { user }: BlockAction,
  action: BlockElementAction,
  view: ViewOutput,
  slackTeamId: string,
  at: number,
): Turn {
  const direct = view.private_metadata || user.id;
  return {
    key: `action:${action.action_id}:${action.action_ts}`,
    slackTeamId,
    ...postPlace(direct, undefined),
    user: { slackUserId: user.id, name: user.username || user.name || user.id },
    at,
    input: asked(action),
    onHome: true,
  };
}

/** A button of a card or a page, acknowledged once its turn is stored. */
export function hearActions(app: SlackApp, door: Door): void {
  app.action<BlockAction>({ type: 'block_actions', action_id: NO_FORM }, async ({ body, context, ack }) => {
    const turn = pressTurn(body, context.teamId, door.now());
    if (turn !== undefined) await door.taken(turn);
    await ack();
    door.wake();
  });
}
