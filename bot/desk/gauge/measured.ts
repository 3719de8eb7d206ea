import { type Count, length, type Measurement, say, type Words } from '../../../core/index.js';
import type { GaugeAsk, Tension, Value } from '../../request.js';
import { readAs, typedSize } from '../typed.js';

/** A checked length in mm; a range counts as its middle. */
export function mmOfValue(value: Value): number {
  if (value.is === 'length') return value.mm;
  if (value.is === 'window') return (value.loMm + value.hiMm) / 2;
  throw new Error(`${value.is} is no length`);
}

/**
 * What was said of a piece as measurements, one a state it was read in, the last of them last: a flat tube of N needles
 * is N/2 stitches over its flat width.
 */
export function measurementsOf(ask: GaugeAsk, needles: number | undefined, swatch: string): Measurement[] {
  const counted = (tension: Tension | undefined): Count | undefined =>
    tension?.over && { count: tension.count, overMm: mmOfValue(tension.over), how: tension.how };
  const flat: Count | undefined =
    ask.flatWidth && needles ? { count: needles / 2, overMm: mmOfValue(ask.flatWidth), how: 'read' } : undefined;
  const form = ask.form ?? 'tube';
  const earlier = ask.earlier ?? [];
  const stitches = counted(ask.stitches) ?? flat;
  return [
    ...earlier.map(({ rows, state }) => ({ swatch, state, form, rows: counted(rows), stitches: undefined })),
    { swatch, state: stateOf(ask), form, rows: counted(ask.rows), stitches },
  ];
}

const stateOf = ({ state }: GaugeAsk): Measurement['state'] => state ?? 'rested';

/** Every length of a record, in the order said. */
export const lengthsOf = ({ earlier = [], rows, stitches, flatWidth, unravelled }: GaugeAsk): Value[] =>
  [...earlier.map((reading) => reading.rows.over), rows?.over, stitches?.over, flatWidth, unravelled?.over].filter(
    (value) => value !== undefined,
  );

/** The record as a maker says it: what was typed where it was typed. */
export function recordSaid(ask: GaugeAsk): string {
  const before = (ask.earlier ?? []).map(({ rows, state }) => `${tensionSaid(rows, 'rows')} ${state}, then `);
  const parts = [
    ask.rows && tensionSaid(ask.rows, 'rows'),
    ask.stitches && tensionSaid(ask.stitches, 'stitches'),
    ask.on.needles && `${ask.on.needles} needles`,
    ask.flatWidth && `${typedSize(ask.flatWidth)} flat`,
    ask.mass?.said,
    ask.unravelled && `${ask.unravelled.stitches} stitches unravelled to ${typedSize(ask.unravelled.over)}`,
    stateOf(ask),
    ask.day?.said,
  ];
  return `${before.join('')}${parts.filter(Boolean).join(', ')}`;
}

const tensionSaid = (tension: Tension, noun: string): string =>
  tension.over === undefined || tension.over.assumed === 'rate'
    ? (tension.said ?? '')
    : `${tension.count} ${noun} in ${typedSize(tension.over)}`;

/** What was taken for granted of a record. */
export function recordAssumed(ask: GaugeAsk, sameBench: boolean): Words[] {
  const lengths = lengthsOf(ask);
  const rate = lengths.find((value) => value.assumed === 'rate');
  return [
    ...(rate === undefined ? [] : [say`a rate counts as read over ${length(mmOfValue(rate))}`]),
    ...(sameBench ? [say`same machine and yarn as last time`] : []),
    ...(ask.state === undefined ? [say`measured at rest`] : []),
    ...readAs(lengths),
  ];
}
