import type { FormValues } from '../../request.js';
import type { Field, Known, WorkKnown } from './form.js';
import type { FieldReader } from './typed.js';

const MOST_LISTED = 100;

/** The piece that was meant, else the one touched last. */
export const workFilled = (workId: string | undefined, { works }: Known): WorkKnown | undefined =>
  works.find(({ id }) => id === workId) ?? works[0];

export const workField = ({ works }: Known): Field => ({
  is: 'select',
  id: 'work',
  label: 'Piece on the machine',
  required: true,
  options: works.slice(0, MOST_LISTED).map(({ id, label }) => ({ id, label })),
});

/** The piece chosen, while it is still on its machine. */
export function workRead({ work = '' }: FormValues, { works }: Known, reader: FieldReader): string {
  if (works.every(({ id }) => id !== work))
    reader.refuse('work', 'That piece has come off the machine since this form was opened. Nothing was stored.');
  return work;
}
