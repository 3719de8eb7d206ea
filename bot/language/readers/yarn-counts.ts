import { texOf, type YarnCountSystem, yarnWeightsWrapped } from '../../../core/index.js';
import { claim, indexesBetween, isFree, type Sheet } from '../sheet.js';

/** Where words stand, first and last token. */
type Words = { from: number; to: number };

const FIGURE = String.raw`(\d+(?:[.,]\d+)?)(?:\s?/\s?(\d+))?`;
const forms = (name: string): RegExp[] => [
  new RegExp(String.raw`\b(?:${name})\.?\s?${FIGURE}(?![\d.,/])`, 'i'),
  new RegExp(String.raw`(?<![\d.,/])${FIGURE}\s?(?:${name})\b`, 'i'),
];
const SYSTEMS: readonly [YarnCountSystem, readonly RegExp[]][] = [
  ['metric', forms('nm')],
  ['cotton', forms('nec?|cotton count')],
  ['worsted', forms('worsted count|nw')],
  ['denier', forms('denier|den')],
];

/** Indexes of the tokens that a match covers. */
function wordsOf(sheet: Sheet, match: RegExpExecArray): Words | undefined {
  const to = match.index + match[0].length;
  const inside = sheet.tokens.flatMap(({ start, end }, i) => (end > match.index && start < to ? [i] : []));
  const [from] = inside;
  return from === undefined ? undefined : { from, to: inside.at(-1) ?? from };
}

/**
 * A yarn count in another system than tex: `Nm 2/28`, `8/2 Ne`, `500 denier`. Of a ply the smaller figure is how many
 * threads, whichever way round it is written.
 */
export function countAt(sheet: Sheet): (Words & { tex: number }) | undefined {
  for (const [system, ways] of SYSTEMS) {
    for (const way of ways) {
      const match = way.exec(sheet.text);
      const words = match && wordsOf(sheet, match);
      if (!match || !words) continue;
      const [first, second = 1] = [match[1], match[2]].map((figure) => figure && Number(figure.replace(',', '.')));
      const [a, b] = [Number(first), Number(second)];
      const ply = match[2] === undefined ? 1 : Math.min(a, b);
      const single = match[2] === undefined ? a : Math.max(a, b);
      const count = system === 'denier' ? single * ply : single / ply;
      const tex = texOf(count, system);
      return {
        ...words,
        tex: tex.ok ? tex.value : (tex.problems[0]?.code === 'tex_out_of_range' && tex.problems[0].givenTex) || 0,
      };
    }
  }
  return undefined;
}

const WRAPS = /\b(\d+(?:\.\d+)?)\s?(?:wpi|wraps?(?: (?:per|to the|an|a) inch)?)\b/i;

/** The category that wraps to the inch tell by a rule of thumb, the middle one where several may be. */
export function wrapsAt(sheet: Sheet): (Words & { number: number }) | undefined {
  const match = WRAPS.exec(sheet.text);
  const words = match === null ? undefined : wordsOf(sheet, match);
  const found = match === null ? [] : yarnWeightsWrapped(Number(match[1]));
  const middle = found[Math.floor((found.length - 1) / 2)];
  return words && middle ? { ...words, number: middle.number } : undefined;
}

/** Claims the words of a yarn count, whose figures are no rows and no sizes, until the gauge is read: their indexes. */
export function hiddenCounts(sheet: Sheet): number[] {
  const found = countAt(sheet) ?? wrapsAt(sheet);
  const free = found === undefined ? [] : indexesBetween(found.from, found.to).filter((i) => isFree(sheet, i));
  claim(sheet, 'yarn count', ...free);
  return free;
}
