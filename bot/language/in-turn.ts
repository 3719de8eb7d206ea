import type { Meaning } from '../request.js';

/**
 * Records and the work come first, for the plans to use; what cannot be read comes before the plans, so that none is
 * made in vain; a plan is made before what is asked of it, its cost last, which may lack a price, and before it is
 * started.
 */
const TURNS: readonly (readonly Meaning['kind'][])[] = [
  ['unread'],
  ['plan', 'change', 'allow'],
  ['buy', 'show_time'],
  ['cost'],
  ['start'],
];

const turnOf = ({ kind }: Meaning): number => TURNS.findIndex((kinds) => kinds.includes(kind));

/** Meanings in the order in which they are to be done. */
export const inTurn = (meanings: readonly Meaning[]): Meaning[] => [...meanings].sort((a, b) => turnOf(a) - turnOf(b));
