import { numberOf } from '../durations.js';

/** What the words are used as that ask how long a piece takes. */
export const TIME_ASKED = 'how long it takes';

const COUNT =
  '(?<count>\\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|twelve)(?:\\s+of\\s+(?:them|these|those))?';
const NO_SIZE = '(?![\\p{L}\\d/"”½¼¾]|[.,]\\d|\\s*(?:in|inch|inches|cm|mm)\\b|\\s+\\d)';
const WORK = `(?:it|this|that|they|these|those|each|all(?:\\s+of\\s+(?:it|them))?|(?:the|this|my)\\s+\\p{L}+)`;
const TO_MAKE = '(?:\\s+(?:me|us))?(?:\\s+to\\s+(?:knit|make|finish|do|crank))?';

const FORMS = [
  `how\\s+long\\s+(?:will|would|does|do|might|is)\\s+(?:${COUNT}|${WORK})(?:\\s+going\\s+to)?\\s+(?:take|need)${TO_MAKE}(?:\\s+(?:it|them|this|that))?`,
  `how\\s+long\\s+(?:will|would|does|might)\\s+it\\s+take${TO_MAKE}\\s+${COUNT}${NO_SIZE}`,
  '(?:by\\s+)?when\\s+(?:will|would|can)\\s+(?:i|we|it|they|these|this)\\s+be\\s+(?:ready|done|finished|through)(?:\\s+with\\s+(?:it|them|this|these))?',
  `how\\s+long\\s+${WORK}\\s+(?:would|will|does|do|might)\\s+(?:take|need)${TO_MAKE}`,
  `how\\s+long\\s+to\\s+(?:knit|make|finish|do|crank)\\s+(?:${COUNT}${NO_SIZE}|${WORK}|them)`,
  `how\\s+long\\s+for\\s+(?:${COUNT}${NO_SIZE}|${WORK})`,
  `how\\s+(?:much\\s+time|many\\s+hours)\\s+(?:will|would|does|do|is)\\s+(?:${COUNT}|${WORK})(?:\\s+(?:take|need))?`,
  `how\\s+(?:much\\s+time|many\\s+hours)\\s+for\\s+(?:${COUNT}${NO_SIZE}|${WORK})`,
  'how\\s+(?:much\\s+time|many\\s+hours)(?=\\s*\\??\\s*$)',
  '(?<=(?:\\band|&|,)\\s*)how\\s+long(?=\\s*[?.!]*\\s*$)',
  `(?<=(?:^|\\band)\\s*)(?:the\\s+)?time\\s+for\\s+(?:${COUNT}${NO_SIZE}|${WORK})`,
  '(?<=(?:^|\\band|[&,+])\\s*)(?:the\\s+)?(?:working\\s+)?time(?:\\s+(?:needed|required))?(?=\\s*(?:[?,&+]|and\\s|$))',
];
const QUESTIONS = FORMS.map((form) => new RegExp(`(?<!\\p{L})${form}(?!\\p{L})`, 'iu'));

/** Of a piece named in the words between: `how long will a pouch 11 in wide take`, `time for a cowl 60 cm round`. */
const OF_PIECE = [
  /(?<!\p{L})how\s+long\s+(?:will|would|does|do|might)(?!\p{L})(?=.*(?<!\p{L})(?:takes?|need)(?!\p{L}))/iu,
  /(?<!\p{L})how\s+long\s+for(?=\s+(?:an?|\d+)\s)/iu,
  /(?<!\p{L})how\s+(?:much\s+time|many\s+hours)\s+(?:for|will|would|does|do)(?!\p{L})/iu,
  /(?<=^\s*)(?:the\s+)?time\s+for(?=\s+(?:an?|\d+)\s)/iu,
];

/** Where it is asked how long the work takes, and for how many. */
export type TimeQuestion = { start: number; end: number; copies: number | undefined };

/** The plan in hand is meant: `how long will it take`, `how long for 12`, `time for this`. */
export function timeQuestionIn(text: string): TimeQuestion | undefined {
  const found = QUESTIONS.map((form) => form.exec(text)).find((match) => match !== null);
  if (found === undefined || found === null) return undefined;
  const count = found.groups?.count;
  return {
    start: found.index,
    end: found.index + found[0].length,
    copies: count === undefined ? undefined : numberOf(count),
  };
}

/** A piece of its own is meant; the words that ask. */
export function timeOfPieceIn(text: string): { start: number; end: number } | undefined {
  const found = OF_PIECE.map((form) => form.exec(text)).find((match) => match !== null);
  return found === undefined || found === null ? undefined : { start: found.index, end: found.index + found[0].length };
}
