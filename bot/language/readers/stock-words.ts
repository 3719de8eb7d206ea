import { MM_PER, mmPer } from '../../../core/index.js';
import type { StockAsk } from '../../request.js';
import { bareAt, wordsWithin } from '../clauses.js';
import type { Context } from '../context.js';
import {
  claim,
  indexesBetween,
  isFree,
  markAt,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { COLOURS, FIBRES, YARN_WEIGHTS } from '../vocabulary.js';
import type { Span } from './stock-amounts.js';
import { isBall, isNotion } from './things.js';

const TAKES = 'used gave given lost lent threw took take donated swapped'.split(' ');
const ADDS = 'bought got received added add picked paid put'.split(' ');
const HAS = 'have ive weve has own there theres'.split(' ');
const NONE = ['no', 'none'];
/** Words that tell neither an amount nor a name. */
const FILLERS = new Set(
  `ok okay so well now yes oh please i we im just also still then and the my our their up away out only about exactly today already
are is was were of rest all last more another none no left off on some it its a an in to from for with at by each per me them these
those that this gone remaining there here again too shelf stash cupboard yarn dye lot batch number or both as come comes x half price
costs cost pay sold which weighs weigh holds plus has than they both be thats theyre heres`.split(/\s+/),
);

/** True for a word that is no part of a name on the shelf. */
export const isStockWord = (word: string): boolean =>
  isBall(word) || FILLERS.has(word) || [TAKES, ADDS, HAS].some((words) => words.includes(word));

/** True for a word that begins a statement about the shelf. */
export const isStockVerb = (word: string): boolean => [TAKES, ADDS, HAS].some((words) => words.includes(word));

/** How a statement begins: what became of what it names, and whether it says that none is left. */
export function leadOf(sheet: Sheet, { from, to }: Span): { way: StockAsk['way'] | undefined; isNone: boolean } {
  const words: string[] = [];
  for (let i = from; i < to; i++) {
    const word = wordAt(sheet, i) ?? (markAt(sheet, i) === 'comma' ? ',' : '');
    if (word !== ',' && (!isStockWord(word) || isBall(word))) break;
    words.push(word);
  }
  const has = (list: readonly string[]): boolean => words.some((word) => list.includes(word));
  const isNone = words.some(
    (word, i) => (NONE.includes(word) && words[i + 1] !== ',') || (word === 'out' && words[i + 1] === 'of'),
  );
  const isGot = has(HAS) && words.includes('got') && !ADDS.some((word) => word !== 'got' && words.includes(word));
  return { way: has(TAKES) ? 'take' : has(ADDS) && !isGot ? 'add' : has(HAS) ? 'set' : undefined, isNone };
}

const NAMED = /^\s*(?:no\.?|number|nr\.?|#|:)?\s*([a-z]{0,3}-?\d[\w-]*(?:\/\d+)?|[b-hj-z](?![\p{L}\d'’]))/iu;

/** The dye lot named, claimed: `lot 12`, `dye lot no. 2117A`. */
export function claimDyeLot(sheet: Sheet, { from, to }: Span): string | undefined {
  for (const i of indexesBetween(from, to - 1)) {
    if (wordAt(sheet, i) !== 'lot') continue;
    const end = sheet.tokens[i]?.end ?? 0;
    const match = NAMED.exec(sheet.text.slice(end));
    if (match?.[1] === undefined) continue;
    const last = sheet.tokens.findLastIndex(({ start }) => start < end + match[0].length);
    claim(sheet, 'dye lot', ...indexesBetween(wordAt(sheet, i - 1) === 'dye' ? i - 1 : i, last));
    return match[1];
  }
  return undefined;
}

const TEAM = ['team', 'teams'];

/** True where the team is named as whose a thing is; the word is claimed. */
export function claimTeam(sheet: Sheet, { from, to }: Span): boolean {
  const places = wordsWithin(sheet, TEAM, from, to);
  claim(sheet, 'whose', ...places);
  return places.length > 0;
}

/**
 * The first words side by side that are nothing else, as typed, claimed: `grey medium`, `4 ply oat`. Words that begin a
 * statement name a yarn only before a mark, or where they tell one: `oat: 3 balls`, not `move 3 balls`.
 */
export function claimName(sheet: Sheet, { from, to }: Span, context: Context): string | undefined {
  const isPly = (i: number): boolean => bareAt(sheet, i) !== undefined && wordAt(sheet, i + 1) === 'ply';
  const isOfName = (i: number): boolean =>
    i < to &&
    isFree(sheet, i) &&
    (isPly(i) || (wordAt(sheet, i) !== undefined && !isStockWord(wordAt(sheet, i) ?? '')));
  for (let first = from; first < to; first++) {
    if (!isOfName(first)) continue;
    let last = first;
    while (isOfName(last + 1)) last++;
    const name = saidBetween(sheet, first, last);
    if (first > from || sheet.tokens[last + 1]?.is === 'mark' || tellsYarn(name, context)) {
      claim(sheet, 'name', ...indexesBetween(first, last));
      return name;
    }
    first = last;
  }
  return undefined;
}

/** The words for a notion, the size behind them, claimed: `zips 8 in` of `8 in zips` too. */
export function claimNotion(sheet: Sheet, { to }: Span, count: number, thing: number): string {
  const words = indexesBetween(count + 1, thing - 1).filter(
    (i) => isFree(sheet, i) && wordAt(sheet, i) !== undefined && !isStockWord(wordAt(sheet, i) ?? ''),
  );
  const isSize = (i: number): boolean => {
    const perMm = mmPer(quantityAtIndex(sheet, i)?.unit);
    return i < to && perMm !== undefined && perMm <= MM_PER.ft;
  };
  const size = [...indexesBetween(count + 1, thing - 1), thing + 1, thing + 2].find(isSize);
  claim(sheet, 'name', ...words, thing, ...(size === undefined ? [] : [size]));
  return [...words, thing, ...(size === undefined ? [] : [size])].map((i) => said(sheet, i)).join(' ');
}

/** True for words of which one tells yarns and notions apart, or is of a name known. */
export function tellsYarn(name: string, { yarns, onShelf = [] }: Context): boolean {
  const known = new Set([...yarns, ...onShelf].flatMap((one) => one.toLowerCase().split(/[\s-]+/)));
  const words = name.toLowerCase().split(/[\s-]+/);
  return words.some((word) => isNotion(word) || [COLOURS, FIBRES, YARN_WEIGHTS, known].some((set) => set.has(word)));
}
