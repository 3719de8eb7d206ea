import type { Body, Bound, Reminder, TakenReminder } from '../store/ports.js';
import type { Surroundings } from '../surroundings.js';

export type Reminders = {
  /** Finishes what it has in hand. */
  stop(): Promise<void>;
};

type Asked = (
  reminder: Reminder,
  store: Bound,
  now: number,
) => Promise<{ became: 'said'; to: string; body: Body } | { became: 'put_off'; until: number } | { became: 'nothing' }>;

const LEASE_MS = 60_000;
const AT_ONCE = 20;
const ALARM_MS = { min: 1000, max: 60_000 };
const KEPT_MS = 24 * 3_600_000;

/**
 * Puts each reminder into the outbox at its time, asked again whether it is still so, and what a stop left over at once.
 * That it is sent and that it is in the outbox are stored together, so that it goes out once, whenever this is killed.
 */
export function reminders(
  { store, log, now, newId }: Surroundings,
  ask: Asked,
  wake: () => void,
  leaseMs = LEASE_MS,
): Reminders {
  let alarm: NodeJS.Timeout | undefined;
  let round: Promise<void> = Promise.resolve();
  let isStopped = false;

  function ring(): void {
    round = due()
      .catch((error: unknown) => log.error({ error: String(error) }, 'reminders not read'))
      .then(setAlarm);
  }

  async function setAlarm(): Promise<void> {
    if (isStopped) return;
    const next = await store.reminders.nextAt().catch(() => undefined);
    const waitMs = next === undefined ? ALARM_MS.max : Math.min(Math.max(next - now(), ALARM_MS.min), ALARM_MS.max);
    alarm = setTimeout(ring, isStopped ? 0 : waitMs);
    if (isStopped) clearTimeout(alarm);
  }

  async function due(): Promise<void> {
    for (const taken of await store.reminders.take(now(), leaseMs, AT_ONCE)) {
      await told(taken).catch((error: unknown) =>
        log.error({ reminder: taken.id, error: String(error) }, 'no reminder'),
      );
    }
  }

  async function told(taken: TakenReminder): Promise<void> {
    await store.within(taken.slackTeamId, async (bound) => {
      const at = now();
      const answer = await ask(taken, bound, at);
      if (answer.became === 'put_off') return bound.reminders.putOff(taken.id, answer.until);
      const isOurs = await bound.reminders.settle(taken.id, answer.became === 'said' ? 'sent' : 'dropped', at);
      if (isOurs && answer.became === 'said')
        await bound.outbox.add(newId(), { to: 'post', channel: answer.to }, answer.body, at, at + KEPT_MS);
    });
    wake();
  }

  ring();
  return {
    async stop() {
      isStopped = true;
      clearTimeout(alarm);
      await round;
      clearTimeout(alarm);
    },
  };
}
