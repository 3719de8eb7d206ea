import { describe, expect, test } from 'vitest';
import { read } from '../../bot/language/read.js';
import type { Value } from '../../bot/request.js';
import { PLAIN } from './reading.js';

const leftover = (text: string): string[] => read(text, PLAIN).trace.leftover;

describe('a person of no published size is left out with the reason', () => {
  test.each([
    ['hat for a 9 year old', ['9 year old: no published size for 9 years']],
    ['hat for a 17 year old boy', ['17 year old boy: no published size for 17 years']],
    ['hat for a 61 month old', ['61 month old: no published size for 61 months']],
    ['wrist warmers for a toddler 4 in long', ['toddler: no published size for 2 years']],
    ['hat for a teenager', ['teenager: no published size for teenagers']],
    ['hat for an adult', ['adult: say woman or man']],
    ['hat for a 30 year old', ['30 year old: say woman or man']],
    ['hat for kids', ['kids: say the age']],
    ['hat for 3 kids', ['kids: say the age']],
    ['hats for baby to adult', []],
    ['hats for kids to adults', ['kids to adults: say one of them']],
    ['hats for a woman and a 9 year old', ['9 year old: no published size for 9 years']],
    ['hats for 2, 4 and 6 year olds', ['6 year olds: no published size for 6 years']],
    ['hats for women and men, 6 of them', ['6 of them']],
    ['hat for a 16 year old boy with a 56 cm head', []],
  ])('%s', (text, left) => {
    expect(leftover(text)).toEqual(left);
  });
});

describe('what was not used is named', () => {
  test.each([
    ['hat for a large man', ['large']],
    ['a hat for 3 women', ['3']],
    ['headband 56 cm head 10% larger', ['10% larger']],
    ['headband 56 cm head 5% positive ease', ['5% positive ease']],
    ['headband 56 cm head +10%', ['+10%']],
    ['headband 56 cm head, 80% wool', ['80%', 'wool']],
    ['hat for a woman 10% ease', ['10% ease']],
    ['pouch 11 in wide 10% smaller', ['10% smaller']],
    ['hat in 2 year old yarn', ['2 year']],
  ])('%s', (text, left) => {
    expect(leftover(text)).toEqual(left);
  });
});

test('a size of a person says whose it is, in the words typed', () => {
  const headOf = (text: string): Value | undefined => {
    const [meaning] = read(text, PLAIN).meanings;
    return meaning?.kind === 'plan' ? meaning.ask.values.head : undefined;
  };
  expect(headOf('hat for a 6 month old girl')).toMatchObject({
    said: '6 month old girl',
    assumed: 'body',
    body: { label: 'head', person: { is: 'child', months: 6, sex: 'girl' } },
  });
  expect(headOf("women's hat")).toMatchObject({ said: "women's", body: { person: { is: 'woman' } } });
});

test.each([
  ['3 wrist warmers for a woman', ['3: two are knitted as a pair, so say how many pairs']],
  ['mug sleeve with a handle', ['handle: say its size']],
  ['drawstring bag 20 cm tall with a zip', ['zip: say its size']],
  ['leg warmers 40 cm long hand 20 cm', ['hand 20 cm']],
  ['throw 48x60 in strips of 6in', ['strips of 6in: say how many, such as "6 strips"']],
  ["headband for my daughter she's 7", ["daughter she's 7: no published size for 7 years"]],
  ['hat for my son', ['son: say the age']],
  ['sleeve for a mug 26 cm round', []],
])('of "%s" what could not be used is named', (text, left) => {
  expect(leftover(text)).toEqual(left);
});
