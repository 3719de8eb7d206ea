import type { TimeLine } from '../../../core/index.js';
import { type BenchPartName, benchPart } from '../../bench-parts.js';
import type { TimeAsk } from '../../request.js';
import type { StoredTime } from '../../store/ports.js';
import type { BenchWork } from './bench-work.js';

type Lines = readonly TimeLine[];

/** Rows that were knitted, of all that a piece has. */
export type Rows = { rows: number; of: number };

/** Rows so far of work that is half knitted; undefined where all is, or nothing was counted. */
export const soFar = ({ rows, stopAt, isOpen }: BenchWork): Rows | undefined =>
  isOpen && rows > 0 && rows < stopAt ? { rows, of: stopAt } : undefined;

/** A piece of which so much is knitted: the stitches of those rows alone, and nothing taken off the machine. */
export function linesSoFar(lines: Lines, knitted: Rows | undefined): Lines {
  if (knitted === undefined) return lines;
  const share = knitted.rows / knitted.of;
  return lines.flatMap((line) => {
    if (line.driver === 'crank') return [{ ...line, count: line.count * share, medianS: line.medianS * share }];
    return line.driver === 'run_off' ? [] : [line];
  });
}

/** The lines that each time is for. What one time names by itself is in no wider part that another names. */
export function linesFor(times: readonly TimeAsk[], all: Lines): Lines[] {
  const named = times.map(({ parts }) => linesOf(parts, all));
  return times.map((time, i) => {
    const apart = times.flatMap((other, k) => (k === i || isWide(other) ? [] : (named[k] ?? [])));
    return (named[i] ?? []).filter((line) => !isWide(time) || !apart.includes(line));
  });
}

/** All of the work, or of a stage. */
const isWide = ({ parts }: TimeAsk): boolean =>
  parts.length === 0 || parts.some((name) => typeof benchPart(name).of === 'string');

/** What of a piece the parts name; all of it for none. */
const linesOf = (parts: readonly BenchPartName[], all: Lines): Lines =>
  parts.length === 0 ? all : all.filter((line) => parts.some((name) => isOf(name, line, all)));

function isOf(name: BenchPartName, { driver, stage }: TimeLine, all: Lines): boolean {
  const { of } = benchPart(name);
  if (typeof of === 'string') return stage === of;
  const drivers = of.find((some) => all.some((line) => some.includes(line.driver)));
  return drivers?.includes(driver) === true;
}

/** As good as nothing is left where a count differs by this share alone. */
const ALMOST_NONE = 1e-6;

/** The lines less what was logged of them before. */
export const linesLeft = (lines: Lines, logged: readonly StoredTime[]): Lines =>
  lines.flatMap((line) => {
    const before = logged.reduce((all, { driver, count }) => all + (driver === line.driver ? count : 0), 0);
    const count = line.count - before;
    return count > ALMOST_NONE * line.count ? [{ ...line, count, medianS: (line.medianS * count) / line.count }] : [];
  });
