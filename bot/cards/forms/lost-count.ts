import type { Form } from './form.js';
import { fieldReader, lengthHint, typedAgain } from './typed.js';
import { workField, workFilled, workRead } from './work-field.js';

/** The two counters of a bench, by their names in talk. */
const COUNTERS = [
  { id: 'machine', name: 'machine', label: 'Machine counter' },
  { id: 'hand', name: 'hand counter', label: 'Hand counter' },
] as const;

export const lostCountForm: Form = {
  title: 'Settle the count',
  submit: 'Settle It',
  at: { Row: 'machine', Length: 'length' },

  filled(said, known) {
    const lost = said?.kind === 'lost_count' ? said : undefined;
    const shown = (k: number): string => String(lost?.counts[k]?.rows ?? '');
    return {
      work: workFilled(lost?.workId, known)?.id ?? '',
      machine: shown(0),
      hand: shown(1),
      length: typedAgain(lost?.length, known.units),
    };
  },

  fields: (_, known) => [
    workField(known),
    ...COUNTERS.map(({ id, label }) => ({ is: 'text' as const, id, label })),
    {
      is: 'text',
      id: 'length',
      label: 'Length so far',
      hint: `As it hangs, from the first row of main yarn to the needles. ${lengthHint(known.units)}`,
    },
  ],

  request(values, known) {
    const reader = fieldReader(values, known.units);
    const workId = workRead(values, known, reader);
    const counts = COUNTERS.flatMap(({ id, name }) => {
      const rows = reader.count(id);
      return rows === undefined ? [] : [{ name, rows }];
    });
    const length = reader.length('length');
    if (reader.faults.length > 0) return { ok: false, problems: reader.faults };
    return { ok: true, value: { kind: 'lost_count', workId, counts, length, state: length && 'hanging' } };
  },
};
