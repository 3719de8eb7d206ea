import { type Printing, plainNumber, printed, printedRange, type Words } from '../../core/index.js';
import { joined } from './names.js';

/** Sentences of one of several sizes, by its name. */
export type Told = { name: string; words: readonly Words[] };

type Figure = Words['figures'][number];
type Group = { names: string[]; words: Words[] };

/**
 * What several sizes say, each sentence once: `10% less round than a head of 48 cm, 52 cm and 56 cm`. Sentences that
 * differ in their figures alone are one; one that not all sizes have comes after, led by the names of those that do.
 * @param inSpans true to tell of many lengths or numbers only the least and the most
 */
export function merged(sizes: readonly Told[], printing: Printing, inSpans = false): string[] {
  const groups = new Map<string, Group>();
  for (const { name, words } of sizes) {
    for (const one of words) {
      const key = frameOf(one);
      const group = groups.get(key) ?? { names: [], words: [] };
      groups.set(key, { names: [...group.names, name], words: [...group.words, one] });
    }
  }
  const isOfAll = ({ names }: Group): boolean => new Set(names).size === sizes.length;
  const [all, some] = [true, false].map((one) => [...groups.values()].filter((group) => isOfAll(group) === one));
  const text = (words: readonly Words[]): string => together(words, { printing, inSpans });
  return [
    ...(all ?? []).map(({ words }) => text(words)),
    ...(some ?? []).map(({ names, words }) => `${joined([...new Set(names)])}: ${text(words)}`),
  ];
}

type How = { printing: Printing; inSpans: boolean };

/** A sentence without its figures: what is left is the same wherever the same is said. */
const frameOf = ({ parts, figures }: Words): string => JSON.stringify([parts, figures.map(frameOfFigure)]);

function frameOfFigure(figure: Figure): string {
  if ('words' in figure) return frameOf(figure.words);
  return figure.is === 'text' ? figure.text : figure.is;
}

/** Sentences of one frame as one, their figures listed where they differ. */
function together(all: readonly Words[], how: How): string {
  const [first] = all;
  if (first === undefined) return '';
  return first.parts
    .map((part, i) => {
      const figures = all.flatMap(({ figures }) => figures[i] ?? []);
      return figures.length === 0 ? part : part + listed(figures, how);
    })
    .join('');
}

/** More figures than these are told as a span where that may be. */
const MOST_LISTED = 3;

function listed(figures: readonly Figure[], how: How): string {
  const inner = figures.flatMap((figure) => ('words' in figure ? [figure.words] : []));
  if (inner.length > 0) return together(inner, how);
  const { printing, inSpans } = how;
  const texts = figures.map((figure) => printed({ parts: ['', ''], figures: [figure] }, printing));
  if (new Set(texts).size === 1) return texts[0] ?? '';
  return (inSpans && figures.length > MOST_LISTED ? spanOf(figures, printing) : undefined) ?? joined(texts);
}

/** From the least to the most of lengths or numbers; undefined for figures of another kind. */
function spanOf(figures: readonly Figure[], { units }: Printing): string | undefined {
  const mms = figures.flatMap((figure) => (figure.is === 'length' ? [figure.mm] : []));
  const numbers = figures.flatMap((figure) => (figure.is === 'number' ? [figure.value] : []));
  if (mms.length === figures.length) return printedRange(Math.min(...mms), Math.max(...mms), units);
  if (numbers.length < figures.length) return undefined;
  return `${plainNumber(Math.min(...numbers))} to ${plainNumber(Math.max(...numbers))}`;
}
