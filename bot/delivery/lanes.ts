/** One channel, or one response url: what goes into it keeps its order. Times are epoch ms. */
export type Lane = {
  /** When the next post may go out. */
  readyAt: number;
  /** Until when nothing may be posted, after a failure; so that a later card does not overtake the one that failed. */
  shutUntil: number;
};

type Queue = { lane: Lane; waiting: number; tail: Promise<void> };

type Lanes = { queued(key: string, job: (lane: Lane) => Promise<void>): Promise<void> };

/** Runs the jobs of one lane one after another, and those of different lanes side by side. Jobs must not reject. */
export function lanes(now: () => number): Lanes {
  const queues = new Map<string, Queue>();

  function forgetIdle(): void {
    for (const [key, { lane, waiting }] of queues) {
      if (waiting === 0 && lane.readyAt <= now() && lane.shutUntil <= now()) queues.delete(key);
    }
  }

  return {
    queued(key, job) {
      forgetIdle();
      const queue = queues.get(key) ?? { lane: { readyAt: 0, shutUntil: 0 }, waiting: 0, tail: Promise.resolve() };
      queues.set(key, queue);
      queue.waiting += 1;
      queue.tail = queue.tail
        .then(() => job(queue.lane))
        .then(() => {
          queue.waiting -= 1;
        });
      return queue.tail;
    },
  };
}
