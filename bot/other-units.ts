import type { Units } from '../core/index.js';
import type { Conversation } from './conversation.js';
import type { Offered } from './reply.js';

/** So many requests in a row in another unit than the maker's are a question worth asking. */
const IN_A_ROW = 3;

/** What a talk knows of requests typed in another unit than the maker's own. */
type OtherUnits = Conversation['otherUnits'];

/**
 * How many requests in a row were in another unit, with the one just read; one without a unit counts for nothing.
 * @param typed the unit of the request
 * @param own the maker's unit before it
 */
export function otherUnits(before: OtherUnits, typed: Units | undefined, own: Units | undefined): OtherUnits {
  if (typed === undefined || own === undefined) return before;
  const times = typed === own ? 0 : (before?.times ?? 0) + 1;
  return { times, isAsked: before?.isAsked === true || times >= IN_A_ROW };
}

/** The unit to offer a switch to, the once that it is asked. */
export const switchTo = (before: OtherUnits, now: OtherUnits, typed: Units | undefined): Units | undefined =>
  now?.isAsked === true && before?.isAsked !== true ? typed : undefined;

/** Words that switch. */
export const switchWords = (units: Units): string => (units === 'cm' ? 'use cm' : 'use inches');

/** The way to switch, beside what an answer offers. */
export const switchOffer = (units: Units): Offered => ({
  button: units === 'cm' ? 'Use Centimetres' : 'Use Inches',
  say: switchWords(units),
  request: { kind: 'set_units', units },
});
