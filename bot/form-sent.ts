import type { Printing } from '../core/index.js';
import { type Fault, formFaults, forms, type Known } from './cards/forms/index.js';
import type { DeskAnswer } from './desk/desk.js';
import type { FormSent, Request } from './request.js';

/** Thrown inside a transaction, so that all it stored is rolled back, the claim of its delivery with it. */
export class FormRefused extends Error {
  constructor(readonly faults: readonly Fault[]) {
    super('the form was refused');
  }
}

/** The request that a form makes; throws `FormRefused` with every fault at once. */
export function formRequest({ id, values }: FormSent, known: Known): Request {
  const read = forms[id].request(values, known);
  if (!read.ok) throw new FormRefused(read.problems);
  return read.value;
}

/** Throws `FormRefused` where an answer holds something against the form itself, which stays open. */
export function passForm(sent: FormSent, { reply, talk }: DeskAnswer, known: Known, printing: Printing): void {
  const hole = reply.kind === 'question' ? talk.pending?.holes[0] : undefined;
  const faults = formFaults(sent, reply, hole, known, printing);
  if (faults.length > 0) throw new FormRefused(faults);
}
