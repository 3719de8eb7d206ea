import type { Piece } from '../../../core/index.js';
import { freeQuantities, isFree, isLabelOfNext, markAt, type Sheet, wordAt } from '../sheet.js';
import { COMPARATIVES } from '../vocabulary.js';
import { sideOf } from './fields.js';
import { listsIn } from './lists.js';

export type Label = { index: number; label: number; id: string; isRound: boolean };

/**
 * Pairs quantities with the field words beside them. A word may stand after its number (`11 in wide`) or before
 * (`width 11`); of all pairings the one that leaves fewest numbers without a word and jumps over least is taken.
 */
export function labelled(sheet: Sheet, piece: Piece): Label[] {
  const inner = new Set(listsIn(sheet).flatMap((list) => list.slice(1, -1)));
  const quantities = freeQuantities(sheet).filter((i) => !inner.has(i));
  const best = (from: number, taken: number | undefined): { cost: number; labels: Label[] } => {
    const index = quantities[from];
    if (index === undefined) return { cost: 0, labels: [] };
    const options = [...candidates(sheet, piece, index).filter(({ label }) => label !== taken), undefined];
    return options
      .map((option) => {
        const rest = best(from + 1, option !== undefined && option.label > index ? option.label : undefined);
        return {
          cost: rest.cost + (option?.cost ?? UNLABELLED),
          labels: option === undefined ? rest.labels : [option, ...rest.labels],
        };
      })
      .reduce((a, b) => (b.cost < a.cost ? b : a));
  };
  // Each number has at most a word on either side, so the search is short; a text of many numbers is read in part.
  return best(Math.max(0, quantities.length - MOST_SIZES), undefined).labels;
}

const UNLABELLED = 5;
const MOST_SIZES = 8;
const REACH = 3;
/** Words that part a number from a field word further on. */
const PARTING = ['and', 'with', 'for', 'plus', 'on', 'or'];
/** Before a number these mean `about`. */
const ABOUT = ['around', 'round'];

function candidates(sheet: Sheet, piece: Piece, index: number): (Label & { cost: number })[] {
  return [1, -1].flatMap((way) => {
    for (let step = 1; step <= REACH; step++) {
      const at = index + way * step;
      const isComma = markAt(sheet, at) === 'comma' && !(way < 0 && isComparative(sheet, at - 1));
      const isParted = isComma || ['by', 'stop'].includes(markAt(sheet, at) ?? '');
      if (sheet.tokens[at] === undefined || sheet.tokens[at]?.is === 'quantity' || isParted) return [];
      const word = wordAt(sheet, at);
      if (word === undefined) continue;
      if (PARTING.includes(word)) return [];
      const side = isFree(sheet, at) ? sideBeside(sheet, piece, at, way) : undefined;
      if (side !== undefined) return [{ index, label: at, ...side, cost: step - 1 + (way < 0 ? 0.4 : 0) }];
    }
    return [];
  });
}

const isComparative = (sheet: Sheet, at: number): boolean => COMPARATIVES[wordAt(sheet, at) ?? ''] !== undefined;

function sideBeside(sheet: Sheet, piece: Piece, at: number, way: number) {
  const word = wordAt(sheet, at) ?? '';
  if (way > 0) return isLabelOfNext(sheet, at) ? undefined : sideOf(piece, word);
  if (ABOUT.includes(word) || wordAt(sheet, at + 1) === 'than') return undefined;
  return sideOf(piece, COMPARATIVES[word] ?? word);
}
