import type { OutboxRow } from '../store/ports.js';
import type { Surroundings } from '../surroundings.js';
import { lanes } from './lanes.js';
import { PACE } from './pace.js';
import { posting } from './posting.js';
import type { Sender } from './sender.js';

export type Delivery = {
  /** Says that the outbox may hold something. */
  wake(): void;
  /** Resolves once no card is in hand and none is due. */
  idle(): Promise<void>;
  /** Finishes the posts begun and gives the others back to the outbox. */
  stop(): Promise<void>;
};

const ALARM_MS = { min: 10, max: 60_000 };

/** Sends what stands in the outbox, in order and one a second in each channel, until it is stopped. */
export function delivery(
  surroundings: Pick<Surroundings, 'store' | 'log' | 'now'>,
  send: Sender,
  pace = PACE,
): Delivery {
  const { store, log, now } = surroundings;
  const { outbox } = store;
  const post = posting(surroundings, send, pace);
  const channels = lanes(now);
  const inHand = new Set<Promise<void>>();
  let round: Promise<void> | undefined;
  let alarm: NodeJS.Timeout | undefined;
  let isRung = false;
  let isStopped = false;

  function wake(): void {
    if (isStopped) return;
    isRung = true;
    round ??= rounds();
  }

  /** Ends in the same tick in which it finds that nobody rang, so that no ring is lost. */
  async function rounds(): Promise<void> {
    while (isRung && !isStopped) {
      isRung = false;
      clearTimeout(alarm);
      await takeDue().catch((error: unknown) => {
        log.error({ error: String(error) }, 'outbox not read');
        alarm = setTimeout(wake, pace.retryMs);
      });
    }
    round = undefined;
  }

  async function takeDue(): Promise<void> {
    const room = pace.inHand - inHand.size;
    // A card that leaves the hand rings again.
    if (room === 0) return;
    const rows = await outbox.take(now(), pace.leaseMs, room);
    for (const row of rows) hold(row);
    if (rows.length > 0) return wake();
    const dueAt = await outbox.nextAt();
    if (dueAt === undefined) return;
    alarm = setTimeout(wake, Math.min(Math.max(dueAt - now(), ALARM_MS.min), ALARM_MS.max));
  }

  function hold(row: OutboxRow): void {
    const leasedUntil = now() + pace.leaseMs;
    const job = channels.queued(laneOf(row), (lane) =>
      (isStopped ? outbox.later(row, now()) : post(row, lane, leasedUntil)).catch((error: unknown) =>
        log.error({ card: row.id, error: String(error) }, 'outbox not written'),
      ),
    );
    inHand.add(job);
    job.then(() => {
      inHand.delete(job);
      wake();
    });
  }

  async function idle(): Promise<void> {
    while (round !== undefined || inHand.size > 0) await Promise.all([round, ...inHand]);
  }

  return {
    wake,
    idle,
    async stop() {
      isStopped = true;
      await idle();
      clearTimeout(alarm);
    },
  };
}

function laneOf({ slackTeamId, address }: OutboxRow): string {
  if (address.to === 'response') return address.url;
  return `${slackTeamId} ${address.to === 'home' ? `home of ${address.user}` : address.channel}`;
}
