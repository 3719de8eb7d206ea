import type { Piece } from '../../core/index.js';
import { type Place, piecePlaces } from './readers/pieces.js';
import { indexesBetween, markAt, phraseAt, quantityAtIndex, type Sheet, wordAt } from './sheet.js';

const JOINTS = ['and', 'plus', 'then', 'also'];
const ARTICLES = ['a', 'an', 'another'];
/** A piece named so again is the one named before. */
const SAME = ['the', 'this', 'that', 'my', 'each', 'same', 'every', 'per'];

/** A message cut where it goes on to another piece: `pouch 11 in wide and a tube 20 in long` is two sections. */
export function sections(sheet: Sheet, pieces: readonly Piece[]): Sheet[] {
  const cuts: number[] = [];
  let [last, ...others] = piecePlaces(sheet, pieces);
  for (const next of others) {
    if (last === undefined || next.from <= last.to) continue;
    const cut = cutBetween(sheet, last, next);
    const from = cuts.at(-1) ?? 0;
    if (cut === undefined || !isAnother(sheet, last, next, from, cut) || isOption(sheet, last, next)) continue;
    cuts.push(cut);
    last = next;
  }
  return [0, ...cuts].map((from, i) => {
    const to = cuts[i] ?? sheet.tokens.length;
    return { text: sheet.text, tokens: sheet.tokens.slice(from, to), uses: sheet.uses.slice(from, to) };
  });
}

/** True for a name within an option of the piece before it, `as a tube`; one that is an option alone has no size behind it. */
const isOption = (sheet: Sheet, { piece }: Place, next: Place): boolean =>
  Object.values(piece.asks)
    .flatMap((ask) => (ask.is === 'choice' ? ask.options.flatMap(({ words }) => words) : []))
    .some((phrase) => {
      const words = phrase.split(/[\s-]+/);
      const isAlone = words.length <= next.to - next.from + 1;
      const isHere = indexesBetween(next.to - words.length + 1, next.from).some((i) => phraseAt(sheet, i, words));
      return isHere && !(isAlone && hasSize(sheet, next.to));
    });

/** Another kind is another piece; the same kind is, when both have a size and nothing points back. */
function isAnother(sheet: Sheet, last: Place, next: Place, from: number, cut: number): boolean {
  if (SAME.includes(wordAt(sheet, next.from - 1) ?? '')) return next.piece !== last.piece && hasSize(sheet, cut);
  return next.piece !== last.piece || (hasSize(sheet, from, cut) && hasSize(sheet, cut));
}

const hasSize = (sheet: Sheet, from: number, to = sheet.tokens.length): boolean =>
  sheet.tokens.slice(from, to).some(({ is }) => is === 'quantity');

/**
 * Where one piece ends and the next begins: behind the joint right before the next one's name, else, where its sizes
 * stand before its name, behind the joint right after the last one's name, a full stop, an `and a`, an `and`, a comma.
 */
function cutBetween(sheet: Sheet, last: Place, next: Place): number | undefined {
  const joints = sheet.tokens.flatMap((_, i) => (i > last.to && i < next.from && isJoint(sheet, i) ? [i] : []));
  const nearest = joints.at(-1);
  if (nearest === undefined) return undefined;
  const isBeside = !sheet.tokens
    .slice(nearest, next.from)
    .some(({ is }, k) => is === 'quantity' && isSize(sheet, nearest + k, next));
  const afterName = joints.find((i) => i === last.to + 1);
  const best = isBeside
    ? nearest
    : (afterName ??
      joints.findLast((i) => markAt(sheet, i) === 'stop') ??
      joints.findLast((i) => wordAt(sheet, i) !== undefined && ARTICLES.includes(wordAt(sheet, i + 1) ?? '')) ??
      joints.findLast((i) => wordAt(sheet, i) !== undefined) ??
      nearest);
  return best + 1;
}

const isJoint = (sheet: Sheet, i: number): boolean =>
  ['stop', 'comma', 'slash'].includes(markAt(sheet, i) ?? '') || JOINTS.includes(wordAt(sheet, i) ?? '');

/** True for a number that is no count of the next piece: `and 2 tubes`. */
const isSize = (sheet: Sheet, i: number, next: Place): boolean =>
  !(i === next.from - 1 && quantityAtIndex(sheet, i)?.unit === undefined);
