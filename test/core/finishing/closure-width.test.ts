import { expect, test } from 'vitest';
import { closureWidth } from '../../../core/finishing/closure-width.js';
import { problemsOf } from '../samples.js';

const inches = (n: number) => n * 25.4;
const offersOf = (outcome: ReturnType<typeof closureWidth>) =>
  problemsOf(outcome).flatMap((problem) => ('offers' in problem ? problem.offers.map((o) => o.edit) : []));

// 203.2 + 2·25.4 + 12.7 and 25.4.
test('an 8 in closure with rings of 1 in bounds a width of 266.7 to 279.4 mm', () => {
  expect(closureWidth(inches(8), inches(1), undefined)).toEqual({
    ok: true,
    value: { loMm: expect.closeTo(266.7, 9), hiMm: expect.closeTo(279.4, 9) },
  });
});

test('what else the width needs raises its least', () => {
  expect(closureWidth(inches(8), inches(1), undefined, 270)).toMatchObject({ value: { loMm: 270 } });
  expect(closureWidth(inches(8), inches(1), { loMm: 250, hiMm: 290 }, 270)).toMatchObject({
    value: { loMm: 270, hiMm: 290 },
  });
});

test('a shorter closure is offered only where the width it bounds leaves what else is needed', () => {
  const width = { loMm: 250, hiMm: 260 };
  expect(offersOf(closureWidth(inches(9), inches(1), width)).at(-1)).toEqual({
    closure: { is: 'length', mm: inches(7) },
  });
  expect(offersOf(closureWidth(inches(9), inches(1), width, 255))).toHaveLength(1);
});
