import { expect, test } from 'vitest';
import { isOfUse } from '../../core/of-use.js';
import { limbWarmers } from '../../core/pieces/limb-warmers.js';
import { pouch } from '../../core/pieces/pouch.js';
import { mm } from './samples.js';

const limb = (id: string) => ({ limb: { is: 'choice', id } });

test('an ask that goes with options of a choice is of use with these alone', () => {
  expect(isOfUse(limbWarmers, 'calf', limb('leg'))).toBe(true);
  expect(isOfUse(limbWarmers, 'calf', limb('wrist'))).toBe(false);
  expect(isOfUse(limbWarmers, 'hand', limb('leg'))).toBe(false);
});

test('an option counts as chosen by default, and where all that is given goes with it', () => {
  expect(isOfUse(limbWarmers, 'hand', {})).toBe(true);
  expect(isOfUse(limbWarmers, 'calf', {})).toBe(false);
  expect(isOfUse(limbWarmers, 'ankle', { calf: mm(370) })).toBe(true);
  expect(isOfUse(limbWarmers, 'hand', { calf: mm(370) })).toBe(false);
  expect(isOfUse(limbWarmers, 'hand', { hand: mm(185), calf: mm(370) })).toBe(true);
});

test('every other ask is of use always', () => {
  expect(isOfUse(limbWarmers, 'length', limb('leg'))).toBe(true);
  expect(Object.keys(pouch.asks).every((id) => isOfUse(pouch, id, {}))).toBe(true);
});
