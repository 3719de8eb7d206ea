/** Edits between two words, a swap of neighbours counting as one. */
export function editDistance(a: string, b: string): number {
  const rows: number[][] = Array.from({ length: a.length + 1 }, (_, i) => [i]);
  for (let j = 1; j <= b.length; j++) (rows[0] as number[])[j] = j;
  const at = (i: number, j: number): number => rows[i]?.[j] ?? Number.POSITIVE_INFINITY;
  for (let i = 1; i <= a.length; i++) {
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      const swapped =
        i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
          ? at(i - 2, j - 2) + 1
          : Number.POSITIVE_INFINITY;
      (rows[i] as number[])[j] = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + same, swapped);
    }
  }
  return at(a.length, b.length);
}

/** Four letters with another in one place are mostly a word of their own: a `flap` is not `flat`. */
const isOtherWord = (word: string, trade: string): boolean =>
  word.length === 4 && trade.length === 4 && [...word].filter((letter, i) => letter !== trade[i]).length === 1;

/**
 * The one trade word that a mistyped word can stand for: same first letter, at least four letters, one edit away
 * (two from eight letters on), and no other candidate as near.
 */
export function nearWord(word: string, tradeWords: readonly string[]): string | undefined {
  if (word.length < 4) return undefined;
  const most = word.length >= 8 ? 2 : 1;
  const near = tradeWords
    .filter((trade) => trade[0] === word[0] && trade.length >= 4 && Math.abs(trade.length - word.length) <= most)
    .map((trade) => ({ trade, distance: editDistance(word, trade) }))
    .filter(({ trade, distance }) => distance <= most && !isOtherWord(word, trade));
  const least = Math.min(...near.map(({ distance }) => distance));
  const best = near.filter(({ distance }) => distance === least);
  return best.length === 1 ? best[0]?.trade : undefined;
}
