import { isOfPiece, type Meaning } from './request.js';

/**
 * What may be taken of words that someone else wrote: pieces and their sizes. Their measurements, counts and yarn are not
 * the reader's, and "undo" was not said to us.
 */
export function sizesAlone(meanings: readonly Meaning[]): Meaning[] {
  if (meanings.every(({ kind }) => kind === 'unread')) return [...meanings];
  const sizes = meanings.filter(isOfPiece);
  return sizes.length > 0 ? sizes : [{ kind: 'unread', why: 'no_size', words: '' }];
}
