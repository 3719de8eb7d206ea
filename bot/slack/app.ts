import { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { App, HTTPReceiver, type Receiver, SocketModeReceiver, type webApi } from '@slack/bolt';
import type { SlackSettings } from '../config.js';
import type { Delivery } from '../delivery/delivery.js';
import { visited } from '../home.js';
import { promptsFor } from '../prompts.js';
import type { Surroundings } from '../surroundings.js';
import type { Answered, Turn } from '../turn.js';
import { hearActions } from './actions.js';
import { agent, agentScope, noAgent } from './agent.js';
import { boltLog } from './bolt-log.js';
import { hearCommands } from './commands.js';
import type { Door, SlackApp } from './door.js';
import { hearForms } from './forms.js';
import { hearHome } from './home.js';
import { keptAck } from './kept-ack.js';
import { hearMentions } from './mentions.js';
import { hearMessages } from './messages.js';
import { meeting, nobodyMet, peopleScope } from './people.js';
import { hearShortcuts } from './shortcuts.js';
import { hearStrays } from './strays.js';

export type SlackParts = {
  client: webApi.WebClient;
  delivery: Pick<Delivery, 'wake'>;
  taken(turn: Turn, surroundings: Surroundings): Promise<Answered | undefined>;
};

/** `port` is undefined in Socket Mode. */
type RunningSlack = { port: number | undefined; stop(): Promise<void> };

/**
 * Opens the Slack door: Socket Mode with an app token, else HTTP on `settings.port` at /slack/events. It first asks
 * Slack who the bot is, and rejects when the token is not accepted or the port is taken.
 */
export async function startSlack(
  settings: SlackSettings,
  surroundings: Surroundings,
  { client, delivery, taken }: SlackParts,
): Promise<RunningSlack> {
  const bot = await client.auth.test();
  const { scopes = [] } = bot.response_metadata ?? {};
  const shownAs = scopes.includes(agentScope) ? agent(client, surroundings.log) : noAgent;
  const receiver = receiverFor(settings, surroundings);
  const app: SlackApp = new App({
    receiver,
    logger: boltLog(surroundings.log),
    convoStore: false,
    authorize: async ({ teamId }) => ({
      botToken: settings.botToken,
      botId: bot.bot_id,
      botUserId: bot.user_id,
      teamId: teamId ?? bot.team_id,
    }),
  });
  listen(app, {
    taken: (turn) => taken(turn, surroundings),
    visited: (visit) => visited(visit, surroundings),
    prompted: (visit) => {
      promptsFor(visit, surroundings)
        .then((prompts) => shownAs.prompt(visit.channel, prompts))
        .catch((error: unknown) => surroundings.log.error({ error: String(error) }, 'prompts not made'));
    },
    met: scopes.includes(peopleScope) ? meeting(client, surroundings) : nobodyMet,
    agent: shownAs,
    wake: () => setImmediate(delivery.wake),
    now: surroundings.now,
    views: client.views,
    store: surroundings.store,
    log: surroundings.log,
  });
  const started = await receiver.start(settings.port);
  // What a crash left unsent goes out now.
  delivery.wake();
  return {
    port: started instanceof Server ? (started.address() as AddressInfo).port : undefined,
    stop: async () => {
      await receiver.stop();
    },
  };
}

function receiverFor({ appToken, signingSecret, port }: SlackSettings, { log }: Surroundings): Receiver {
  const logger = boltLog(log);
  if (appToken !== undefined) return keptAck(new SocketModeReceiver({ appToken, logger }));
  if (signingSecret === undefined) throw new Error('neither an app token nor a signing secret is set');
  // The answer waits for the listeners, so that one that throws makes it a 500 and Slack delivers again.
  return new HTTPReceiver({ signingSecret, port, logger, processBeforeResponse: true });
}

function listen(app: SlackApp, door: Door): void {
  hearCommands(app, door);
  hearMentions(app, door);
  hearMessages(app, door);
  hearActions(app, door);
  hearForms(app, door);
  hearShortcuts(app, door);
  hearHome(app, door);
  hearStrays(app);
}
