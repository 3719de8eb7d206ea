import type { Words } from '../../core/index.js';
import type { GaugeUsed, Offered, WorkShown } from '../reply.js';
import type { Lot, Maker } from '../store/ports.js';

/** The first few of a list, and how many there are in all. */
export type Few<T> = { few: readonly T[]; all: number };

/** What waits for the maker: in words, with a button where one word does it. */
export type NextUp = { say: Words; offer?: Offered | undefined };

/** The maker's own bench at a glance. */
export type BenchShown = {
  /** The one touched last first, each with its buttons. */
  works: Few<WorkShown & { offers: readonly Offered[] }>;
  next: readonly NextUp[];
  /** Surest first. */
  gauges: Few<GaugeUsed>;
  /** Yarn of which little is free. */
  low: Few<Lot>;
};

/** What of a maker Home shows as settings. */
export type Settings = Pick<Maker, 'units' | 'currency' | 'timeZone' | 'hours'>;
