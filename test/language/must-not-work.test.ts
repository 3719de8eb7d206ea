import { describe, expect, test } from 'vitest';
import type { Context } from '../../bot/language/context.js';
import { read } from '../../bot/language/read.js';
import { meaningOf, PLAIN } from './reading.js';
import { COUNTS_OPEN, IN_HAND, NOVEMBER, POUCH } from './requests/row.js';

/** What sounds like a request about work in hand, and what it means instead. */
const NOT_OF_WORK: readonly [text: string, meaning: string, given?: Partial<Context>][] = [
  ['60 rows, 12 1/4 in', 'record rows=60/311.15', IN_HAND],
  ['60 rows 12 1/4 in hanging', 'record rows=60/311.15 hanging', IN_HAND],
  ['60 rows in 12 1/4', 'record rows=60/311.15', IN_HAND],
  ['needles 46 rows 110 length 22', 'record rows=110/558.8 needles=46', IN_HAND],
  ['110 rows came out at 22 in', 'record rows=110/558.8', IN_HAND],
  ['12 1/4 hanging', 'unread no_work "12 1/4 hanging"'],
  ['form a pouch 11 in wide', 'plan pouch width=279.4'],
  ['what form does it take', 'unread nothing "form"'],
  ['a hat form', 'plan hat'],
  ['pouch 11 in wide, row 79', 'plan pouch width=279.4', IN_HAND],
  ['pouch 11 in wide on row 5', 'plan pouch width=279.4', IN_HAND],
  ['pouch 11 in wide, +2', 'plan pouch width=279.4', IN_HAND],
  ['+1 in', 'unread nothing "+1 in"', IN_HAND],
  ['-46 needles', 'change needles=-46', IN_HAND],
  ['plus 2 rings', 'unread nothing "2 rings"', IN_HAND],
  ['measure at row 79', 'unread nothing "79"', IN_HAND],
  ['why row 79', 'unread nothing "79"', IN_HAND],
  ['what about row 79', 'unread nothing "79"', IN_HAND],
  ['row 60 is wrong', 'unread nothing "60 is wrong"', IN_HAND],
  ['row 40-45', 'unread nothing "40-45"', IN_HAND],
  ['row 60, 49 to go', 'tally to=60', IN_HAND],
  ['row 60, 12 bananas', 'tally to=60', IN_HAND],
  ['10 more in', 'unread nothing "10 more"', IN_HAND],
  ['10 more inches', 'unread nothing "10 more"', IN_HAND],
  ['10 more', 'unread no_work "10 more"', POUCH],
  ['another one', 'unread nothing "another one"', IN_HAND],
  ['one more pouch', 'plan pouch', IN_HAND],
  ['another one, 60 rows 12 1/4', 'record rows=60/311.15', IN_HAND],
  ['12', 'change width=304.8', IN_HAND],
  ['200', 'change width=5080', IN_HAND],
  ['56', 'change width=1422.4', POUCH],
  ['on the 48', 'change machine=48 needles=48', IN_HAND],
  ['start with waste yarn', 'unread nothing "start with waste yarn"', IN_HAND],
  ['start a pouch 11 in wide', 'plan pouch width=279.4'],
  ['start at row 5', 'unread nothing "5"', IN_HAND],
  ['cast on 46 needles', 'record needles=46'],
  ['cast off', 'unread nothing "cast"', IN_HAND],
  ['undone', 'unread nothing "undone"', IN_HAND],
  ['condone it', 'unread nothing "condone"', IN_HAND],
  ['not done yet', 'unread nothing "not done yet"', IN_HAND],
  ['almost done', 'unread nothing "almost done"', IN_HAND],
  ['well done', 'unread nothing "well done"', IN_HAND],
  ['is it done?', 'unread nothing "is it done?"', IN_HAND],
  ['when will it be done', 'show_time', IN_HAND],
  ['done by friday', 'change by=2026-11-13', { ...IN_HAND, ...NOVEMBER }],
  ['finished width 11', 'change width=279.4', IN_HAND],
  ['11 in finished', 'change width=279.4', IN_HAND],
  ['done, weighs 86', 'finish', IN_HAND],
  ['lost', 'unread nothing "lost"', IN_HAND],
  ['I lost my ring', 'unread nothing "I lost my ring"', IN_HAND],
  ['stop', 'drop', IN_HAND],
  ['stop at 11 in', 'change width=279.4', IN_HAND],
  ['use 46', 'change width=1168.4', IN_HAND],
  ['keep 64 rows', 'set_stop 64', POUCH],
  ['keep 64 rows', 'set_stop 64', IN_HAND],
  ['12 1/4', 'reply 311.15', COUNTS_OPEN],
  ['no, make it 12', 'change width=304.8', IN_HAND],
  ['no, 12 wide', 'change width=304.8', IN_HAND],
  ['it was 12', 'unread nothing "12"', IN_HAND],
  ['forget the 46', 'unread nothing "forget the 46"', POUCH],
  ['drop the rings', 'change ring=0', IN_HAND],
  ['remove the 9 in zip', 'change closure=228.6', IN_HAND],
  ['delete everything', 'unread nothing "delete everything"', IN_HAND],
  ['tension 5 to the inch', 'unread nothing "5 to the inch"'],
  ['tension 5 1/2 rows to the inch', 'record rows=22/101.6 counted'],
  ['on 48', 'change machine=48 needles=48', POUCH],
  ['worsted weight', 'unread nothing "worsted weight"'],
  ['same one now 15 3/8', 'record same', POUCH],
  ['use the 48', 'change machine=48 needles=48', IN_HAND],
  ['20 m', 'unread nothing "20 m"'],
  ['60 rows in 12 in, weighs 38', 'record rows=60/304.8'],
  ['60 rows 12.2 in by friday', 'record rows=60/309.88', NOVEMBER],
  ['60 rows 12.2 in on 3 december', 'record rows=60/309.88', NOVEMBER],
  ['60 rows 12.2 in on 31 november', 'record rows=60/309.88', NOVEMBER],
  ['note: new oil', 'unread nothing "note: new oil"'],
  ['pouch 11 in wide yesterday', 'plan pouch width=279.4', NOVEMBER],
];

describe('what only sounds like work in hand is not read as it', () => {
  test.each(NOT_OF_WORK.map(([text, meaning, given]) => ({ text, meaning, given })))('"$text": $meaning', (row) => {
    expect(meaningOf(row.text, row.given)).toBe(row.meaning);
  });
});

describe('a state that is none of the three is left out by name', () => {
  test.each(['blocked', 'steamed', 'felted', 'stretched'])('%s', (state) => {
    for (const text of [`60 rows 12 in ${state}`, `row 60, 12 in ${state}`, `done, 10 7/8 ${state}`]) {
      const { meanings, trace } = read(text, { ...PLAIN, ...IN_HAND });
      expect(trace.leftover, text).toEqual([state]);
      expect(JSON.stringify(meanings), text).not.toMatch(/"state":"/);
    }
  });
});

test('what is left out of a record or a reading is told, word for word', () => {
  const leftover = (text: string) => read(text, { ...PLAIN, ...NOVEMBER }).trace.leftover;
  expect(leftover('row 60, 12 1/4 in, 6 3/4 flat')).toEqual(['6 3/4']);
  expect(leftover('60 rows 12.2 in on 3 december')).toEqual(['on 3 december']);
  expect(leftover('60 rows 12.2 in by friday')).toEqual(['by friday']);
  expect(leftover('done, weighs 86')).toEqual(['weighs 86']);
  expect(leftover('row 60, note: loose')).toEqual(['loose']);
});
