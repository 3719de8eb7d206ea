import { setTimeout as wait } from 'node:timers/promises';

const RETRIES = 3;
const FIRST_WAIT_MS = 20;

/** PostgreSQL's deadlock and serialisation failure; SQLite's codes are told by how they begin. */
const BUSY = /^(SQLITE_BUSY|SQLITE_LOCKED|40P01$|40001$)/;

function isBusy(error: unknown): boolean {
  return error instanceof Error && 'code' in error && BUSY.test(String(error.code));
}

/** Runs `work`, and again up to three times while the database is busy; `work` must leave nothing behind when it throws. */
export async function retried<T>(work: () => T | Promise<T>): Promise<T> {
  for (let retry = 0; ; retry += 1) {
    try {
      return await work();
    } catch (error) {
      if (retry === RETRIES || !isBusy(error)) throw error;
      await wait(FIRST_WAIT_MS * 2 ** retry);
    }
  }
}
