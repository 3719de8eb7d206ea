import { beginBefore, type Calendar, doneAfter, type WallS, workBetween } from './calendar.js';

/** Somebody who makes whole pieces of a batch: whole seconds of their hours for each, above 0. */
export type Maker = { id: string; paceS: number; calendar: Calendar };

/** The pieces that fall to a maker: when each is done, or when each must be begun, in the order they were dealt. */
export type Share = { id: string; at: readonly WallS[] };

/**
 * Deals so many alike pieces out, each next one to whoever would finish it first; ties go in order. Nothing finishes
 * them all sooner, whatever the hours and paces: each maker's times grow, so the pieces dealt are the soonest of all
 * times of all makers.
 * @param makers at least one, each with hours
 * @param from when all may begin
 */
export const dealt = (makers: readonly Maker[], pieces: number, from: WallS): Share[] =>
  dealing(makers, pieces, ({ calendar, paceS }, last = from) => doneAfter(calendar, last, paceS), earlier);

/**
 * The same from the end: when each maker must begin each of their pieces, at the latest, for all to be done by a time.
 * The earliest of them is the latest start of the whole: nobody has to begin before it.
 */
export const dealtBack = (makers: readonly Maker[], pieces: number, due: WallS): Share[] =>
  dealing(makers, pieces, ({ calendar, paceS }, last = due) => beginBefore(calendar, last, paceS), later);

const earlier = (a: WallS, b: WallS): boolean => a < b;
const later = (a: WallS, b: WallS): boolean => a > b;

function dealing(
  makers: readonly Maker[],
  pieces: number,
  nextOf: (maker: Maker, last: WallS | undefined) => WallS,
  isBetter: (a: WallS, b: WallS) => boolean,
): Share[] {
  const hands = makers.map((maker) => ({ maker, at: [] as WallS[], next: nextOf(maker, undefined) }));
  for (let dealt = 0; dealt < pieces; dealt++) {
    const hand = hands.reduce((best, one) => (isBetter(one.next, best.next) ? one : best));
    hand.at.push(hand.next);
    hand.next = nextOf(hand.maker, hand.next);
  }
  return hands.map(({ maker, at }) => ({ id: maker.id, at }));
}

/** When the last of all is done. */
export const lastDone = (shares: readonly Share[]): WallS => Math.max(...shares.flatMap(({ at }) => at));

/** How many pieces a maker can finish between two times. */
export const mostBetween = ({ calendar, paceS }: Maker, from: WallS, due: WallS): number =>
  Math.floor(workBetween(calendar, from, due) / paceS);
