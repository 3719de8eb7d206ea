import { PAST_WORDS } from './past-words.js';

const EVENT = 'market|fair|show|stall|sale|bazaar|festival|party|wedding|birthday|exhibition|workshop|class|event';
const FILLER = `(?:\\s+(?!(?:for|on|by|and|in|with|to)\\b)[\\p{L}'’]+){0,3}?`;

/** What may stand between a cue and its day: `for the winter market on`. */
export const EVENT_PHRASE = `(?:(?:\\s+(?:the|my|our|an?))?${FILLER}\\s+(?:${EVENT})\\b,?(?:\\s+on\\b)?)?(?:\\s+the\\b)?`;
export const CUE_WORD = '\\b(by|due|until|before|for|on|since)\\b:?';

const DAY =
  'monday|tuesday|wednesday|thursday|friday|saturday|sunday|mon|tue|wed|thu|fri|sat|sun|tomorrow|today|tonight|next|this|end|weekend|christmas|xmas|boxing|new\\s+year|valentine|hallowe';
const CUE = new RegExp(
  `${CUE_WORD}${EVENT_PHRASE}\\s+(?:\\d{1,2}(?:st|nd|rd|th)?\\s+(?:of\\s+)?[a-z]{3,}|[a-z]{3,9}\\.?\\s+\\d{1,2}|${DAY}|\\d{4}-\\d|\\d{1,2}[./]\\d)`,
  'iu',
);
const PAST = new RegExp(PAST_WORDS, 'i');

/** True when a text holds a word that may lead to a date; only then is the date library worth loading. */
export const hasDueCue = (text: string): boolean => CUE.test(text) || PAST.test(text);
