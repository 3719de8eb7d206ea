import { describe, expect, test } from 'vitest';
import { notionsFor } from '../../core/notions.js';
import { cushionCover } from '../../core/pieces/cushion-cover.js';
import { limbWarmers } from '../../core/pieces/limb-warmers.js';
import { pouch } from '../../core/pieces/pouch.js';
import { scarf } from '../../core/pieces/scarf.js';
import { stuffedBall } from '../../core/pieces/stuffed-ball.js';
import { uprightPouch } from '../../core/pieces/upright-pouch.js';
import { wreathCover } from '../../core/pieces/wreath-cover.js';
import type { Plan } from '../../core/plan.js';
import { printed } from '../../core/units/print.js';
import { atHand, EVEN, mm, planOf } from './samples.js';

const cm = (plan: Plan): string[] => atHand(plan).map((words) => printed(words, { units: 'cm' }));
const inches = (plan: Plan): string[] => atHand(plan).map((words) => printed(words, { units: 'in' }));
const even = (piece: Parameters<typeof planOf>[0], values: Parameters<typeof planOf>[1], pieces: number): Plan =>
  planOf(piece, values, { needles: 48, measurements: EVEN, pieces });

const WARMERS = { calf: mm(373.3), length: mm(350), ankle: mm(215.7) };

describe('notions for 12', () => {
  test('count things twelve times, and leave what is said of each', () => {
    expect(cm(planOf(pouch, { closure: mm(203.2) }, { pieces: 12 }))).toEqual([
      '12 closures of 8 in (20 cm)',
      '24 rings, 2.5 cm kept for each',
    ]);
    expect(cm(even(cushionCover, { width: mm(300) }, 12))[0]).toBe('12 cushion forms of 30 cm by 30 cm');
  });

  // 2·√(250² + ((271.78 − 100)/2)²) + 100 + 80 = 708.7 mm, cut at 75 cm: twelve of those are 9 m, not 8.5.
  test('add up what is cut as it is cut', () => {
    const strapped = planOf(pouch, { closure: mm(203.2), strap: mm(250) }, { pieces: 12 });
    expect(cm(strapped)[0]).toBe('12 straps of 75 cm (9 m altogether)');
    // 28 in twelve times are 9 1/3 yd.
    expect(inches(strapped)[0]).toBe('12 straps of 28 in (9.4 yd altogether)');
    expect(notionsFor(strapped.notions, 12)[0]).toMatchObject({
      id: 'strap',
      count: 12,
      cutMm: expect.closeTo(708.7, 0),
    });
  });

  test('put what is said of each behind the sum', () => {
    expect(cm(even(uprightPouch, { height: mm(208) }, 12))).toEqual([
      '12 cords of 65 cm (7.8 m altogether), 0.5 cm thick',
    ]);
    expect(cm(even(wreathCover, { outside: mm(300), girth: mm(160) }, 2))).toEqual([
      '2 ring forms 30 cm across and 16 cm round',
      '2 hanging cords of 15 cm (30 cm altogether)',
    ]);
  });

  // π·114.59³/6000 · 0.03 = 23.64 g.
  test('weigh a stuff before it is rounded', () => {
    const balls = even(stuffedBall, { diameter: mm(114.6) }, 12);
    expect(cm(balls)).toEqual(['about 284 g of stuffing']);
    expect(notionsFor(balls.notions, 12)).toMatchObject([{ id: 'stuffing', massG: expect.closeTo(283.6, 1) }]);
  });

  test('count the parts of a pair once', () => {
    const pairs = (pieces: number) => cm(planOf(limbWarmers, WARMERS, { needles: 46, measurements: EVEN, pieces }));
    expect(pairs(1)).toEqual(['2 elastics of 25 cm (50 cm altogether)']);
    expect(pairs(12)).toEqual(['24 elastics of 25 cm (6 m altogether)']);
  });

  test('multiply what is many already', () => {
    // 42 strands of 280 mm, cut at 30 cm.
    const fringed = { length: mm(1500), fringe: mm(120) };
    expect(cm(even(scarf, fringed, 1))).toEqual(['42 strands of 30 cm (12.6 m altogether) for the fringe']);
    expect(cm(even(scarf, fringed, 12))).toEqual(['504 strands of 30 cm (151.2 m altogether) for the fringe']);
  });
});

test('one thing is told with its article', () => {
  expect(
    cm({ ...planOf(pouch, { width: mm(279.4) }), notions: [{ id: 'elastic', count: 1, one: 'elastic', cutMm: 525 }] }),
  ).toEqual(['an elastic of 55 cm']);
});
