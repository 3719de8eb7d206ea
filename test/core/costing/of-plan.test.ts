import { describe, expect, test } from 'vitest';
import { bill } from '../../../core/costing/bill.js';
import { itemsOf, type NotionPrice } from '../../../core/costing/of-plan.js';
import type { Notion } from '../../../core/piece.js';
import { pouch } from '../../../core/pieces/pouch.js';
import { scarf } from '../../../core/pieces/scarf.js';
import { mm, planOf } from '../samples.js';
import { eur, made } from './samples.js';

const rate = (minor: number, per = 1) => ({ is: 'rate' as const, ...eur(minor), per });
const each = (minor: number): NotionPrice => ({ ...rate(minor), by: 'piece' });
const pouchTakes = { yarnM: 133.2, notions: planOf(pouch, { closure: mm(203.2) }).notions, hours: 1.4 };
const UNPRICED = { yarn: undefined, notions: {}, packing: undefined, hour: undefined };

// Worked by hand: 133.2 m of a ball of 105 m at 6.20 is 7.8651; two rings at 0.30; a closure at 1.20.
test('a pouch is billed by the yarn in it, each of its notions, packing and time', () => {
  const prices = {
    yarn: rate(620, 105),
    notions: { rings: each(30), closure: each(120) },
    packing: rate(85),
    hour: rate(1600),
  };
  const found = made(bill(itemsOf(pouchTakes, prices), { is: 'none' }));
  expect(found.lines.map(({ id, minor }) => [id, minor])).toEqual([
    ['yarn', 787],
    ['closure', 120],
    ['rings', 60],
    ['packing', 85],
    ['time', 2240],
  ]);
});

test('a notion whose price was never said is named, and none is made up', () => {
  const found = made(bill(itemsOf(pouchTakes, { ...UNPRICED, yarn: rate(620, 105) }), { is: 'none' }));
  expect(found.leftOut.map(({ id }) => id)).toEqual(['closure', 'rings', 'packing', 'time']);
});

test('a fringe is on the bill with the yarn it is cut from', () => {
  const { notions } = planOf(scarf, { length: mm(1500), fringe: mm(120) });
  expect(notions.map(({ id }) => id)).toContain('fringe');
  expect(itemsOf({ ...pouchTakes, notions }, UNPRICED).map(({ id }) => id)).toEqual(['yarn', 'packing', 'time']);
});

describe('a notion is priced by what it is sold by', () => {
  const strap: Notion = { id: 'strap', count: 2, one: 'strap', cutMm: 710 };
  const stuffing: Notion = { id: 'stuffing', massG: 23.6, of: 'stuffing' };
  const item = (notion: Notion, by: NotionPrice['by']) =>
    itemsOf({ ...pouchTakes, notions: [notion] }, { ...UNPRICED, notions: { [notion.id]: { ...rate(100), by } } })[1];

  test('straps by the metre or one by one, stuffing by the gram', () => {
    expect(item(strap, 'metre')?.quantity).toBeCloseTo(1.42, 12);
    expect(item(strap, 'piece')?.quantity).toBe(2);
    expect(item(stuffing, 'gram')?.quantity).toBe(23.6);
  });

  test('and has no price where that is not known of it', () => {
    expect(item({ id: 'cord', count: 1, one: 'cord' }, 'metre')?.price).toBeUndefined();
    expect(item(strap, 'gram')?.price).toBeUndefined();
    expect(item(stuffing, 'piece')?.price).toBeUndefined();
  });
});
