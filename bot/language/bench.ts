import type { Meaning } from '../request.js';
import type { Context } from './context.js';
import { DURATION, secondsOf } from './durations.js';
import { inFigures } from './number-words.js';
import { clockIn } from './readers/clocks.js';
import { piecePlaces } from './readers/pieces.js';
import { TIME_ASKED, timeOfPieceIn, timeQuestionIn } from './readers/time-questions.js';
import { PARTS, partsIn, timesIn } from './readers/times.js';
import { claim, freeQuantities, LEFT_OUT, type Sheet } from './sheet.js';

const ANSWER = new RegExp(`^\\s*(?:about\\s+|it was\\s+)?(?<time>${DURATION})\\s*\\.?\\s*$`, 'iu');

const PARTS_ANSWER = new RegExp(
  `^\\s*(?:it was\\s+|on\\s+|for\\s+)?(?:(?<parts>${PARTS})|both|all(?: of it)?|everything|the (?:whole|lot))\\s*\\.?\\s*$`,
  'iu',
);

/** Without one of these nothing here is about time: most messages are not. */
const OF_TIME =
  /\d\s*(?:h|hrs?|mins?|secs?)(?![a-z])|\btook (?:me )?\d|\b(?:hours?|minutes?|hrs?|mins?|seconds?|time|timer|clock|long|pause|pausing)\b|watch|\bwhen (?:will|would|can)\b/i;

/** What a message says and asks of time at the bench; the words are claimed. */
export function benchMeanings(sheet: Sheet, context: Context): Meaning[] {
  const { text } = inFigures(sheet.text);
  const parts = context.holes[0] === 'parts' ? PARTS_ANSWER.exec(text)?.groups : undefined;
  if (parts !== undefined) {
    claim(sheet, 'answer', ...sheet.tokens.keys());
    return [{ kind: 'of_time', parts: partsIn(parts.parts ?? '') }];
  }
  const answer = context.holes[0] === 'time' ? ANSWER.exec(text)?.groups?.time : undefined;
  if (answer !== undefined) {
    claim(sheet, 'answer', ...sheet.tokens.keys());
    return [{ kind: 'of_time', seconds: secondsOf(answer) }];
  }
  if (!OF_TIME.test(text)) return [];
  const told = [timesIn(text), clockIn(text)].filter((found) => found !== undefined);
  for (const { start, end } of told) claimBetween(sheet, 'time', start, end);
  const questions = asked(sheet, text, context);
  claimDurations(sheet, text);
  return [...told.map(({ meaning }) => meaning), ...questions];
}

const DURATIONS = new RegExp(`(?<![\\p{L}\\d])${DURATION}`, 'giu');

/** A time that nobody has read is no size: its words are left out. */
function claimDurations(sheet: Sheet, text: string): void {
  for (const { 0: words, index } of text.matchAll(DURATIONS))
    if (/^\d.*(?:hour|hr|min)/i.test(words)) claimBetween(sheet, LEFT_OUT, index, index + words.length);
}

/** A question of the plan in hand; one of a piece or a size in the same words is left to the plan. */
function asked(sheet: Sheet, text: string, { pieces }: Context): Meaning[] {
  const question = timeQuestionIn(text);
  const ofPiece = timeOfPieceIn(text);
  const draft: Sheet = { ...sheet, uses: [...sheet.uses] };
  if (question !== undefined) claimBetween(draft, TIME_ASKED, question.start, question.end);
  const isWhole = piecePlaces(draft, pieces).length === 0 && freeQuantities(draft).length === 0;
  if (question !== undefined && isWhole) {
    claimBetween(sheet, 'time of the plan in hand', question.start, question.end);
    return [{ kind: 'show_time', ...(question.copies !== undefined && { copies: question.copies }) }];
  }
  const words = ofPiece ?? question;
  if (words !== undefined) claimBetween(sheet, TIME_ASKED, words.start, words.end);
  return [];
}

function claimBetween(sheet: Sheet, as: string, start: number, end: number): void {
  claim(sheet, as, ...sheet.tokens.flatMap((token, i) => (token.start >= start && token.end <= end ? [i] : [])));
}
