import type { TimeAsk } from '../../asks/bench.js';
import { BENCH_PART_NAMES, type BenchPartName, benchPart } from '../../bench-parts.js';
import type { Request } from '../../request.js';
import { DURATION, numberOf, secondsOf } from '../durations.js';

/** Where in the text something was found, and what it means. */
export type Found<T> = { start: number; end: number; meaning: T };

const SPACE = '\\s+';
const PART = `(?:${BENCH_PART_NAMES.map((name) => benchPart(name).words)
  .join('|')
  .replaceAll(' ', SPACE)})(?![\\p{L}\\d])`;
const ARTICLE = `(?:(?:the|my|all${SPACE}the)${SPACE})?`;
/** One part or several: `seaming and zip`, `rings, ends and closure`. */
export const PARTS = `${ARTICLE}${PART}(?:(?:\\s*,\\s*|${SPACE})(?:(?:and|&|plus)${SPACE})?${ARTICLE}${PART})*`;

const WHO = `(?:(?:i|we|it|that|this|which)${SPACE})?`;
const TAKEN = `(?:took|has${SPACE}taken|needed)(?:${SPACE}(?:me|us))?(?:${SPACE}(?:about|around|roughly|all))?`;
const OF = `(?:(?:of|on|for|doing)${SPACE})?`;
const FOR_SO_MANY = `(?:${SPACE}(?:for|to${SPACE}make)${SPACE}(?<pieces>both|\\d+|two|three|four|five|six)(?:${SPACE}(?:of${SPACE}them|pieces))?(?![\\p{L}\\d.,/"”]|\\s*(?:in|cm|mm|inch))|${SPACE}(?:in${SPACE}(?:all|total)|altogether|for${SPACE}(?:it|this|one|the${SPACE}lot|everything)))?`;

/** Time with the part it went to before it or behind it, or for all of the work: in this order at each place. */
const TIME = new RegExp(
  [
    `(?:(?:spent|log(?:ged)?|put${SPACE}in)${SPACE})?(?<ahead>${DURATION})${SPACE}${OF}(?<behind>${PARTS})`,
    `${WHO}(?<before>${PARTS})(?:\\s*:\\s*|${SPACE}(?:(?:${TAKEN}|was|for)${SPACE})?)(?<then>${DURATION})`,
    `${WHO}(?:(?:the|my|this)${SPACE}\\p{L}+${SPACE})?(?:${TAKEN}|spent|log(?:ged)?)${SPACE}(?<whole>${DURATION})(?:${SPACE}on${SPACE}(?:it|this|that))?${FOR_SO_MANY}`,
  ]
    .map((form) => `(?<![\\p{L}\\d-])(?:${form})(?![\\p{L}\\d])`)
    .join('|'),
  'giu',
);

/** A sentence with one of these asks, tells of what is yet to come, or of what is written. */
const ASKING = /\b(?:pattern|how|what|when|will|would|should|can|could|if|may|might|must|need to|takes?)\b/i;

/** All that was said, without a unit: so many are minutes; fewer may be hours. */
const BARE =
  /^\s*(?:(?:it|that|this)\s+)?took\s+(?:me\s+)?(?<minutes>\d\d\d?)(?:\s+(?:in\s+all|altogether))?\s*[.!]?\s*$/i;

function bareTime(text: string): Found<LogTime> | undefined {
  const minutes = BARE.exec(text)?.groups?.minutes;
  if (minutes === undefined) return undefined;
  const time: TimeAsk = { seconds: 60 * Number(minutes), parts: [], said: text.trim(), unit: 'assumed' };
  return { start: 0, end: text.length, meaning: { kind: 'log_time', times: [time] } };
}

type LogTime = Extract<Request, { kind: 'log_time' }>;

/** Time that went to the work: `knit 30 min, seaming and zip an hour`, `an hour of grafting`, `took 85 minutes`. */
export function timesIn(text: string): Found<LogTime> | undefined {
  const found = [...text.matchAll(TIME)].filter((match) => !ASKING.test(sentenceOf(text, match.index)));
  const [first, last] = [found[0], found.at(-1)];
  if (first === undefined || last === undefined) return bareTime(text);
  const times = found.map(({ 0: words, groups = {} }): TimeAsk => {
    const { ahead, then, whole, behind, before } = groups;
    return {
      seconds: secondsOf(ahead ?? then ?? whole ?? ''),
      parts: partsIn(behind ?? before ?? ''),
      said: words.trim(),
    };
  });
  const pieces = found.flatMap(({ groups }) => (groups?.pieces ? [piecesOf(groups.pieces)] : []))[0];
  return {
    start: first.index,
    end: last.index + last[0].length,
    meaning: { kind: 'log_time', times, ...(pieces !== undefined && { pieces }) },
  };
}

const piecesOf = (words: string): number => (words.toLowerCase() === 'both' ? 2 : numberOf(words));

/** The names of the parts that words name, in their order. */
export function partsIn(words: string): BenchPartName[] {
  const places = BENCH_PART_NAMES.flatMap((name) => {
    const at = words.search(
      new RegExp(`(?<!\\p{L})(?:${benchPart(name).words.replaceAll(' ', SPACE)})(?!\\p{L})`, 'iu'),
    );
    return at < 0 ? [] : [{ name, at }];
  });
  return places.sort((a, b) => a.at - b.at).map(({ name }) => name);
}

const sentenceOf = (text: string, at: number): string => {
  const from = Math.max(...['.', '!', '?', ';', '\n'].map((mark) => text.lastIndexOf(`${mark}`, at)));
  const rest = text.slice(at).search(/[!?;\n]|\.(?!\d)|(?:,|\s)\s*(?:and\s+)?(?=(?:how|what)\s)/i);
  return text.slice(from + 1, rest < 0 ? undefined : at + rest + 1);
};
