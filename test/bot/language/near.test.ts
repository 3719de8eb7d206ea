import { describe, expect, test } from 'vitest';
import { editDistance, nearWord } from '../../../bot/language/near.js';

describe('edits between two words', () => {
  test.each([
    ['gauge', 'gauge', 0],
    ['guage', 'gauge', 1],
    ['puch', 'pouch', 1],
    ['needels', 'needles', 1],
    ['zip', 'zipper', 3],
    ['', 'row', 3],
    ['row', '', 3],
  ])('from "%s" to "%s" are %d, a swap of neighbours being one', (a, b, edits) => {
    expect(editDistance(a, b)).toBe(edits);
    expect(editDistance(b, a)).toBe(edits);
  });
});

describe('a mistyped word', () => {
  const trade = ['gauge', 'needles', 'pouch', 'pouches', 'measured', 'measures', 'zip'];

  test('stands for the one trade word near it', () => {
    expect(nearWord('guage', trade)).toBe('gauge');
    expect(nearWord('neeedles', trade)).toBe('needles');
  });

  test.each([
    ['measurer', 'two words are as near'],
    ['zap', 'it is too short to tell'],
    ['nauge', 'it begins otherwise'],
    ['gougge', 'two edits in six letters are too many'],
  ])('"%s" stands for none: %s', (word) => {
    expect(nearWord(word, trade)).toBeUndefined();
  });
});
