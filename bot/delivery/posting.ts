import type { OutboxRow } from '../store/ports.js';
import type { Surroundings } from '../surroundings.js';
import { failure } from './failure.js';
import type { Lane } from './lanes.js';
import type { Pace } from './pace.js';
import type { Sender } from './sender.js';

type Posting = (row: OutboxRow, lane: Lane, leasedUntil: number) => Promise<void>;

/** Posts a card when its lane is free, and tells the outbox what became of it. Rejects only when the store does. */
export function posting(
  { store: { outbox }, log, now }: Pick<Surroundings, 'store' | 'log' | 'now'>,
  send: Sender,
  pace: Pace,
): Posting {
  return async (row, lane, leasedUntil) => {
    if (lane.shutUntil > now()) return outbox.later(row, lane.shutUntil);
    await pause(lane.readyAt - now());
    // Its lease could run out during the post, and another sender post it too.
    if (now() + pace.postMs > leasedUntil) return;
    if (now() >= row.expires) return drop(row, 'expired');
    const isReplaced = ['home', 'card', 'again'].includes(row.address.to);
    const whole = isReplaced ? await outbox.sealed(row) : row;
    const sent = await send(whole).then(
      (slackTs) => ({ slackTs }),
      (error: unknown) => failure(error),
    );
    lane.readyAt = now() + pace.gapMs;
    if ('slackTs' in sent) return outbox.posted(row, now(), sent.slackTs);
    if (sent.kind === 'lasting') return drop(row, sent.why, sent.advice);
    if (sent.kind === 'passing' && row.attempts >= pace.tries) return drop(row, sent.why);
    const waitMs = sent.kind === 'limited' ? sent.retryAfterMs : pace.retryMs * 2 ** (row.attempts - 1);
    lane.shutUntil = now() + waitMs;
    log.info({ card: row.id, why: sent.why, attempts: row.attempts, waitMs }, 'card waits');
    return outbox.later(row, lane.shutUntil);
  };

  async function drop(row: OutboxRow, why: string, advice?: string): Promise<void> {
    log.warn({ card: row.id, team: row.slackTeamId, why, advice, attempts: row.attempts }, 'card not posted');
    await outbox.dropped(row, now(), why);
  }
}

const pause = (ms: number): Promise<void> | undefined =>
  ms > 0 ? new Promise((resolve) => setTimeout(resolve, ms)) : undefined;
