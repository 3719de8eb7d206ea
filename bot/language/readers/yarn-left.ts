import { bareAt, sentenceAt, wordsWithin } from '../clauses.js';
import type { RequestReader } from '../requested.js';
import { claim, indexesBetween, phrasePlaces, type Sheet, wordAt } from '../sheet.js';
import { COLOURS, FIBRES } from '../vocabulary.js';
import { massIn, yarnIn } from './put-ups.js';
import { isBall } from './things.js';

const LEFT = ['left', 'remaining'];
/** These tell what came, went or is to be bought. */
const OTHER = 'used bought buy sold lot need needs done finished weighs weighed swatch'.split(' ');
/** Without one of these nothing of it is said. */
const CUES = [...LEFT, 'out', 'how', 'will', 'does', 'is', 'do', 'have', 'enough'];
const ASKING = [
  'what if i only have',
  'what if i have only',
  'what if i only had',
  'what if there is only',
  'how many rows',
  'how many more rows',
  'will it last',
  'will that last',
  'will this last',
  'will it do',
  'will that do',
  'does it last',
  'will the yarn last',
  'will my yarn last',
  'will it reach',
  'will that reach',
  'is it enough',
  'is that enough',
  'is this enough',
  'will it be enough',
  'will that be enough',
  'how far will it go',
  'how far will that go',
  'do i have enough left',
  'do i have enough yarn',
  'do i have enough',
  'have i got enough yarn',
  'have i got enough',
  'enough yarn left',
];

const OUT = [
  'ran out of yarn',
  'run out of yarn',
  'out of yarn',
  'no yarn left',
  'the yarn ran out',
  'my yarn ran out',
];

/**
 * Yarn left, and whether it lasts: `38 g left on the cone, how many rows?`, `40 m left, is that enough?`, `38 g left`;
 * without an amount a question alone, `will it last?`. Of a yarn or lot that is named an amount is of the shelf, unless
 * it is asked how far it goes.
 */
export const readYarnLeft: RequestReader = (sheet, { yarns, onShelf = [] }) => {
  if (!sheet.tokens.some((_, i) => CUES.includes(wordAt(sheet, i) ?? ''))) return [];
  const all = sheet.tokens.length;
  const out = OUT.flatMap((phrase) => phrasePlaces(sheet, phrase))[0];
  if (out !== undefined && massIn(sheet, 0, all) === undefined && yarnIn(sheet, 0, all) === undefined)
    return [meant(sheet, out, { lengthMm: 0 })];
  const asked = ASKING.flatMap((phrase) => phrasePlaces(sheet, phrase))[0];
  const amount = massIn(sheet, 0, all) ?? yarnIn(sheet, 0, all);
  const balls = amount === undefined && !isOfOther(sheet) ? ballsAsked(sheet, asked) : undefined;
  if (balls !== undefined) return [balls];
  if (amount === undefined) return asked === undefined || !isAlone(sheet, asked) ? [] : [meant(sheet, asked, {})];
  const { from, to } = sentenceAt(sheet, amount.at);
  const has = (words: readonly string[]): boolean => wordsWithin(sheet, words, from, to).length > 0;
  if (has(OTHER) || isBought(sheet)) return [];
  const isLeft = has(LEFT) && !has([...COLOURS, ...FIBRES]);
  const isAsked = asked !== undefined && isOfRest(sheet, asked);
  if (!isLeft && !isAsked) return [];
  const isMass = massIn(sheet, from, to)?.at === amount.at;
  claim(sheet, USE, amount.at, ...indexesBetween(from, to - 1).filter((i) => isOfAmount(wordAt(sheet, i))));
  const names = [...yarns, ...onShelf].flatMap((name) => phrasePlaces(sheet, name));
  claim(sheet, 'yarn', ...names.flatMap((place) => indexesBetween(place.from, place.to)));
  const value = isMass ? { massG: amount.value } : { lengthMm: amount.value };
  return [meant(sheet, asked ?? { from: amount.at, to: amount.at }, value)];
};

const USE = 'yarn left';

/** `got 38 g`, which came; what one has got is there. */
const isBought = (sheet: Sheet): boolean =>
  sheet.tokens.some(
    (_, i) => wordAt(sheet, i) === 'got' && !/^(?:have|ive|weve|i|we)$/.test(wordAt(sheet, i - 1) ?? ''),
  );

const isOfOther = (sheet: Sheet): boolean => wordsWithin(sheet, [...OTHER, 'for'], 0, sheet.tokens.length).length > 0;

/** `are 2 balls enough`, `half a ball left, how many rows`: balls that are asked about. */
function ballsAsked(sheet: Sheet, asked: { from: number; to: number } | undefined) {
  const at = sheet.tokens.findIndex((_, i) => bareAt(sheet, i) !== undefined);
  const ball = wordAt(sheet, at + 1) === 'a' ? at + 2 : at + 1;
  const [enough] = wordsWithin(sheet, ['enough'], ball, sheet.tokens.length);
  const question = asked ?? (enough === undefined ? undefined : { from: enough, to: enough });
  const balls = bareAt(sheet, at);
  if (balls === undefined || !isBall(wordAt(sheet, ball)) || question === undefined) return undefined;
  claim(
    sheet,
    USE,
    ...indexesBetween(at, ball),
    ...wordsWithin(sheet, [...LEFT, 'is', 'are', 'will', 'be'], 0, sheet.tokens.length),
  );
  return meant(sheet, question, { balls });
}

type Left = { massG?: number; lengthMm?: number; balls?: number };

function meant(sheet: Sheet, { from, to }: { from: number; to: number }, left: Left) {
  claim(sheet, USE, ...indexesBetween(from, to));
  return { at: from, meaning: { kind: 'yarn_left' as const, ...left } };
}

const isOfAmount = (word: string | undefined): boolean => isBall(word) || LEFT.includes(word ?? '');

/** True for a question that is not of a size: `how many rows for 11 in`. */
const isOfRest = (sheet: Sheet, { to }: { to: number }): boolean => wordAt(sheet, to + 1) !== 'for';

/** True where nothing but everyday words stands beside it, and no number. */
const isAlone = (sheet: Sheet, { from, to }: { from: number; to: number }): boolean =>
  wordAt(sheet, from) !== 'how' || wordAt(sheet, to) === 'go'
    ? sheet.tokens.every(({ is }) => is !== 'quantity') && sheet.tokens.length <= to - from + 4
    : false;
