import type { Ask, Piece } from '../../../core/index.js';
import type { Value } from '../../request.js';
import {
  claim,
  indexesBetween,
  isFree,
  LEFT_OUT,
  phraseAt,
  phrasePlaces,
  quantityAtIndex,
  type Sheet,
  saidBetween,
  sheetOf,
  wordAt,
} from '../sheet.js';
import { isLabelWord, STATE_WORDS } from '../vocabulary.js';
import { fieldOf } from './fields.js';

const ARTICLES = ['a', 'an', 'any', 'the', 'its'];
const REFUSALS = ['no', 'without', 'skip', 'lose', 'drop', 'remove', 'omit', 'minus'];

/**
 * Choices a piece leaves open (`cast off`, `full stitch`), and what is refused (`no rings`).
 * @param isNew true for a request that changes no plan: what can only be taken back, not refused, is then left out
 */
export function readChoices(sheet: Sheet, piece: Piece, isNew: boolean): Record<string, Value | null> {
  const values: Record<string, Value | null> = {};
  const name = sheetOf(
    sheet.text,
    sheet.tokens.filter((_, i) => sheet.uses[i] === 'piece'),
  );
  for (const [id, ask] of Object.entries(piece.asks)) {
    const chosen = ask.is === 'choice' ? (readChoice(sheet, piece, ask) ?? choiceInName(name, piece, ask)) : undefined;
    if (chosen !== undefined) values[id] = chosen;
    if (ask.is !== 'length') continue;
    const none = (ask.named ?? []).some(({ mm }) => mm === 0);
    const named = readNamed(sheet, ask);
    if (named !== undefined) values[id] = named;
    sheet.tokens.forEach((_, i) => {
      let at = ARTICLES.includes(wordAt(sheet, i + 1) ?? '') ? i + 2 : i + 1;
      while (sheet.uses[at] === ask.label) at++;
      const refused = REFUSALS.includes(wordAt(sheet, i) ?? '') && ask.words.includes(wordAt(sheet, at) ?? '');
      if (!refused || !isFree(sheet, at)) return;
      const isTakenBack = ask.defaultMm === undefined && !none;
      claim(sheet, isTakenBack && isNew ? LEFT_OUT : `no ${ask.label.toLowerCase()}`, ...indexesBetween(i, at));
      if (!isTakenBack) values[id] = { is: 'length', mm: 0, said: saidBetween(sheet, i, at) };
      else if (!isNew) values[id] = null;
    });
  }
  claimEnds(sheet);
  return values;
}

/** May stand between a thing and its length. */
const OF = ['of', 'is', 'drop', 'drops'];

/** `a flap of 10 cm`, `shoulder strap 25 cm`; but `with a flap 11 in wide` tells the width. */
function hasLength(sheet: Sheet, to: number): boolean {
  const at = OF.includes(wordAt(sheet, to + 1) ?? '') ? to + 2 : to + 1;
  return quantityAtIndex(sheet, at) !== undefined && !isLabelWord(wordAt(sheet, at + 1) ?? '');
}

/** A length that words stand for, `shoulder strap`; not beside a length of its own, `shoulder strap 25 cm`. */
function readNamed(sheet: Sheet, ask: Ask & { is: 'length' }): Value | undefined {
  let value: Value | undefined;
  for (const { words, mm } of ask.named ?? []) {
    for (const { from, to } of words.flatMap((phrase) => phrasePlaces(sheet, phrase))) {
      const all = indexesBetween(from, to);
      const before = ARTICLES.includes(wordAt(sheet, from - 1) ?? '') ? from - 2 : from - 1;
      // Refused, or with a length of its own, it is read as any other length.
      const isElsewhere =
        REFUSALS.includes(wordAt(sheet, before) ?? '') || quantityAtIndex(sheet, from - 1) || hasLength(sheet, to);
      const rest = all.filter((i) => !isElsewhere || !ask.words.includes(wordAt(sheet, i) ?? ''));
      claim(sheet, ask.label, ...rest);
      if (!isElsewhere) value = { is: 'length', mm, said: saidBetween(sheet, from, to), assumed: 'named' };
    }
  }
  return value;
}

/** The option named last; of one that is asked for at one end alone nothing comes. */
function readChoice(sheet: Sheet, piece: Piece, ask: Ask & { is: 'choice' }): Value | undefined {
  let chosen: Value | undefined;
  for (const option of ask.options) {
    for (const { from, to } of option.words.flatMap((words) => phrasePlaces(sheet, words))) {
      // A piece is measured lying flat, whatever lies in it.
      if (STATE_WORDS[wordAt(sheet, to) ?? ''] !== undefined && wordAt(sheet, to + 1) === 'flat') continue;
      const isOfEnd = END_WORDS.includes(wordAt(sheet, from) ?? '') && phraseAt(sheet, from - 1, ['one']);
      const oneEnd = oneEndBeside(sheet, from, to);
      const use = oneEnd === undefined ? `${ask.label}: ${option.label}` : LEFT_OUT;
      // The word of a length of its own is left for that: `a flap of 10 cm`, but not `a flap 20 cm tall`.
      const isSized =
        OF.includes(wordAt(sheet, to + 1) ?? '') &&
        hasLength(sheet, to) &&
        piece.asks[fieldOf(piece, wordAt(sheet, to) ?? '') ?? '']?.is === 'length';
      claim(sheet, use, ...indexesBetween(isOfEnd ? from - 1 : from, isSized ? to - 1 : to), ...(oneEnd ?? []));
      if (oneEnd === undefined) chosen = { is: 'choice', id: option.id, said: saidBetween(sheet, from, to) };
    }
  }
  return chosen;
}

/** An option that the name of the piece says, beside its default: `leg warmers`, a `bobble hat`. */
function choiceInName(name: Sheet, piece: Piece, ask: Ask & { is: 'choice' }): Value | undefined {
  if (ask.inName === false) return undefined;
  const chosen = readChoice(sheetOf(name.text, name.tokens), piece, ask);
  return chosen?.is === 'choice' && chosen.id !== ask.default ? chosen : undefined;
}

const END_WORDS = ['end', 'ends', 'side', 'sides', 'edge', 'edges'];

/** `cast off one end`, `one end cast off`: a choice is of the whole piece, unless it names the end itself. */
function oneEndBeside(sheet: Sheet, from: number, to: number): number[] | undefined {
  if (indexesBetween(from, to).some((i) => END_WORDS.includes(wordAt(sheet, i) ?? ''))) return undefined;
  const at = ['at', 'on', 'only'].includes(wordAt(sheet, to + 1) ?? '') ? to + 2 : to + 1;
  const places = [indexesBetween(to + 1, at + 1), [from - 2, from - 1]];
  return places.find((place) => phraseAt(sheet, (place.at(-1) ?? 0) - 1, ['one', 'end']));
}

/** Something done at the ends that the piece has no choice for: `grafted at both ends`. */
function claimEnds(sheet: Sheet): void {
  for (const i of sheet.tokens.keys()) {
    const isEnds =
      ['both', 'each', 'either'].includes(wordAt(sheet, i) ?? '') && END_WORDS.includes(wordAt(sheet, i + 1) ?? '');
    const from = ['at', 'on'].includes(wordAt(sheet, i - 1) ?? '') ? i - 2 : i - 1;
    if (isEnds && isFree(sheet, i) && isFree(sheet, from) && /ed$/.test(wordAt(sheet, from) ?? ''))
      claim(sheet, LEFT_OUT, ...indexesBetween(from, i + 1));
  }
}
