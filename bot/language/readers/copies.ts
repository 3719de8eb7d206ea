import type { Piece } from '../../../core/index.js';
import { claim, isFree, quantityAtIndex, type Sheet, wordAt } from '../sheet.js';

/** How many are wanted: `two of them`, `12 pouches`, `3 blue pouches`, `2 x`. Undefined when not said. */
export function readCopies(sheet: Sheet, piece: Piece | undefined): number | undefined {
  const names = piece?.words ?? [];
  for (const [i] of sheet.tokens.entries()) {
    const quantity = quantityAtIndex(sheet, i);
    if (
      quantity === undefined ||
      quantity.unit !== undefined ||
      quantity.lo !== quantity.hi ||
      quantity.lo < 1 ||
      !Number.isInteger(quantity.lo)
    )
      continue;
    const ofThem = wordAt(sheet, i + 1) === 'of' && ['them', 'these', 'those'].includes(wordAt(sheet, i + 2) ?? '');
    const named = [1, 2, 3].some(
      (step) => names.includes(wordAt(sheet, i + step) ?? '') && onlyWords(sheet, i + 1, i + step - 1),
    );
    if (!ofThem && !named) continue;
    claim(sheet, 'how many', i, ...(ofThem ? [i + 1, i + 2] : []));
    return quantity.lo;
  }
  return undefined;
}

function onlyWords(sheet: Sheet, from: number, to: number): boolean {
  for (let i = from; i <= to; i++) {
    if (wordAt(sheet, i) === undefined || !isFree(sheet, i)) return false;
    claim(sheet, 'described', i);
  }
  return true;
}
