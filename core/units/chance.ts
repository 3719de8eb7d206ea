/** The least per cent of each word, most certain first. */
const WORDS: readonly [fromPercent: number, word: string][] = [
  [95, 'nearly certain'],
  [80, 'very likely'],
  [60, 'likely'],
  [40, 'about an even chance'],
  [20, 'less likely than not'],
  [0, 'unlikely'],
];

/**
 * A chance as words with the number after it; the word follows the printed number. Never 0 % or 100 %.
 * Readers take such words as meant far more often with the number beside them.
 * @source Wintle et al., PLoS ONE 14 (2019) e0213522, doi 10.1371/journal.pone.0213522
 */
export function printedChance(chance: number): string {
  const percent = Math.round(chance * 100);
  const word = WORDS.find(([from]) => percent >= from)?.[1] ?? 'unlikely';
  return `${word} (${percentOf(chance)})`;
}

/** A word for chances, with the whole per cents it stands for. */
export type ChanceWord = { word: string; fromPercent: number; toPercent: number };

/** Every word for a chance, most certain first. */
export const CHANCE_WORDS: readonly ChanceWord[] = WORDS.map(([fromPercent, word], i) => ({
  word,
  fromPercent,
  toPercent: (WORDS[i - 1]?.[0] ?? 101) - 1,
}));

/** The number alone, held between under 1% and over 95%. */
export function percentOf(chance: number): string {
  const percent = Math.round(chance * 100);
  if (percent < 1) return 'under 1%';
  return percent > 95 ? 'over 95%' : `${percent}%`;
}
