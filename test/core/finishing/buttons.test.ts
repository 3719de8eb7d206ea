import { describe, expect, test } from 'vitest';
import { buttonAndLoopSteps, buttonNotion, buttonsAlong, ligneMm, loopMm } from '../../../core/finishing/buttons.js';
import { MM_PER } from '../../../core/units/units.js';

describe('buttons along an edge', () => {
  test('are one for each 50 mm, and at least one, half a space from either end', () => {
    expect(buttonsAlong(180)).toEqual({ buttons: 4, apartMm: 45, firstMm: 22.5 });
    expect(buttonsAlong(20)).toEqual({ buttons: 1, apartMm: 20, firstMm: 10 });
    expect(buttonNotion(180).count).toBe(4);
  });

  test('are counted once for their loops and once for themselves, the loops cut from the main yarn', () => {
    const [loops, buttons] = buttonAndLoopSteps(120);
    expect([loops?.count, buttons?.count]).toEqual([2, 2]);
    // 2·(20.32 + 4) + 30 = 78.64 mm each.
    expect(loops?.yarn).toEqual([{ role: 'main', lengthMm: expect.closeTo(157.28, 6) }]);
  });
});

test('forty lignes are an inch', () => {
  expect(ligneMm(40)).toBeCloseTo(MM_PER.in, 9);
});

test('a loop goes round the button and has ends to sew in', () => {
  expect(loopMm(20, 4)).toBe(78);
});
