import { type Ask, aspects, type Piece } from '../../../core/index.js';
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

const SIDES = new Set<string>([...Object.values(aspects).flat(), 'diameter', 'radius']);
const ROUND = new Set<string>(aspects.round);
const OF_ANY = new Set<string>([...aspects.wide, ...aspects.tall, ...aspects.long, ...aspects.round]);

/** True for a word that names a side of any piece. */
export const isSideOfAny = (word: string): boolean => OF_ANY.has(LETTERS[word] ?? word);

/** What a word makes of the number beside it: the ask it names, or a side that the piece does not have. */
export function sideOf(piece: Piece, word: string): { id: string; isRound: boolean } | undefined {
  const id = fieldOf(piece, word);
  if (id !== undefined) return { id, isRound: false };
  if (ROUND.has(word)) return { id: halfRoundOf(piece) ?? NO_FIELD, isRound: true };
  return SIDES.has(word) ? { id: NO_FIELD, isRound: false } : undefined;
}

/**
 * The ask for the flat width of a tube or a folded ring, of which once round is twice: told from how the piece's own
 * layout makes that side. Undefined for a piece that goes round nothing.
 */
function halfRoundOf(piece: Piece): string | undefined {
  return layoutOf(piece)?.dimensions.find(({ id, share }) => share === 1 / 2 && id in piece.asks)?.id;
}

/** True for a piece that is two by itself. */
export const isPair = (piece: Piece): boolean => layoutOf(piece)?.parts === 2;

function layoutOf(piece: Piece) {
  const asked = Object.fromEntries(Object.entries(piece.asks).map(([id, ask]) => [id, anyOf(ask)]));
  const layouts = piece.layouts(asked, { needles: undefined, stitchMm: { round: undefined, flat: undefined } });
  return layouts.ok ? layouts.value[0] : undefined;
}

function anyOf(ask: Ask) {
  if (ask.is === 'window') return { loMm: ask.minMm, hiMm: ask.maxMm };
  if (ask.is === 'count' || ask.is === 'percent') return ask.min;
  return ask.is === 'choice' ? ask.default : ask.defaultMm;
}

/** Words of fields left over after every number has its own are no riddle: `how wide`. */
export function claimFieldWords(sheet: Sheet, piece: Piece): void {
  sheet.tokens.forEach((_, i) => {
    const word = wordAt(sheet, i);
    const isField = word !== undefined && Object.values(piece.asks).some(({ words }) => words.includes(word));
    if (isField) claim(sheet, 'field', i);
  });
}
