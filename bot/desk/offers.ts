import type { Offered } from '../reply.js';
import type { FormId } from '../request.js';

/** Offers that stand on many cards. */
export const UNDO: Offered = {
  button: 'Undo',
  say: 'undo',
  spoken: 'Take this change back',
  request: { kind: 'undo', redo: false },
};

export const NEVER_MIND: Offered = { button: 'Never Mind', request: { kind: 'drop' } };

export const MY_GAUGE: Offered = { button: 'My Gauge', say: 'my gauge', request: { kind: 'show_gauge', on: {} } };

export const RECORD: Offered = { button: 'Record a Gauge', say: 'record a gauge', request: { kind: 'tell_gauge' } };

export const PLAN: Offered = {
  button: 'Plan a Piece',
  say: 'plan a piece',
  request: { kind: 'plan', ask: { copies: 1, values: {}, on: {}, focus: [] } },
};

export const FORM_NAMES: Readonly<Record<FormId, string>> = {
  gauge: 'gauge',
  plan: 'plan',
  reading: 'measuring',
  lost_count: 'lost count',
  rates: 'rate card',
  share: 'share',
};

/** The button behind which a form is: a form opens from a press or a command alone. */
export const formOffer = (form: FormId): Offered => ({
  button: 'Fill In a Form',
  say: `${FORM_NAMES[form]} form`,
  request: { kind: 'form', form },
});
