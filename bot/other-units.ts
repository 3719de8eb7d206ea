import type { Units } from '../core/index.js';
import type { Conversation } from './conversation.js';
import type { Offered } from './reply.js';
import type { Request } from './request.js';
import { unitsIn } from './units-meant.js';

/** So many requests in a row in another unit than the maker's are a question worth asking. */
const IN_A_ROW = 3;

/** Requests that tell or ask for a size: what is said of yarn is sold by the metre anywhere. */
const SIZED: readonly Request['kind'][] = [
  'plan',
  'record_gauge',
  'reading',
  'finish',
  'allow',
  'correct',
  'which_machine',
];

/** What a talk knows of requests typed in another unit than the maker's own. */
type OtherUnits = Conversation['otherUnits'];

/**
 * What a talk knows of them once a message is answered, one without a size or a unit counting for nothing; and the unit to
 * offer a switch to, the once that it is asked.
 * @param own the maker's unit before it
 */
export function unitsHeard(
  before: OtherUnits,
  requests: readonly Request[],
  text: string,
  own: Units | undefined,
): { known: OtherUnits; switchTo?: Units | undefined } {
  const typed = requests.some(({ kind }) => SIZED.includes(kind)) ? unitsIn(text) : undefined;
  if (typed === undefined || own === undefined) return { known: before };
  const times = typed === own ? 0 : (before?.times ?? 0) + 1;
  const isAsked = before?.isAsked === true || times >= IN_A_ROW;
  const isSet = requests.some(({ kind }) => kind === 'set_units');
  return { known: { times, isAsked }, switchTo: isAsked && before?.isAsked !== true && !isSet ? typed : undefined };
}

/** Words that switch. */
export const switchWords = (units: Units): string => (units === 'cm' ? 'use cm' : 'use inches');

/** The way to switch, beside what an answer offers. */
export const switchOffer = (units: Units): Offered => ({
  button: units === 'cm' ? 'Use Centimetres' : 'Use Inches',
  say: switchWords(units),
  request: { kind: 'set_units', units },
});
