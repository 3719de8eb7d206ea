import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainTube } from '../../core/pieces/plain-tube.js';
import { plan } from '../../core/plan.js';
import { rowsFor } from '../../core/sizing/rows.js';
import { chanceEnough, leastBalls } from '../../core/yarn/enough.js';
import { lasting, reachableWindow, rowsLeft, yarnToComeM } from '../../core/yarn/left.js';
import { striped } from '../../core/yarn/stripes.js';
import { FOLDED_RING, mm, planOf, THREE_SWATCHES, WINDOW } from '../core/samples.js';
import { FIXED, input, unprintable } from './asking.js';

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const yarn = fc.option(
  fc.record({
    tex: fc.option(share(20, 20_000), { nil: undefined }),
    samples: fc.array(
      fc.oneof(
        fc.record({
          is: fc.constant('weighed' as const),
          stitches: fc.integer({ min: 1, max: 50_000 }),
          massG: share(0.1, 2000),
          otherMm: share(0, 5000),
        }),
        fc.record({
          is: fc.constant('unravelled' as const),
          stitches: fc.integer({ min: 1, max: 500 }),
          lengthMm: share(1, 20_000),
        }),
      ),
      { maxLength: 4 },
    ),
  }),
  { nil: undefined },
);

describe('the yarn of any plan', () => {
  test('is finite and its parts are its whole, whatever was weighed or unravelled', () => {
    let known = 0;
    fc.assert(
      fc.property(input, yarn, (asked, yarn) => {
        const outcome = plan({ ...asked, yarn });
        expect(unprintable(outcome)).toEqual([]);
        if (!outcome.ok || outcome.value.yarn === undefined) return;
        known += 1;
        const { parts, lengthM } = outcome.value.yarn;
        const each = Object.values(parts);
        expect(Math.min(...each)).toBeGreaterThanOrEqual(0);
        expect(each.reduce((a, b) => a + b)).toBeCloseTo(lengthM, 6);
      }),
      FIXED,
    );
    expect(known).toBeGreaterThan(FIXED.numRuns / 10);
  });

  test('is never less for more rows', () => {
    const needed = (lengthMm: number) => {
      const { rows, yarn } = planOf(plainTube, { length: mm(lengthMm) });
      return { rows, lengthM: yarn?.lengthM ?? Number.NaN };
    };
    fc.assert(
      fc.property(share(100, 2000), share(0, 500), (lengthMm, more) => {
        const [short, long] = [needed(lengthMm), needed(lengthMm + more)];
        expect(long.rows).toBeGreaterThanOrEqual(short.rows);
        expect(long.lengthM).toBeGreaterThanOrEqual(short.lengthM);
      }),
      FIXED,
    );
  });

  test('kept back for what comes beside the rows is never more than all of it', () => {
    fc.assert(
      fc.property(input, fc.boolean(), (asked, isBegun) => {
        const outcome = plan(asked);
        if (!outcome.ok || outcome.value.yarn === undefined) return;
        const { steps, yarn, rows, parts, needles = 0 } = outcome.value;
        const toCome = yarnToComeM(steps, yarn.loop.mm, needles * rows * parts, isBegun);
        expect(toCome).toBeGreaterThanOrEqual(0);
        expect(toCome).toBeLessThanOrEqual(yarn.lengthM + 1e-9);
      }),
      FIXED,
    );
  });
});

test('stripes of any colours take as much for their rows as the rows do, to 1 mm', () => {
  const repeat = fc.array(
    fc.record({ colour: fc.constantFrom('a', 'b', 'c', 'd'), rows: fc.integer({ min: 1, max: 40 }) }),
    {
      minLength: 1,
      maxLength: 8,
    },
  );
  fc.assert(
    fc.property(
      repeat,
      fc.integer({ min: 40, max: 2000 }),
      fc.boolean(),
      fc.integer({ min: 3, max: 200 }),
      share(5, 60),
      (repeat, rows, ring, needles, loopMm) => {
        const outcome = striped({ repeat, rows, ring, needles, loopMm });
        if (!outcome.ok) throw new Error('stripes were refused');
        const { colours, runs, meeting, repeatRows, ends } = outcome.value;
        const rowsM = colours.reduce((all, one) => all + one.rowsM, 0);
        expect(Math.abs(rowsM - (rows * needles * loopMm) / 1000)).toBeLessThan(0.001);
        expect(runs.reduce((all, run) => all + run.rows, 0)).toBe(rows);
        expect(runs.at(-1)?.to).toBe(rows);
        const endsM = colours.reduce((all, one) => all + one.endsM, 0);
        expect(endsM).toBeCloseTo(ends * 0.15, 9);
        expect((meeting.add + (meeting.drop ?? rows + (ring ? 1 : 0))) % repeatRows).toBe(0);
      },
    ),
    FIXED,
  );
});

const left = fc.record({ left: share(0, 500), toCome: share(0, 20), perRow: share(0.01, 5), cv: share(0.01, 0.3) });

describe('rows left', () => {
  test('with the yarn kept back never take more than there was, and promise no more than is expected', () => {
    fc.assert(
      fc.property(left, (yarn) => {
        const { expected, promised } = rowsLeft(yarn);
        expect(promised).toBeLessThanOrEqual(expected);
        if (expected > 0) expect(expected * yarn.perRow + yarn.toCome).toBeLessThanOrEqual(yarn.left * (1 + 1e-12));
      }),
      FIXED,
    );
  });

  test('last wherever no more are to go than are promised, and need a new ball by the last of those otherwise', () => {
    fc.assert(
      fc.property(left, fc.integer({ min: 0, max: 200 }), fc.integer({ min: 1, max: 500 }), (yarn, at, toGo) => {
        const { promised, lasts, joinBy, chance } = lasting(yarn, at, at + toGo);
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(1);
        expect(lasts).toBe(toGo <= promised);
        expect(joinBy).toBe(lasts ? undefined : at + promised);
      }),
      FIXED,
    );
  });
});

test('the window that rows still reach is one whose best rows they are', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 800 }), (most) => {
      const reach = reachableWindow(WINDOW, FOLDED_RING, THREE_SWATCHES, most);
      if (reach === undefined) throw new Error('no window');
      expect(rowsFor(reach, FOLDED_RING, THREE_SWATCHES).rows).toBe(most);
    }),
    FIXED,
  );
});

describe('balls', () => {
  const need = fc.record({ lengthM: share(1, 5000), cv: share(0.01, 0.3) });

  test('are as few as are enough, and more of them are enough more often', () => {
    fc.assert(
      fc.property(need, share(10, 1000), share(0.5, 0.99), (need, ballM, sure) => {
        const { balls, chance } = leastBalls(need, ballM, sure);
        const chanceOf = (balls: number) => chanceEnough(need, [{ balls, lengthM: ballM }]);
        expect(chance).toBeGreaterThanOrEqual(sure);
        if (balls > 1) expect(chanceOf(balls - 1)).toBeLessThan(sure);
        expect(chanceOf(balls + 1)).toBeGreaterThanOrEqual(chance);
      }),
      FIXED,
    );
  });
});
