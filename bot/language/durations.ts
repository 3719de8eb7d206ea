const SMALL = 'one two three four five six seven eight nine ten eleven twelve fifteen'.split(' ');
const FIGURES: Record<string, number> = {
  ...Object.fromEntries(SMALL.slice(0, -1).map((word, i) => [word, i + 1])),
  fifteen: 15,
  a: 1,
  an: 1,
  '½': 0.5,
  '¼': 0.25,
  '¾': 0.75,
};

const NUMBER = `(?:\\d+(?:[.,]\\d+)?(?:\\s*[½¼¾])?|[½¼¾]|\\b(?:${SMALL.join('|')}|an?)\\b)`;
const HOUR = '(?:hours?|hrs?|h)';
const MINUTE = '(?:minutes?|mins?)';
const END = '(?![\\p{L}\\d])';

/** The source of a regular expression for a time that passes: `30 min`, `an hour and a half`, `1 h 20`, `-5 minutes`. */
export const DURATION = `(?:(?:[-−–]\\s?|minus\\s+)?(?:${[
  `half\\s+an?\\s+${HOUR}`,
  `(?:(?:a|three)\\s+quarters?)\\s+of\\s+an\\s+${HOUR}`,
  `${NUMBER}\\s+and\\s+a\\s+(?:half|quarter)\\s+${HOUR}`,
  `${NUMBER}\\s*${HOUR}\\s+and\\s+(?:a\\s+(?:half|quarter)|three\\s+quarters)`,
  `${NUMBER}\\s*${HOUR}(?:\\s*(?:and\\s+)?${NUMBER}\\s*(?:${MINUTE}|m))`,
  `\\d+\\s*h\\s*\\d\\d?`,
  `${NUMBER}\\s*(?:${HOUR}|${MINUTE}|seconds?|secs?)`,
].join('|')})${END})`;

const PER_UNIT: [RegExp, number][] = [
  [/^h/i, 3600],
  [/^m/i, 60],
  [/^s/i, 1],
];

const PIECE = new RegExp(`(${NUMBER})\\s*(\\p{L}+)?`, 'giu');

/** The seconds of a time that {@link DURATION} found. */
export function secondsOf(words: string): number {
  const sign = /^(?:[-−–]|minus)/i.test(words) ? -1 : 1;
  const text = words.toLowerCase().replace(/^(?:[-−–]\s?|minus\s+)/, '');
  if (text.startsWith('half')) return sign * 1800;
  const quarters = /^(a|three)\s+quarters?\s+of/.exec(text)?.[1];
  if (quarters !== undefined) return sign * (quarters === 'a' ? 900 : 2700);
  const more = /and\s+a\s+half/.test(text) ? 1800 : /and\s+a\s+quarter/.test(text) ? 900 : 0;
  const rest = /and\s+three\s+quarters/.test(text) ? 2700 : more;
  const parts = [...text.replace(/and\s+(?:a\s+(?:half|quarter)|three\s+quarters)/, '').matchAll(PIECE)];
  const seconds = parts.reduce((sum, [, number = '', unit = 'm']) => {
    const per = PER_UNIT.find(([name]) => name.test(unit))?.[1] ?? 60;
    return sum + numberOf(number) * per;
  }, rest);
  return sign * seconds;
}

/** A number in figures or in words. */
export function numberOf(text: string): number {
  const word = FIGURES[text.trim().toLowerCase()];
  if (word !== undefined) return word;
  const fraction = FIGURES[/[½¼¾]/.exec(text)?.[0] ?? ''] ?? 0;
  return Number(text.replace(/[½¼¾]/, '').trim().replace(',', '.')) + fraction;
}
