import { App, SocketModeReceiver } from '@slack/bolt';
import { expect, test, vi } from 'vitest';
import { boltLog } from '../../../bot/slack/bolt-log.js';
import { keptAck } from '../../../bot/slack/kept-ack.js';
import { silentLog } from '../../../bot/surroundings.js';
import { command, directMessage } from '../../journeys/payloads.js';

/** A Bolt app on a real Socket Mode receiver that never connects; `deliver` is what its socket would bring. */
function socketApp(heard: string[], listener: () => Promise<void>) {
  const log = boltLog({ ...silentLog, error: () => void heard.push('error logged') });
  const receiver = new SocketModeReceiver({ appToken: 'xapp-test', logger: log });
  const app = new App({
    receiver: keptAck(receiver),
    logger: boltLog(silentLog),
    authorize: async () => ({ botToken: 'xoxb-test', botId: 'B0BOT' }),
  });
  app.event('message', listener);
  app.command('/rows', async ({ ack }) => {
    await ack('on its way');
    await listener();
  });
  return (body: Record<string, unknown>) => {
    const ack = async (response: unknown) => void heard.push(`acknowledged ${response ?? ''}`);
    receiver.client.emit('slack_event', { ack, body, retry_num: 0 });
  };
}

test.each([
  ['an event', directMessage('hello'), 'acknowledged '],
  ['a command', command('/rows', 'hat'), 'acknowledged on its way'],
])('in Socket Mode the acknowledgement of %s goes out after the listener is done', async (_, body, acknowledged) => {
  const heard: string[] = [];
  const deliver = socketApp(heard, async () => {
    await new Promise((resolve) => setTimeout(resolve, 5));
    heard.push('committed');
  });
  deliver(body);
  await vi.waitFor(() => expect(heard).toEqual(['committed', acknowledged]));
});

test('in Socket Mode an event whose listener throws is not acknowledged', async () => {
  const heard: string[] = [];
  const deliver = socketApp(heard, async () => {
    heard.push('failed');
    throw new Error('disk full');
  });
  deliver(directMessage('hello'));
  await vi.waitFor(() => expect(heard).toEqual(['failed', 'error logged']));
});
