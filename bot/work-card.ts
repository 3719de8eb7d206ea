import { countOffers } from './desk/work/work-offers.js';
import type { Offered } from './reply.js';

const TURN = /^work:(.+)$/;

/** The turn of a row counter that goes to where its maker may not have spoken yet. */
export const turnOfWork = (workId: string): string => `work:${workId}`;

/** True for the turn of such a counter. */
export const isTurnOfWork = (turn: string): boolean => TURN.test(turn);

/** What such a counter offers, by its turn alone: one row and ten. Whose work it is is for its desk to say. */
export function offersOfWork(turn: string): readonly Offered[] {
  const [, id] = TURN.exec(turn) ?? [];
  return id === undefined ? [] : counting(id, 0);
}

/** The buttons of such a counter at a row. */
export const counting = (id: string, rows: number): Offered[] =>
  countOffers({ id, rows, stopAt: Number.POSITIVE_INFINITY }).filter(({ request }) => request.kind === 'tally');
