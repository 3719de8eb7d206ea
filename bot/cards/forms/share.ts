import { MOST_NOTED } from '../../asks/share.js';
import { capital } from '../names.js';
import type { Form, Option } from './form.js';
import { fieldReader } from './typed.js';

const SIZE: Option = { id: 'size', label: 'The size only', about: 'Enough to make the same piece' };
const ROWS: Option = {
  id: 'rows',
  label: 'The size, and my rows and needles',
  about: 'Your gauge can be worked out from them',
};

/** As many as one share goes to. */
const MOST_PEOPLE = 10;

export const shareForm: Form = {
  title: 'Share this plan',
  submit: 'Share',
  at: {},

  filled: (said) => {
    const share = said?.kind === 'share' ? said : undefined;
    return { to: '', show: share?.rows ? ROWS.id : SIZE.id, note: share?.note ?? '' };
  },

  fields: (_, { inHand }) => [
    {
      is: 'people',
      id: 'to',
      label: 'Share with',
      hint: `${capital(inHand ?? 'your plan')}. Each gets one message.`,
      required: true,
      most: MOST_PEOPLE,
    },
    { is: 'radio', id: 'show', label: 'What they see', options: [SIZE, ROWS] },
    {
      is: 'text',
      id: 'note',
      label: 'A note to them',
      hint: `As you write it, on one line. Up to ${MOST_NOTED} characters.`,
      most: MOST_NOTED,
    },
  ],

  request(values, known) {
    const reader = fieldReader(values, known.units);
    const people = reader
      .text('to')
      .split(',')
      .filter((id) => id !== '');
    if (people.length === 0) reader.refuse('to', 'Who should have it? Choose at least one.');
    if (people.length > MOST_PEOPLE) reader.refuse('to', `I share with up to ${MOST_PEOPLE} at once. Choose fewer.`);
    if (reader.faults.length > 0) return { ok: false, problems: reader.faults };
    const note = reader.text('note');
    // What rows tell stands beside their choice, so that nobody need be asked again.
    return {
      ok: true,
      value: {
        kind: 'share',
        with: people.map((id) => `@${id}`),
        rows: values.show === ROWS.id,
        sure: true,
        ...(note !== '' && { note }),
      },
    };
  },
};
