import { expect, test } from 'vitest';
import { pressTurn } from '../../../bot/slack/actions.js';
import { press } from '../../journeys/payloads.js';

const THREAD = '1762500000.000300';

const turnOf = (options: Parameters<typeof press>[0]) => pressTurn(press(options), 'T1', 5);

test('a press carries the offer, the presser and a key of its own', () => {
  const pressed = press({ value: '{"turn":"turn-7","index":2}' });
  expect(pressTurn(pressed, 'T1', 5)).toMatchObject({
    key: `action:pick.0:${pressed.actions[0]?.action_ts}`,
    slackTeamId: 'T1',
    user: { slackUserId: 'U0NADIA', name: 'nadia' },
    at: 5,
    input: { pick: { turn: 'turn-7', index: 2 } },
  });
});

const response = { to: 'response', url: 'https://hooks.slack.com/commands/T0SHED/1/answer' };

test.each([
  ['in a thread', { threadTs: THREAD }, `thread:C0BENCH:${THREAD}`, response],
  ['on a card in the channel', {}, 'thread:C0BENCH:1762600000.000100', response],
  ['on the answer to a command', { isEphemeral: true }, 'command:C0BENCH', response],
  ['on the answer to a command in a direct message', { channel: 'D1', isEphemeral: true }, 'command:D1', response],
  ['in a direct message', { channel: 'D1' }, 'dm:D1', { to: 'post', channel: 'D1' }],
  [
    'in a thread of a direct message',
    { channel: 'D1', threadTs: THREAD },
    `thread:D1:${THREAD}`,
    { to: 'post', channel: 'D1', threadTs: THREAD },
  ],
])('a press %s belongs to the talk that the card stands in', (_, options, place, address) => {
  expect(turnOf(options)).toMatchObject({ place, address });
});

test('a press outside every channel is no turn', () => {
  const { channel: _, ...pressed } = press();
  expect(pressTurn({ ...pressed, container: { type: 'view' } }, 'T1', 5)).toBeUndefined();
});
