import type { Piece, Quantity } from '../../../core/index.js';
import type { Meaning } from '../../request.js';
import type { Context } from '../context.js';
import { type BareUnit, typedValue } from '../lengths.js';
import { claim, markAt, type Sheet, said, wordAt } from '../sheet.js';
import { fieldOf } from './fields.js';

/** Words for a size beside the one in hand: the side they are of, of none the one that rows make; and which way. */
const WAYS: Readonly<Record<string, { sides: readonly string[]; more: boolean }>> = {
  longer: { sides: ['long'], more: true },
  shorter: { sides: ['long', 'tall'], more: false },
  taller: { sides: ['tall'], more: true },
  higher: { sides: ['tall'], more: true },
  deeper: { sides: ['deep'], more: true },
  shallower: { sides: ['deep'], more: false },
  wider: { sides: ['wide'], more: true },
  broader: { sides: ['wide'], more: true },
  narrower: { sides: ['wide'], more: false },
  bigger: { sides: [], more: true },
  larger: { sides: [], more: true },
  smaller: { sides: [], more: false },
};
/** May stand beside them; any other word makes it something else that is told. */
const BESIDE = new Set(
  `a an the it them this that make made knit plan please pls i id we want need would like prefer could can may you one and but so ok okay then
also just by bit little touch much slightly some somewhat same as last time before again to be should get get too now what about if with was were`.split(
    /\s+/,
  ),
);
/** `half as long`, `twice as wide`. */
const TIMES: Readonly<Record<string, number>> = { half: 0.5, twice: 2 };

/**
 * A size of the plan in hand told by how much it should differ: `2 cm longer`, `10% wider`, `half as long`. Without an
 * amount, `a bit taller`, it is asked for. Undefined for a message that says anything else.
 */
export function readRelative(sheet: Sheet, context: Context, bare: BareUnit): Meaning | undefined {
  const piece = context.pieces.find(({ id }) => id === context.subjectPiece);
  if (piece === undefined || context.holes.length > 0) return undefined;
  const place = placeIn(sheet);
  if (place === undefined || !isAll(sheet, place.words)) return undefined;
  const field = place.sides.flatMap((side) => fieldOf(piece, side) ?? [])[0] ?? context.rowsMake;
  const [amount, ...others] = amountsBeside(sheet, place);
  if (field === undefined || others.length > 0) return undefined;
  const by = amount === undefined ? place.times && { times: place.times } : changeBy(amount, place, piece, bare);
  if (amount !== undefined && by === undefined) return undefined;
  claim(sheet, 'how much of it', ...sheet.tokens.keys());
  const word = piece.asks[field]?.label.toLowerCase() ?? place.word;
  return by === undefined
    ? { kind: 'unread', why: 'relative', words: place.word }
    : { kind: 'change', edit: { values: {}, on: {}, focus: [], by: { field, word, ...by } } };
}

type Place = {
  word: string;
  sides: readonly string[];
  words: number[];
  more?: boolean;
  times?: number;
  /** True for `wider by`. */
  isBy?: boolean;
};

function placeIn(sheet: Sheet): Place | undefined {
  for (const i of sheet.tokens.keys()) {
    const word = wordAt(sheet, i) ?? '';
    const way = WAYS[word];
    if (way !== undefined) return { word, ...way, words: [i], isBy: markAt(sheet, i + 1) === 'by' };
    const times = TIMES[said(sheet, i).toLowerCase()];
    const side = wordAt(sheet, i + 2) ?? '';
    if (times !== undefined && wordAt(sheet, i + 1) === 'as' && side !== '')
      return { word: side, sides: [side], words: [i, i + 1, i + 2], times };
  }
  return undefined;
}

const isAll = (sheet: Sheet, words: readonly number[]): boolean =>
  sheet.tokens.every(
    (token, i) => words.includes(i) || token.is === 'quantity' || (token.is === 'word' ? BESIDE.has(token.word) : true),
  );

type Amount = { index: number; quantity: Quantity };

/** The amounts told; the `one` of `the same one` is none. */
const amountsBeside = (sheet: Sheet, { words }: Place): Amount[] =>
  sheet.tokens.flatMap((token, index) =>
    token.is === 'quantity' && !words.includes(index) && said(sheet, index).toLowerCase() !== 'one'
      ? [{ index, quantity: token.quantity }]
      : [],
  );

/** An amount before the word, or `by` so much behind it; `taller, 8 in` is the size itself, and a share may be of the ease. */
function changeBy({ index, quantity }: Amount, { words, more, times, isBy }: Place, { asks }: Piece, bare: BareUnit) {
  const isAmount = times === undefined && (index < (words[0] ?? 0) || isBy);
  if (!isAmount || quantity.lo !== quantity.hi) return undefined;
  const sign = more ? 1 : -1;
  if (quantity.unit === 'percent')
    return Object.values(asks).some(({ is }) => is === 'percent')
      ? undefined
      : { times: 1 + (sign * quantity.lo) / 100 };
  const value = typedValue(quantity, bare, '');
  return value.is === 'length' ? { mm: sign * value.mm } : undefined;
}
