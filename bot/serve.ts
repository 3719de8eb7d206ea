import process from 'node:process';
import { pino } from 'pino';
import type { Config, SlackSettings } from './config.js';
import { delivery } from './delivery/delivery.js';
import { reminders } from './delivery/reminders.js';
import { sender } from './delivery/sender.js';
import { newId } from './ids.js';
import { reminded } from './reminded.js';
import { startSlack } from './slack/app.js';
import { slackClient } from './slack/client.js';
import { openSqlite } from './store/sqlite.js';
import type { Log, Surroundings } from './surroundings.js';
import { taken } from './turn.js';

const HOUR_MS = 3_600_000;

/**
 * Runs the bot until it is told to stop: store, outbox and the Slack door, closed again in the other order.
 * Rejects when Slack cannot be reached or does not accept the token, or the port is taken.
 */
export async function serve(slack: SlackSettings, { storePath, logLevel }: Config): Promise<void> {
  const log = logTo(pino({ level: logLevel, base: null }));
  const store = await openSqlite(storePath);
  const surroundings: Surroundings = { store, newId, log, now: Date.now };
  const client = slackClient(slack.botToken, log);
  const outgoing = delivery(surroundings, sender(client));
  const door = await startSlack(slack, surroundings, { client, delivery: outgoing, taken }).catch(async (error) => {
    await store.close();
    throw error;
  });
  const reminding = reminders(surroundings, reminded, outgoing.wake);
  log.info({ port: door.port, store: storePath }, door.port === undefined ? 'connected by socket' : 'listening');
  const purging = setInterval(() => void purge(surroundings), HOUR_MS);

  const signal = await Promise.race([received('SIGINT'), received('SIGTERM')]);
  log.info({ signal }, 'stopping');
  clearInterval(purging);
  await door.stop();
  await reminding.stop();
  await outgoing.stop();
  await store.close();
}

const received = (signal: 'SIGINT' | 'SIGTERM'): Promise<string> =>
  new Promise((resolve) => process.once(signal, () => resolve(signal)));

async function purge({ store, log, now }: Surroundings): Promise<void> {
  await store.purge(now()).catch((error: unknown) => log.error({ error: String(error) }, 'purge failed'));
}

const logTo = (logger: ReturnType<typeof pino>): Log => ({
  info: (fields, message) => logger.info(fields, message),
  warn: (fields, message) => logger.warn(fields, message),
  error: (fields, message) => logger.error(fields, message),
});
