import type { Ask, Piece } from '../../../core/index.js';
import type { Value } from '../../request.js';
import {
  claim,
  indexesBetween,
  isFree,
  LEFT_OUT,
  phraseAt,
  phrasePlaces,
  type Sheet,
  saidBetween,
  sheetOf,
  wordAt,
} from '../sheet.js';

const REFUSALS = ['no', 'without', 'skip', 'lose', 'drop', 'remove', 'omit', 'minus'];

/**
 * Choices a piece leaves open (`cast off`, `full stitch`), and what is refused (`no rings`).
 * @param isNew true for a request that changes no plan: what can only be taken back, not refused, is then left out
 */
export function readChoices(sheet: Sheet, piece: Piece, isNew: boolean): Record<string, Value | null> {
  const values: Record<string, Value | null> = {};
  for (const [id, ask] of Object.entries(piece.asks)) {
    const chosen = ask.is === 'choice' ? (readChoice(sheet, ask) ?? choiceInName(sheet, ask)) : undefined;
    if (chosen !== undefined) values[id] = chosen;
    if (ask.is !== 'length') continue;
    sheet.tokens.forEach((_, i) => {
      const at = ['a', 'any', 'the'].includes(wordAt(sheet, i + 1) ?? '') ? i + 2 : i + 1;
      const refused = REFUSALS.includes(wordAt(sheet, i) ?? '') && ask.words.includes(wordAt(sheet, at) ?? '');
      if (!refused || !isFree(sheet, at)) return;
      const isTakenBack = ask.defaultMm === undefined;
      claim(sheet, isTakenBack && isNew ? LEFT_OUT : `no ${ask.label.toLowerCase()}`, ...indexesBetween(i, at));
      if (!isTakenBack) values[id] = { is: 'length', mm: 0, said: saidBetween(sheet, i, at) };
      else if (!isNew) values[id] = null;
    });
  }
  claimEnds(sheet);
  return values;
}

/** The option named last; of one that is asked for at one end alone nothing comes. */
function readChoice(sheet: Sheet, ask: Ask & { is: 'choice' }): Value | undefined {
  let chosen: Value | undefined;
  for (const option of ask.options) {
    for (const { from, to } of option.words.flatMap((words) => phrasePlaces(sheet, words))) {
      const isOfEnd = END_WORDS.includes(wordAt(sheet, from) ?? '') && phraseAt(sheet, from - 1, ['one']);
      const oneEnd = oneEndBeside(sheet, from, to);
      const use = oneEnd === undefined ? `${ask.label}: ${option.label}` : LEFT_OUT;
      claim(sheet, use, ...indexesBetween(isOfEnd ? from - 1 : from, to), ...(oneEnd ?? []));
      if (oneEnd === undefined) chosen = { is: 'choice', id: option.id, said: saidBetween(sheet, from, to) };
    }
  }
  return chosen;
}

/** An option that the name of the piece says, beside its default: `leg warmers`, a `bobble hat`. */
function choiceInName(sheet: Sheet, ask: Ask & { is: 'choice' }): Value | undefined {
  const tokens = sheet.tokens.filter((_, i) => sheet.uses[i] === 'piece');
  const chosen = readChoice(sheetOf(sheet.text, tokens), ask);
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
