import { describe, expect, test } from 'vitest';
import { bodySteps, endSteps, startSteps, tidySteps } from '../../../core/finishing/knitting.js';
import { printed } from '../../../core/units/print.js';
import { say } from '../../../core/words.js';

const made = { needles: 46, rows: 106, rowMm: 5.08, measureAtRow: 50 };
const tail = { lengthMm: 1445.6, say: say`a tail` };

describe('the rows of a piece', () => {
  test('stop to be measured and then go on, every stitch counted once', () => {
    const steps = bodySteps(made);
    expect(steps.map((s) => [s.id, s.count])).toEqual([
      ['rows_to_measure', 50 * 46],
      ['measure', 1],
      ['rows', 56 * 46],
    ]);
    // 50 rows of 5.08 mm are 254 mm.
    expect(steps.map((s) => printed(s.say, { units: 'in' }))[1]).toContain('come to about 10 in');
  });

  test('too few to measure are cranked at one go', () => {
    expect(bodySteps({ ...made, measureAtRow: undefined }).map((s) => s.count)).toEqual([106 * 46]);
  });

  test('are counted as nothing while the needles are not known', () => {
    expect(bodySteps({ ...made, needles: undefined }).map((s) => s.count)).toEqual([0, 1, 0]);
  });
});

describe('the waste yarn', () => {
  test('is five rows before the piece and five after', () => {
    const waste = [...startSteps(made, tail), ...endSteps(made, tail)].flatMap((s) => s.yarn ?? []);
    expect(waste).toEqual([
      { role: 'waste', stitches: 5 * 46 },
      { role: 'main', lengthMm: 1445.6 },
      { role: 'main', lengthMm: 1445.6 },
      { role: 'waste', stitches: 5 * 46 },
    ]);
  });

  test('comes with no length for a tail that is told by the fabric', () => {
    const bare = startSteps(made, { lengthMm: undefined, say: say`a tail` });
    expect(bare.find((s) => s.id === 'join_main')?.yarn).toEqual([]);
  });
});

test('a piece ends with its ends woven in, its tools counted and its size taken', () => {
  expect(tidySteps(6, 'width').map((s) => [s.driver, s.count])).toEqual([
    ['weave_in', 6],
    ['check', 1],
  ]);
});
