import { type Printing, printed } from '../../../core/index.js';
import type { AnyProblem } from '../../problems.js';
import type { Reply } from '../../reply.js';
import type { FormId, FormSent } from '../../request.js';
import { LIMITS, shortened } from '../limits.js';
import { sentenceFor } from '../sentences.js';
import type { Fault, Form, Known } from './form.js';
import { gaugeForm } from './gauge.js';
import { lostCountForm } from './lost-count.js';
import { planForm } from './plan.js';
import { ratesForm } from './rates.js';
import { readingForm } from './reading.js';
import { shareForm } from './share.js';

export type { BenchKnown, Fault, Form, Known, WorkKnown } from './form.js';
export { CALLBACK, formView, REDRAWS, VALUE, type View } from './view.js';

/** One form an id; an id without its form does not compile. */
export const forms: Readonly<Record<FormId, Form>> = {
  gauge: gaugeForm,
  plan: planForm,
  reading: readingForm,
  lost_count: lostCountForm,
  rates: ratesForm,
  share: shareForm,
};

/** What a form lacks that it is of, a piece on the machine or a plan: without it there is nothing to fill in. */
export function lackOf(
  id: FormId,
  { works, inHand }: Pick<Known, 'works' | 'inHand'>,
): 'no_work' | 'no_plan_yet' | undefined {
  if (id === 'share') return inHand === undefined ? 'no_plan_yet' : undefined;
  return (id === 'reading' || id === 'lost_count') && works.length === 0 ? 'no_work' : undefined;
}

/**
 * What a reply to a form holds against it: its problems, each beside the field it is about, and a question that a field
 * answers. None where the reply is an answer, or asks for what the form has no field for.
 * @param hole what a question asks for first
 */
export function formFaults(
  { id, values }: FormSent,
  reply: Reply,
  hole: string | undefined,
  known: Known,
  printing: Printing,
): Fault[] {
  const fields = forms[id].fields(values, known).map((field) => field.id);
  const beside = (at: string | undefined): string | undefined => fields.find((field) => field === at);
  if (reply.kind === 'problem')
    return reply.problems.map((problem) => {
      const { lead, body } = sentenceFor(problem, printing);
      const isBeside = beside(fieldOf(problem, forms[id]));
      return { at: isBeside, says: [`${lead}.`, ...body].join(' ') };
    });
  const at = hole && beside(forms[id].at[hole] ?? hole);
  return reply.kind === 'question' && at !== undefined
    ? [{ at, says: `${printed(reply.asks, printing)} ${printed(reply.because, printing)}` }]
    : [];
}

function fieldOf(problem: AnyProblem, { at }: Form): string | undefined {
  if ('field' in problem) return problem.field.id;
  if (problem.code === 'missing') return problem.anyOf[0]?.id;
  return 'label' in problem ? at[problem.label] : undefined;
}

/** Faults by field, as the platform shows them: those of one field together, those of none beside the first. */
export function faultsByField(faults: readonly Fault[], first: string): Record<string, string> {
  const by = new Map<string, string[]>();
  for (const { at = first, says } of faults) by.set(at, [...(by.get(at) ?? []), says]);
  return Object.fromEntries([...by].map(([id, says]) => [id, shortened(says.join(' '), LIMITS.fault)]));
}
