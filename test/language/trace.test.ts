import { expect, test } from 'vitest';
import { read } from '../../bot/language/read.js';
import { PLAIN } from './reading.js';
import { IN_HAND, POUCH } from './requests/row.js';

const used = (text: string, given = {}) =>
  read(text, { ...PLAIN, ...given }).trace.tokens.map(({ text: words, usedAs }) => `${words} = ${usedAs}`);

test('words that are one request as a whole are traced as that', () => {
  expect(used('undo')).toEqual(['undo = undo, as a whole']);
  expect(used('my gauge', POUCH)).toEqual(['my gauge = show_gauge, as a whole']);
  expect(used('share it with Owen', POUCH)).toEqual(['share it with Owen = share, as a whole']);
  expect(used('I work 2 hours on weekdays')).toEqual(['I work 2 hours on weekdays = set_hours, as a whole']);
  expect(used('', { command: '/gauge' })).toEqual([]);
});

test('of requests joined each part is traced', () => {
  expect(used('undo and start', POUCH)).toEqual(['undo = undo, as a whole', 'start = start, as a whole']);
  expect(used('pouch 11 in wide and share it with Owen')).toEqual([
    'pouch = piece',
    '11 in = Width',
    'wide = Width',
    'and share it with Owen = share, as a whole',
  ]);
});

test('what is to be told first is traced', () => {
  expect(used('yarn for a pouch 11 in wide')).toContain('yarn = told first');
});

test('a typo mended shows how the whole was read', () => {
  const { trace } = read('my guage', PLAIN);
  expect(trace.mended).toEqual([{ from: 'guage', to: 'gauge' }]);
  expect(trace.tokens).toEqual([{ text: 'my guage', usedAs: 'show_gauge, as a whole' }]);
});

test('every request of the work in hand has a trace', () => {
  for (const text of ['start', 'where am i', 'lost count', '+10', 'row 40', 'steps', 'what would help', 'why 109'])
    expect(used(text, IN_HAND), text).not.toEqual([]);
});

test('a request beside others of which no word was used is named as left out', () => {
  const left = (text: string) => read(text, { ...PLAIN, ...IN_HAND }).trace.leftover;
  expect(left('my gauge and what does it cost in bananas')).toEqual(['bananas', 'my gauge']);
  expect(left('pouch 11 in wide and add a gauge')).toEqual(['add a gauge']);
  expect(left('thanks, pouch 11 in wide')).toEqual([]);
  expect(left('pouch 11 in wide and the steps')).toEqual([]);
});
