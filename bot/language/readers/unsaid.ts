import { aspects, type Piece } from '../../../core/index.js';
import type { Value } from '../../request.js';
import { beginsClause, endsClause } from '../clauses.js';
import { claim, isFree, leftOutFor, type Sheet, saidBetween, wordAt } from '../sheet.js';

const SQUARE = ['square', 'sq'];
const UPRIGHT: readonly string[] = [...aspects.tall, ...aspects.long];
const ROUND: readonly string[] = aspects.round;

/** `30 cm square`: the one side of a pair that was told is both, for a piece that lies as wide and tall as that. */
export function squared(sheet: Sheet, piece: Piece, values: Record<string, Value>): Record<string, Value> {
  const at = sheet.tokens.findIndex((_, i) => isFree(sheet, i) && SQUARE.includes(wordAt(sheet, i) ?? ''));
  const told = piece.pair.filter((id) => id in values);
  const side = values[told[0] ?? ''];
  if (at < 0 || told.length !== 1 || side === undefined || !isFlat(piece)) return values;
  claim(sheet, 'as tall as wide', at);
  return { ...Object.fromEntries(piece.pair.map((id) => [id, side])), ...values };
}

function isFlat({ pair, asks }: Piece): boolean {
  const words = pair.map((id) => asks[id]?.words ?? []);
  const has = (side: readonly string[]): boolean => words.some((own) => own.some((word) => side.includes(word)));
  return words.length === 2 && has(aspects.wide) && has(UPRIGHT) && !has(ROUND);
}

const WANTED = ['with', 'add', 'adding', 'plus', 'has', 'having', 'want', 'and'];
const ARTICLES = ['a', 'an', 'some', 'the', 'long', 'short', 'small', 'big', 'nice'];

/** Names that stand for a length, where the part has such, else that its size is wanted. */
const howToSay = (named: readonly { words: readonly string[] }[] = []): string =>
  named.length === 0 ? 'say its size' : `say ${named.flatMap(({ words }) => words.slice(0, 1)).join(', ')} or its size`;

/**
 * Parts that are wanted without a length: the usual one stands for it, where the piece has one, `with a fringe`; else
 * the word is left out and the reason said, where nothing else stands for it.
 * @param isNew true for a request that changes no plan: any word of such a part then wants it
 */
export function wantedParts(sheet: Sheet, piece: Piece, values: object, isNew: boolean): Record<string, Value> {
  const wanted: Record<string, Value> = {};
  for (const [id, ask] of Object.entries(piece.asks)) {
    if (ask.is !== 'length' || id in values || ask.defaultMm || piece.needs.some((group) => group.includes(id)))
      continue;
    const at = sheet.tokens.findIndex((_, i) => isFree(sheet, i) && ask.words.includes(wordAt(sheet, i) ?? ''));
    if (at < 0) continue;
    let from = at;
    while (ARTICLES.includes(wordAt(sheet, from - 1) ?? '')) from--;
    const isAlone = beginsClause(sheet, from) && endsClause(sheet, at + 1);
    const isWanted = isAlone || WANTED.includes(wordAt(sheet, from - 1) ?? '');
    if (!isWanted && !(isNew && ask.usualMm !== undefined)) continue;
    claim(sheet, ask.usualMm === undefined ? leftOutFor(howToSay(ask.named)) : ask.label, at);
    if (ask.usualMm === undefined) continue;
    wanted[id] = {
      is: 'length',
      mm: ask.usualMm,
      said: saidBetween(sheet, at, at),
      assumed: 'usual',
    };
  }
  return wanted;
}
