import { type Logger, LogLevel } from '@slack/bolt';
import type { Log } from '../surroundings.js';

/** Bolt's warnings and errors through our log. Below that it logs bodies and tokens, which nobody may read. */
export function boltLog(log: Log): Logger {
  return {
    debug: () => {},
    info: () => {},
    warn: (...parts) => log.warn({ from: 'bolt' }, words(parts)),
    error: (...parts) => log.error({ from: 'bolt' }, words(parts)),
    getLevel: () => LogLevel.WARN,
    setLevel: () => {},
    setName: () => {},
  };
}

/** An object that is no error may be a payload. */
const words = (parts: readonly unknown[]): string =>
  parts.map((part) => (part instanceof Error || typeof part === 'string' ? String(part) : typeof part)).join(' ');
