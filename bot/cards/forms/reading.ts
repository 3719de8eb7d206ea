import type { Form } from './form.js';
import { stateChosen, stateField } from './state-field.js';
import { fieldReader, lengthHint, typedAgain } from './typed.js';
import { workField, workFilled, workRead } from './work-field.js';

export const readingForm: Form = {
  title: 'Measure the piece',
  submit: 'Work Out Stop Row',
  at: { Row: 'row', Length: 'length' },

  filled(said, known) {
    const reading = said?.kind === 'reading' ? said : undefined;
    const work = workFilled(reading?.workId, known);
    const row = reading?.row ?? work?.rows ?? 0;
    return {
      work: work?.id ?? '',
      row: row === 0 ? '' : String(row),
      length: typedAgain(reading?.length, known.units),
      state: reading?.state ?? 'hanging',
    };
  },

  fields: (_, known) => [
    workField(known),
    { is: 'text', id: 'row', label: 'Row you are at', hint: 'Your tally counts if this is left empty.' },
    {
      is: 'text',
      id: 'length',
      label: 'Length so far',
      hint: `From the first row of main yarn to the needles. ${lengthHint(known.units)}`,
    },
    stateField('hanging'),
  ],

  request(values, known) {
    const reader = fieldReader(values, known.units);
    const workId = workRead(values, known, reader);
    const [row, length] = [reader.count('row'), reader.length('length')];
    if (reader.text('length') === '') reader.refuse('length', 'How long is it now? That tells the tension.');
    if (reader.faults.length > 0 || length === undefined) return { ok: false, problems: reader.faults };
    return { ok: true, value: { kind: 'reading', workId, row, length, state: stateChosen(values.state) } };
  },
};
