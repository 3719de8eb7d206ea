import type { SlashCommand } from '@slack/bolt';
import { shortRequest } from '../language/readers/short.js';
import type { FormId } from '../request.js';
import type { AnswerTo } from '../store/ports.js';
import type { Turn } from '../turn.js';
import type { Door, SlackApp } from './door.js';
import { openForm } from './forms.js';
import { plainText } from './plain-text.js';

export const commandNames = ['/rows', '/gauge', '/walewright'] as const;

const APOLOGY = 'That went wrong on my side; nothing was stored. Please say it again in a minute.';

const whisper = (text: string) => ({ response_type: 'ephemeral' as const, text });

const responseTo = ({ response_url }: SlashCommand): AnswerTo => ({ to: 'response', url: response_url });

/** The form that the words of a command ask for; without a name that of the command. */
function formIn({ input, command }: Turn): { form?: FormId | undefined } | undefined {
  const asked = 'text' in input ? shortRequest(input.text) : undefined;
  if (asked?.kind !== 'form') return undefined;
  return { form: asked.form ?? (command === '/gauge' ? 'gauge' : command === '/rows' ? 'plan' : undefined) };
}

/** The turn of a slash command, or undefined for a command that is not ours. */
function commandTurn(said: SlashCommand, slackTeamId: string, at: number, botUserId?: string): Turn | undefined {
  const command = commandNames.find((name) => name === said.command);
  return (
    command && {
      key: `command:${said.trigger_id}`,
      slackTeamId,
      place: `command:${said.channel_id}`,
      user: { slackUserId: said.user_id, name: said.user_name || said.user_id },
      at,
      input: { text: plainText(said.text, botUserId) },
      command,
      address: responseTo(said),
    }
  );
}

/** Slack never sends a command twice, so that a store that is down must be told of in the acknowledgement. */
export function hearCommands(app: SlackApp, door: Door): void {
  app.command(/^/, async ({ command, context, ack }) => {
    const turn = commandTurn(command, context.teamId, door.now(), context.botUserId);
    if (turn === undefined) return ack(whisper(`I answer to ${commandNames.join(', ')}.`));
    try {
      const form = formIn(turn);
      if (
        form !== undefined &&
        (await openForm(door, command.trigger_id, { ...turn, address: responseTo(command) }, form))
      )
        return ack();
      await door.taken(turn);
    } catch (error) {
      door.log.error({ key: turn.key, error: String(error) }, 'command not stored');
      return ack(whisper(APOLOGY));
    }
    await ack();
    door.wake();
  });
}
