import { inShort, type Plan, type Printing, printed, printedRuns } from '../../core/index.js';
import type { ReplyOf } from '../reply.js';
import type { PlanAsk } from '../request.js';
import type { Card } from './card.js';
import { capital } from './names.js';

type StepsForm = ReplyOf<'steps'>['form'];

/** The form of the steps asked for along with a plan. */
export const formAsked = ({ focus }: PlanAsk): StepsForm | undefined =>
  focus.includes('checklist') ? 'short' : focus.includes('steps') ? 'long' : undefined;

/** The steps as sentences with their key words marked, or those key words alone. */
export const stepLines = ({ steps }: Plan, form: StepsForm, printing: Printing): Card['steps'] =>
  steps.map(({ say }) =>
    form === 'long' ? printedRuns(say, printing) : [{ text: capital(printed(inShort(say), printing)), key: false }],
  );

/** How often the steps are done, where they make one of several: of the pieces asked for, of the parts of each. */
export function timesLine({ steps, pieces }: Plan): string[] {
  const parts = Math.min(...steps.map(({ times = 1 }) => times));
  const all = parts * pieces;
  const each = parts === 1 || pieces === 1 ? '' : `, ${parts} for each piece`;
  return all === 1 ? [] : [`These steps make one of ${all}${each}: do them ${all === 2 ? 'twice' : `${all} times`}.`];
}
