import type { Notion, Stuff, Things } from './piece.js';
import { count, mass, say, tail, type Words } from './words.js';

/** What to have at hand of one notion for some pieces: so many, each cut to a length where it is cut; or so much. */
type AtHand = { id: string; say: Words; count?: number; cutMm?: number; massG?: number };

/**
 * Notions of one piece added up over `pieces`, a whole number from 1.
 * What is cut is added up as it is told, each length rounded up.
 */
export const notionsFor = (notions: readonly Notion[], pieces: number): AtHand[] =>
  notions.map((notion) => ('massG' in notion ? stuff(notion, pieces) : things(notion, pieces)));

function stuff({ id, massG, of }: Stuff, pieces: number): AtHand {
  const all = massG * pieces;
  return { id, massG: all, say: say`about ${mass(all)} of ${of}` };
}

function things({ id, cutMm, after = say``, ...each }: Things, pieces: number): AtHand {
  const all = each.count * pieces;
  const howMany =
    all === 1 ? say`${/^[aeiou]/.test(each.one) ? 'an' : 'a'} ${each.one}` : say`${count(all, each.one, each.many)}`;
  const inAll = all === 1 || cutMm === undefined ? say`` : say` (${tail(cutMm, all)} altogether)`;
  const cut = cutMm === undefined ? say`` : say` of ${tail(cutMm)}${inAll}`;
  return { id, count: all, ...(cutMm !== undefined && { cutMm }), say: say`${howMany}${cut}${after}` };
}
