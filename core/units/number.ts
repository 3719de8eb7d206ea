/** A number as typed, and where it stood in the text. Negative when a minus sign stands free before it. */
type TypedNumber = { value: number; start: number; end: number };

const WORDS = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
  'twenty',
];
const VULGAR: Record<string, number> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};
const BOTTOMS: Record<string, number> = { half: 2, quarter: 4, eighth: 8 };

const vulgar = `[${Object.keys(VULGAR).join('')}]`;
// A bare `eighth` or `third` is a place in a row of things, not a part.
const part =
  '(?:(?:an?|one)[ -])?(?:half|quarter)|three[ -]quarters?|(?:an|one)[ -]eighth|(?:three|five|seven)[ -]eighths?';
const NUMBER = new RegExp(
  [
    '(?<whole>\\d+)(?:\\s+|-)(?<top>\\d+)\\s?[/⁄]\\s?(?<bottom>\\d+)',
    '(?<ftop>\\d+)\\s?[/⁄]\\s?(?<fbottom>\\d+)',
    `(?<vwhole>\\d+)?[\\s-]?(?<vulgar>${vulgar})`,
    '(?<thousands>\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?)(?!\\d)',
    '(?<points>\\d{1,3}(?:\\.\\d{3})+,\\d\\d)(?![\\d.])',
    '(?<decimal>\\d+(?:[.,]\\d+)?|[.,]\\d+)',
    `(?<part>${part})\\b`,
    `(?<word>${WORDS.join('|')})(?:(?: and |-and-)(?<rest>${part}))?\\b`,
  ].join('|'),
  'iuy',
);

// The x of `11x6`.
const BETWEEN_SIZES = /[\d"”″¼½¾⅛⅜⅝⅞] ?x$/iu;

/**
 * The number that begins at `at`, in any form makers type: `6 3/4`, `6-3/4`, `6¾`, `27.5`, `27,5`, `1,200`, `1.200,50`,
 * `eleven and a half`, `half`; number words to twenty.
 * @returns undefined when no number begins there, or when it would be part of a word
 */
export function numberAt(text: string, at: number): TypedNumber | undefined {
  if (/[\p{L}\d]$/u.test(text.slice(0, at)) && !BETWEEN_SIZES.test(text.slice(0, at))) return undefined;
  NUMBER.lastIndex = at;
  const match = NUMBER.exec(text);
  if (match?.groups === undefined) return undefined;
  const value = typedValue(match.groups);
  if (!Number.isFinite(value)) return undefined;
  const minus = /(^|[\s(,;:=])[-−]$/.test(text.slice(0, at));
  return { value: minus ? -value : value, start: minus ? at - 1 : at, end: at + match[0].length };
}

function typedValue(g: Record<string, string | undefined>): number {
  if (g.whole) return Number(g.whole) + Number(g.top) / Number(g.bottom);
  if (g.ftop) return Number(g.ftop) / Number(g.fbottom);
  if (g.vulgar) return Number(g.vwhole ?? 0) + (VULGAR[g.vulgar] ?? 0);
  if (g.thousands) return Number(g.thousands.replaceAll(',', ''));
  if (g.points) return Number(g.points.replaceAll('.', '').replace(',', '.'));
  if (g.decimal) return Number(g.decimal.replace(',', '.'));
  return (g.word ? worded(g.word) : 0) + partOf(g.rest ?? g.part);
}

const worded = (word: string): number => WORDS.indexOf(word.toLowerCase());

/** `half`, `a quarter`, `three quarters`, `seven eighths`; nothing is 0. */
function partOf(words: string | undefined): number {
  const [, top = 'one', bottom = ''] = /(?:(three|five|seven)[ -])?(half|quarter|eighth)s?$/i.exec(words ?? '') ?? [];
  return bottom === '' ? 0 : worded(top) / (BOTTOMS[bottom.toLowerCase()] ?? Number.NaN);
}
