import { describe, expect, test } from 'vitest';
import { remedies } from '../../core/remedies.js';
import { FOLDED_RING, ONE_SWATCH, WINDOW } from './samples.js';
import { type TWO_PAIRS, workOf } from './work/samples.js';

const of = (stretches: boolean, factors?: typeof TWO_PAIRS) =>
  remedies(WINDOW, FOLDED_RING, { ...workOf(ONE_SWATCH, factors), row: ONE_SWATCH }, 0.3844, stretches);

describe('what would help a pouch planned from one swatch', () => {
  test('is to measure it at rest, best first', () => {
    const [best, ...rest] = of(false);
    expect(best).toEqual({ is: 'measure_at_rest', row: 60, chance: expect.closeTo(0.9917, 4) });
    expect(rest.map((r) => r.chance)).toEqual([...rest.map((r) => r.chance)].sort((a, b) => b - a));
  });

  test('one more piece as long brings .386 to .438, within the width of a whole row', () => {
    expect(of(false).find((r) => r.is === 'swatch')?.chance).toBeCloseTo(0.438, 3);
  });

  test('a pair raises what a hanging reading gives', () => {
    const found = of(false);
    const hanging = found.find((r) => r.is === 'measure_hanging')?.chance ?? 1;
    expect(hanging).toBeCloseTo(0.576, 3);
    expect(found.find((r) => r.is === 'pair')?.chance).toBeGreaterThan(hanging + 0.2);
  });

  test('a wider window only where the maker set no closure', () => {
    expect(of(false).some((r) => r.is === 'wider')).toBe(false);
    expect(of(true).find((r) => r.is === 'wider')).toEqual({
      is: 'wider',
      window: { loMm: 261.7 - 0, hiMm: expect.closeTo(284.4, 6) },
      chance: expect.any(Number),
    });
  });

  test('says nothing that would not help', () => {
    const sure = remedies(
      { loMm: 200, hiMm: 350 },
      FOLDED_RING,
      { ...workOf(ONE_SWATCH), row: ONE_SWATCH },
      0.995,
      true,
    );
    expect(sure).toEqual([]);
  });
});
