import { type Count, length, type Measurement, say, type Words } from '../../core/index.js';
import type { GaugeAsk, Tension, Value } from '../request.js';

/** A checked length in mm; a range counts as its middle. */
export function mmOfValue(value: Value): number {
  if (value.is === 'length') return value.mm;
  if (value.is === 'window') return (value.loMm + value.hiMm) / 2;
  throw new Error(`${value.is} is no length`);
}

/** What was said of a piece as a measurement: a flat tube of N needles is N/2 stitches over its flat width. */
export function measurementOf(ask: GaugeAsk, needles: number | undefined, swatch: string): Measurement {
  const counted = (tension: Tension | undefined): Count | undefined =>
    tension?.over && { count: tension.count, overMm: mmOfValue(tension.over), how: tension.how };
  const flat: Count | undefined =
    ask.flatWidth && needles ? { count: needles / 2, overMm: mmOfValue(ask.flatWidth), how: 'read' } : undefined;
  return {
    swatch,
    state: ask.state ?? 'rested',
    form: ask.form ?? 'tube',
    rows: counted(ask.rows),
    stitches: counted(ask.stitches) ?? flat,
  };
}

/** The record as a maker says it: what was typed where it was typed. */
export function recordSaid(ask: GaugeAsk, state: Measurement['state']): string {
  const parts = [
    ask.rows && tensionSaid(ask.rows, 'rows'),
    ask.stitches && tensionSaid(ask.stitches, 'stitches'),
    ask.on.needles && `${ask.on.needles} needles`,
    ask.flatWidth && `${withUnit(ask.flatWidth)} flat`,
    state,
  ];
  return parts.filter(Boolean).join(', ');
}

const tensionSaid = (tension: Tension, noun: string): string =>
  tension.over === undefined || tension.over.assumed === 'rate'
    ? (tension.said ?? '')
    : `${tension.count} ${noun} in ${withUnit(tension.over)}`;

/** A typed length; a bare number with the unit it was read in. */
function withUnit(value: Value): string {
  const typed = value.said ?? '';
  return value.assumed === undefined ? typed : `${typed} ${unitRead(value) === 'cm' ? 'cm' : 'in'}`;
}

/** The unit that a typed number was read in, told from what it came to. */
export function unitRead(value: Value): 'cm' | 'mm' | 'inches' {
  const mm = value.is === 'length' ? value.mm : value.is === 'window' ? value.loMm : 0;
  const typed = Number.parseFloat((value.said ?? '').replace(',', '.'));
  const per = mm / typed;
  if (per < 2) return 'mm';
  return per < 15 ? 'cm' : 'inches';
}

/** What was taken for granted of a record. */
export function recordAssumed(ask: GaugeAsk, sameBench: boolean): Words[] {
  const lengths = [ask.rows?.over, ask.stitches?.over, ask.flatWidth].filter((value) => value !== undefined);
  const rate = lengths.find((value) => value.assumed === 'rate');
  return [
    ...(rate === undefined ? [] : [say`a rate counts as read over ${length(mmOfValue(rate))}`]),
    ...(sameBench ? [say`same machine and yarn as last time`] : []),
    ...(ask.state === undefined ? [say`measured at rest`] : []),
    ...lengths.flatMap((value) =>
      value.assumed === 'unit' || value.assumed === 'field'
        ? [say`${value.said ?? ''} read in ${unitRead(value)}`]
        : [],
    ),
  ];
}
