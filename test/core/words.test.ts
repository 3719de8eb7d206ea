import { describe, expect, test } from 'vitest';
import { printed, printedRuns } from '../../core/units/print.js';
import { count, inShort, key, length, say, tail } from '../../core/words.js';

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

describe('the short form of a sentence', () => {
  const left = say`${key`leave ${tail(914)}`} to graft with`;
  const words = say`${key`Change`} to the main yarn; ${left}, then measure ${length(254)}.`;
  const cm = (of: typeof words) => printed(of, { units: 'cm' });

  test('is its key words in order, those of sentences within it too', () => {
    expect(cm(inShort(words))).toBe('Change; leave 95 cm');
    expect(cm(inShort(left))).toBe('leave 95 cm');
    expect(cm(inShort(say`Nothing to keep, ${2} times.`))).toBe('');
  });

  test('has the figures of the long one, in any unit', () => {
    expect(printed(inShort(words), { units: 'in' })).toBe('Change; leave 36 in');
    expect(printed(words, { units: 'in' })).toBe(
      'Change to the main yarn; leave 36 in to graft with, then measure 10 in.',
    );
  });

  test('is what a print in runs marks, which joined says the whole', () => {
    const runs = printedRuns(words, { units: 'cm' });
    expect(runs).toEqual([
      { text: 'Change', key: true },
      { text: ' to the main yarn; ', key: false },
      { text: 'leave 95 cm', key: true },
      { text: ' to graft with, then measure 25.5 cm.', key: false },
    ]);
    expect(runs.map(({ text }) => text).join('')).toBe(cm(words));
  });
});
