const SMALL = 'one|two|three|four|five|six|seven|eight|nine';
const TENS = 'twenty|thirty|forty|fourty|fifty|sixty|seventy|eighty|ninety';
const TEENS = 'ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen';
const BELOW_HUNDRED = `(?:${TENS})(?:[ -](?:${SMALL}))?|${TEENS}|${SMALL}`;
/** One word of a number in words. */
export const NUMBER_WORD = `(?:${TENS}|${TEENS}|${SMALL}|hundred|an?|and)`;
export const ORDINAL = `(?:${TENS})[ -](?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth)`;
/** Thousands are no size and no count of rows: such numbers stay words. */
const BEYOND = `(?![\\p{L}\\d]|[ -](?:${SMALL}|hundred|thousand|million)\\b)`;
const NUMBER = new RegExp(
  `(?<![\\p{L}\\d.,/-])(?!${ORDINAL})(?:(?:(?<hundreds>an?|${SMALL}) hundred(?: (?:and )?(?<rest>${BELOW_HUNDRED}))?)|(?<below>(?:${TENS})(?:[ -](?:${SMALL}))?))${BEYOND}`,
  'giu',
);

const VALUES: Record<string, number> = Object.fromEntries([
  ...SMALL.split('|').map((word, i) => [word, i + 1]),
  ...['ten', 'eleven', 'twelve', 'thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen'].map(
    (word, i) => [word, i + 10],
  ),
  ...TENS.replace('fourty|', '')
    .split('|')
    .map((word, i) => [word, 20 + 10 * i]),
  ['fourty', 40],
  ['a', 1],
  ['an', 1],
]);

const figureOf = (words = ''): number =>
  words
    .toLowerCase()
    .split(/[ -]/)
    .reduce((sum, word) => sum + (VALUES[word] ?? 0), 0);

/** `3 quarters`, `5 eighths`. */
const PARTS = /(?<![\d.,/-])([1357])[ -](quarter|eighth)s?\b/gi;

/** `a dozen`, `half a dozen`, `two dozen`. */
const DOZENS = new RegExp(
  `(?<![\\p{L}\\d.,/-])(?:(?<half>half (?:a )?)|(?<times>\\d{1,2}|an?|${TEENS}|${SMALL}) )?dozen(?: of)?${BEYOND}`,
  'giu',
);

/** Where number words stood. */
export type Place = { start: number; end: number };

/** A text with its compound number words in figures, as long as before, and where those words stood. */
export function inFigures(text: string): { text: string; places: readonly Place[] } {
  const places: Place[] = [];
  const figures = text.replace(NUMBER, (words, ...found) => {
    const groups: Record<string, string | undefined> = found.at(-1);
    const start: number = found.at(-3);
    places.push({ start, end: start + words.length });
    const value = 100 * figureOf(groups.hundreds) + figureOf(groups.rest ?? groups.below);
    return String(value).padEnd(words.length);
  });
  const dozens = figures.replace(DOZENS, (words, ...found) => {
    const groups: Record<string, string | undefined> = found.at(-1);
    const start: number = found.at(-3);
    places.push({ start, end: start + words.length });
    const times = groups.times === undefined ? 1 : Number(groups.times) || figureOf(groups.times);
    return String(groups.half === undefined ? 12 * times : 6).padEnd(words.length);
  });
  const fractions = dozens.replace(PARTS, (words, top: string, part: string, start: number) => {
    places.push({ start, end: start + words.length });
    return `${top}/${/^q/i.test(part) ? 4 : 8}`.padEnd(words.length);
  });
  return { text: fractions, places };
}
