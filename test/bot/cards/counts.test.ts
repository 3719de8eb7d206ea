import { expect, test } from 'vitest';
import { sentenceFor } from '../../../bot/cards/sentences.js';
import { read } from '../../../bot/language/read.js';
import { PLAIN } from '../../language/reading.js';
import { IN_HAND } from '../../language/requests/row.js';

test.each([
  ['Needles', 'change'],
  ['Rows', 'record_gauge'],
  ['Row', 'tally'],
  ['Stop row', 'set_stop'],
])('%s that cannot be are answered with words that say them anew', (label, kind) => {
  const { sayings } = sentenceFor({ code: 'count_outside', label, given: 0, min: 1, max: 400 }, { units: 'in' });
  const { meanings } = read(sayings[0] ?? '', { ...PLAIN, ...IN_HAND });
  expect(meanings.map((meaning) => meaning.kind)).toEqual([kind]);
});
