import { expect, test } from 'vitest';
import { count, say, tail } from '../../core/words.js';

test('a sentence keeps its figures as data', () => {
  expect(say`Leave a tail of ${tail(914)}`).toEqual({
    parts: ['Leave a tail of ', ''],
    figures: [{ is: 'tail', mm: 914 }],
  });
});

test('words and numbers within a sentence become figures of their own', () => {
  const inner = say`inner`;
  expect(say`${'a'}${2}${inner}`.figures).toEqual([
    { is: 'text', text: 'a' },
    { is: 'number', value: 2 },
    { is: 'words', words: inner },
  ]);
});

test('a count knows its plural', () => {
  expect(count(2, 'row')).toEqual({ is: 'count', count: 2, one: 'row', many: 'rows' });
});
