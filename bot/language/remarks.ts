import type { GaugeAsk, Meaning } from '../request.js';
import type { DueDate } from './context.js';

/** The day that a plan is due: one that can be nothing else, before one that may tell when something was measured. */
export const dueOf = (days: readonly DueDate[]): DueDate | undefined =>
  days.find((day) => 'day' in day && day.past === undefined) ?? days.find((day) => 'day' in day);

/** Records with the day they were measured, the day their lot came and the note; and what found no use, to be told. */
export function withRemarks(
  meanings: readonly Meaning[],
  days: readonly DueDate[],
  note: string | undefined,
): { meanings: Meaning[]; unused: string[] } {
  const isPlanned = meanings.some(({ kind }) => kind === 'plan' || kind === 'change');
  const due = isPlanned ? dueOf(days) : undefined;
  const isRecord = meanings.some(({ kind }) => kind === 'record_gauge');
  const measured = isRecord ? days.find((day) => day !== due && day.past !== undefined && !day.since) : undefined;
  const lot = isRecord ? days.find(({ since }) => since) : undefined;
  const unused = days.filter((day) => ![due, measured, lot].includes(day));
  return {
    meanings: meanings.map((one) =>
      one.kind === 'record_gauge' ? { ...one, gauge: remarked(one.gauge, measured, lot, note) } : one,
    ),
    unused: [
      ...unused.map((day) => ('unusable' in day ? day.unusable : day.said)),
      ...(note !== undefined && !isRecord ? [note] : []),
    ],
  };
}

function remarked(
  gauge: GaugeAsk,
  measured: DueDate | undefined,
  lot: DueDate | undefined,
  note: string | undefined,
): GaugeAsk {
  const since = lot?.past === undefined ? undefined : { day: lot.past, said: lot.said };
  return {
    ...gauge,
    ...(measured?.past !== undefined && { day: { day: measured.past, said: measured.said } }),
    ...(since && { weight: { said: since.said, ...gauge.weight, since } }),
    ...(note !== undefined && { note }),
  };
}
