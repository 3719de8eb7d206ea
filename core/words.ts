/** A sentence as data: fixed parts and figures between them, printed later in the units of whoever reads it. */
export type Words = { readonly parts: readonly string[]; readonly figures: readonly Figure[] };

export type Figure =
  /** A dimension of the work, printed to what a ruler can show. */
  | { is: 'length'; mm: number }
  /** From one dimension to another: `10 1/2 to 11 in`. */
  | { is: 'range'; loMm: number; hiMm: number }
  /** A length to leave or cut: rounded up, never down; cut so many times, all of them together. */
  | { is: 'tail'; mm: number; times?: number }
  | { is: 'mass'; g: number }
  | { is: 'count'; count: number; one: string; many: string }
  | { is: 'number'; value: number }
  /** A chance, in words with its number. */
  | { is: 'chance'; chance: number }
  | { is: 'text'; text: string }
  | { is: 'words'; words: Words }
  /** Words in the units that the reader does not use. */
  | { is: 'others'; words: Words }
  /** Words that the short form of a sentence keeps. */
  | { is: 'key'; words: Words };

/** Builds {@link Words} from a template: ``say`Leave a tail of ${tail(914)}` ``. Strings stand for themselves. */
export function say(parts: TemplateStringsArray, ...figures: (Figure | Words | string | number)[]): Words {
  return { parts: [...parts], figures: figures.map(asFigure) };
}

function asFigure(figure: Figure | Words | string | number): Figure {
  if (typeof figure === 'string') return { is: 'text', text: figure };
  if (typeof figure === 'number') return { is: 'number', value: figure };
  return 'parts' in figure ? { is: 'words', words: figure } : figure;
}

/** Key words of a step, which its checklist keeps: ``say`${key`Crank ${5} rows`} of waste yarn.` ``. */
export const key = (...words: Parameters<typeof say>): Figure => ({ is: 'key', words: say(...words) });

/** The key words of a sentence alone, in order; empty for one without. */
export function inShort(words: Words): Words {
  const keys = keysIn(words);
  return { parts: ['', ...keys.slice(1).map(() => '; '), ...(keys.length === 0 ? [] : [''])], figures: keys };
}

const keysIn = ({ figures }: Words): Figure[] =>
  figures.flatMap((figure) =>
    figure.is === 'key' ? { is: 'words', words: figure.words } : figure.is === 'words' ? keysIn(figure.words) : [],
  );

/** A dimension of the work, in mm. */
export const length = (mm: number): Figure => ({ is: 'length', mm });
/** A range of a dimension, in mm. */
export const range = (loMm: number, hiMm: number): Figure => ({ is: 'range', loMm, hiMm });
/** A length to leave or cut, in mm, printed rounded up; or what so many such lengths come to. */
export const tail = (mm: number, times = 1): Figure => ({ is: 'tail', mm, ...(times > 1 && { times }) });
/** A mass, in grams. */
export const mass = (g: number): Figure => ({ is: 'mass', g });
/** The same again in the other system, for brackets. */
export const inOthers = (words: Words): Figure => ({ is: 'others', words });
/** A number of things, with its singular and plural. */
export const count = (n: number, one: string, many = `${one}s`): Figure => ({ is: 'count', count: n, one, many });
/** A chance between 0 and 1. */
export const chance = (chance: number): Figure => ({ is: 'chance', chance });
