import { type Ask, aspects, isOfUse, type Piece } from '../../../core/index.js';
import type { Value } from '../../request.js';
import type { Made } from '../lengths.js';
import { claim, type Sheet, wordAt } from '../sheet.js';

const LETTERS: Record<string, string> = { w: 'wide', h: 'high', l: 'long' };

/** The ask that a word names, or its letter (`11w x 6h`), or undefined. */
export function fieldOf(piece: Piece, said: string): string | undefined {
  const word = LETTERS[said] ?? said;
  const named = ([id, ask]: [string, Ask]) => ask.is !== 'choice' && (ask.words.includes(word) || id === word);
  return Object.entries(piece.asks).find(named)?.[0];
}

/** Stands for a side that a piece does not have. */
export const NO_FIELD = '';

const SIDES = new Set<string>([...Object.values(aspects).flat(), 'radius']);
const ROUND = new Set<string>(aspects.round);
const OF_ANY = new Set<string>([...aspects.wide, ...aspects.tall, ...aspects.long, ...aspects.round]);

/** True for a word that names a side of any piece. */
export const isSideOfAny = (word: string): boolean => OF_ANY.has(LETTERS[word] ?? word);

/** What a number is by the word beside it: the ask it is for, and how the ask's length is made of it, where it is not it. */
export type Side = { id: string; made?: Made };

/** What a word makes of the number beside it: the ask it names, or a side that the piece does not have. */
export function sideOf(piece: Piece, word: string): Side | undefined {
  const id = fieldOf(piece, word);
  if (id !== undefined) return { id };
  const across = Object.entries(piece.asks).find(([, ask]) => ask.is === 'length' && ask.across?.includes(word));
  if (across !== undefined) return { id: across[0], made: 'across' };
  const diameter = ROUND.has(word) ? fieldOf(piece, aspects.diameter[0]) : undefined;
  if (diameter !== undefined) return { id: diameter, made: 'girth' };
  if (ROUND.has(word)) return { id: halfRoundOf(piece) ?? NO_FIELD, made: 'around' };
  return SIDES.has(word) ? { id: NO_FIELD } : undefined;
}

/** True for a word of a side that may stand beside the words of an ask: a `zip 9 in long`. */
export const takesBeside = (piece: Piece, id: string, word: string): boolean =>
  piece.asks[id]?.beside?.includes(LETTERS[word] ?? word) === true || fieldOf(piece, word) === id;

/**
 * The ask for the flat width of a tube or a folded ring, of which once round is twice: told from how the piece's own
 * layout makes that side. Undefined for a piece that goes round nothing.
 */
function halfRoundOf(piece: Piece): string | undefined {
  const asked = Object.fromEntries(Object.entries(piece.asks).map(([id, ask]) => [id, anyOf(ask)]));
  const layouts = piece.layouts(asked, { needles: undefined, stitchMm: { round: undefined, flat: undefined } });
  const [layout] = layouts.ok ? layouts.value : [];
  return layout?.dimensions.find(({ id, share }) => share === 1 / 2 && id in piece.asks)?.id;
}

function anyOf(ask: Ask) {
  if (ask.is === 'window') return { loMm: ask.minMm, hiMm: ask.maxMm };
  if (ask.is === 'count' || ask.is === 'percent') return ask.min;
  if (ask.is === 'contents') return undefined;
  return ask.is === 'choice' ? ask.default : ask.defaultMm;
}

/** Words of fields left over after every number has its own are no riddle: `how wide`. */
export function claimFieldWords(sheet: Sheet, piece: Piece): void {
  sheet.tokens.forEach((_, i) => {
    const word = wordAt(sheet, i);
    const isField = word !== undefined && Object.values(piece.asks).some(({ words }) => words.includes(word));
    if (isField || piece.goesOn?.includes(word ?? '')) claim(sheet, 'field', i);
  });
}

type Values = Readonly<Record<string, Value | null>>;

const choicesIn = (values: Values): Record<string, Value> =>
  Object.fromEntries(Object.entries(values).flatMap(([id, value]) => (value?.is === 'choice' ? [[id, value]] : [])));

/** The piece with what is of use beside the choices said before what is not, so that `round` is of the limb that was named. */
export function preferring(piece: Piece, values: Values): Piece {
  const choices = choicesIn(values);
  const isUseless = (id: string): number => (isOfUse(piece, id, choices) ? 0 : 1);
  const inOrder = <T>(all: readonly T[], idOf: (one: T) => string): T[] =>
    [...all].sort((a, b) => isUseless(idOf(a)) - isUseless(idOf(b)));
  return {
    ...piece,
    asks: Object.fromEntries(inOrder(Object.entries(piece.asks), ([id]) => id)),
    needs: piece.needs.map((group) => inOrder(group, (id) => id)),
  };
}

/** True for an ask that the choices said leave without a use. */
export function isRuledOut(piece: Piece, id: string, values: Values): boolean {
  const choice = piece.asks[id]?.onlyWith?.choice;
  return choice !== undefined && choice in values && !isOfUse(piece, id, choicesIn(values));
}
