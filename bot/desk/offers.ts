import type { Offered } from '../reply.js';

/** Offers that stand on many cards. */
export const UNDO: Offered = {
  button: 'Undo',
  say: 'undo',
  spoken: 'Take this change back',
  request: { kind: 'undo', redo: false },
};

export const MY_GAUGE: Offered = { button: 'My Gauge', say: 'my gauge', request: { kind: 'show_gauge', on: {} } };
