import { describe, expect, test } from 'vitest';
import { pouch } from '../../core/pieces/pouch.js';
import { remedies } from '../../core/remedies.js';
import { between, mm, planOf } from './samples.js';

/** 10 1/2 to 11 in, fixed by a closure; or the usual tolerance about 273 mm. */
const FIXED = remedies(planOf(pouch, { closure: mm(203.2) }));
const STRETCHING = remedies(planOf(pouch, { width: mm(273.05) }));

describe('what would help a pouch planned from one swatch', () => {
  test('is to measure it at rest, best first', () => {
    const [best, ...rest] = FIXED;
    expect(best).toEqual({ is: 'measure_at_rest', row: 60, chance: expect.closeTo(0.9917, 4) });
    expect(rest.map((r) => r.chance)).toEqual([...rest.map((r) => r.chance)].sort((a, b) => b - a));
  });

  test('one more piece as long brings .386 to .438, within the width of a whole row', () => {
    expect(FIXED.find((r) => r.is === 'swatch')?.chance).toBeCloseTo(0.438, 3);
  });

  test('a pair raises what a hanging reading gives', () => {
    const hanging = FIXED.find((r) => r.is === 'measure_hanging')?.chance ?? 1;
    expect(hanging).toBeCloseTo(0.576, 3);
    expect(FIXED.find((r) => r.is === 'pair')?.chance).toBeGreaterThan(hanging + 0.2);
  });

  test('a wider window only where the maker set no closure', () => {
    expect(FIXED.some((r) => r.is === 'wider')).toBe(false);
    const wider = STRETCHING.find((r) => r.is === 'wider');
    expect(wider).toMatchObject({ window: { loMm: expect.any(Number) } });
    expect(wider?.chance).toBeGreaterThan(0.6);
  });

  test('says nothing that would not help', () => {
    expect(remedies(planOf(pouch, { width: between(150, 600) }))).toEqual([]);
  });
});
