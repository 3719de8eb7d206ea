import type { FormValues } from '../../request.js';
import { type Block, context, plain } from '../blocks.js';
import { LIMITS, shortened } from '../limits.js';
import type { Field, Form, Known, Option } from './form.js';

export type View = Record<string, unknown> & { type: 'modal'; blocks: readonly Block[] };

/** The one action id of every field: a block holds one element. */
export const VALUE = 'v';
/** Begins the action id of a field on which the others depend, and every callback id. */
export const REDRAWS = 'form.redraw';
export const CALLBACK = 'form.';

/** No measurement is longer; a text that is gets read and refused, not cut. */
export const MOST_TYPED = 200;

/**
 * A form as a modal view, its fields filled in and the cursor in the first that is empty.
 * @param kept where the answer goes, carried along with the values that have no field
 */
export function formView(id: string, form: Form, values: FormValues, known: Known, kept: object): View {
  const fields = form.fields(values, known);
  const first = fields.find(({ is, id: field }) => (is === 'text' || is === 'people') && !values[field]);
  const unseen = hidden(values, fields);
  const carried = fitting(kept, unseen);
  const names = (of: Values): string => [...new Set(of.flatMap(([id]) => form.unseen?.(id, values) ?? []))].join('; ');
  const [goesAlong, hasNoRoom] = [names(carried), names(unseen.slice(carried.length))];
  return {
    type: 'modal',
    callback_id: `${CALLBACK}${id}`,
    title: plain(form.title, LIMITS.modalTitle),
    submit: plain(form.submit, LIMITS.modalTitle),
    close: plain('Cancel', LIMITS.modalTitle),
    private_metadata: metadata(kept, carried),
    blocks: [
      ...fields.map((field) => input(field, values[field.id] ?? '', field === first)),
      ...(goesAlong === '' ? [] : [context([`Kept as you said it: ${goesAlong}.`])]),
      ...(hasNoRoom === '' ? [] : [context([`Too long for this form, so say it again afterwards: ${hasNoRoom}.`])]),
    ],
  };
}

const hidden = (values: FormValues, fields: readonly Field[]): Values =>
  Object.entries(values).filter(([id, value]) => value !== '' && fields.every((field) => field.id !== id));

type Values = readonly [string, string][];

const metadata = (kept: object, values: Values): string =>
  JSON.stringify({ ...kept, hidden: Object.fromEntries(values) });

/** The first of the values that fit beside where the answer goes. */
const fitting = (kept: object, values: Values): Values =>
  values.length === 0 || metadata(kept, values).length <= LIMITS.privateMetadata
    ? values
    : fitting(kept, values.slice(0, -1));

function input(field: Field, value: string, hasFocus: boolean): Block {
  const redraws = field.is === 'select' && field.redraws === true;
  return {
    type: 'input',
    block_id: field.id,
    label: plain(field.label, LIMITS.optionText),
    element: element(field, value, hasFocus),
    optional: field.required !== true,
    ...(redraws && { dispatch_action: true }),
    ...(field.hint && { hint: plain(field.hint, LIMITS.inputHint) }),
  };
}

function element(field: Field, value: string, hasFocus: boolean): Block {
  if (field.is === 'text') {
    const { most = MOST_TYPED } = field;
    return {
      type: 'plain_text_input',
      action_id: VALUE,
      max_length: most,
      ...(value !== '' && { initial_value: shortened(value, most) }),
      ...(hasFocus && { focus_on_load: true }),
    };
  }
  if (field.is === 'people')
    return {
      type: 'multi_users_select',
      action_id: VALUE,
      max_selected_items: field.most,
      ...(value !== '' && { initial_users: value.split(',').slice(0, field.most) }),
      ...(hasFocus && { focus_on_load: true }),
    };
  const options = field.options.slice(0, field.is === 'radio' ? LIMITS.radioOptions : LIMITS.selectOptions).map(option);
  const chosen = options.find((one) => one.value === value);
  return {
    type: field.is === 'radio' ? 'radio_buttons' : 'static_select',
    action_id: field.is === 'select' && field.redraws ? REDRAWS : VALUE,
    options,
    ...(chosen && { initial_option: chosen }),
  };
}

const option = ({ id, label, about }: Option) => ({
  text: plain(label, LIMITS.optionText),
  value: id,
  ...(about !== undefined && { description: plain(about, LIMITS.optionText) }),
});
