import { describe, expect, test } from 'vitest';
import { bodySteps, endSteps, repeated, startSteps, tidySteps } from '../../../core/finishing/knitting.js';
import { printed } from '../../../core/units/print.js';
import { say } from '../../../core/words.js';

const made = { needles: 46, rows: 106, hangingRowMm: 5.08, measureAtRow: 50 };
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
    const words = printed(steps[1]?.say ?? say``, { units: 'in' });
    expect(words).toContain('to the needles, about 10 in');
    // 106 rows of 5.08 mm are 538.5 mm.
    expect(printed(steps[2]?.say ?? say``, { units: 'in' })).toContain('all the rows hang about 21 1/4 in');
  });

  test('too few to measure are cranked at one go', () => {
    expect(bodySteps({ ...made, measureAtRow: undefined }).map((s) => s.count)).toEqual([106 * 46]);
  });

  test('are lifted on the way where they are so many that they pull on themselves', () => {
    const told = (rows: number) => printed(bodySteps({ ...made, rows }).at(-1)?.say ?? say``, { units: 'in' });
    expect([told(60).includes('lift the work'), told(61).includes('lift the work every 60 rows')]).toEqual([
      false,
      true,
    ]);
  });

  test('are counted as nothing while the needles are not known', () => {
    expect(bodySteps({ ...made, needles: undefined }).map((s) => s.count)).toEqual([0, 1, 0]);
  });
});

describe('contrast threads', () => {
  const words = (needles: number | undefined) =>
    startSteps({ needles }, tail, { threads: true }).map((s) => printed(s.say, { units: 'in' }));

  test('mark needle 1 and the needle opposite where the counter is set to 0, and come out at the end', () => {
    expect(words(46).at(-1)).toContain('both counters to 0; tie contrast threads at needles 1 and 24');
    expect(words(undefined).at(-1)).toContain('at needle 1 and opposite');
    expect(printed(tidySteps(6, 'width', true)[0]?.say ?? say``, { units: 'in' })).toContain(
      'take out the contrast threads',
    );
  });

  test('are left out where nothing is folded', () => {
    expect(startSteps(made, tail).map((s) => s.id)).not.toContain('threads');
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

test('the counters are checked before the yarn is cut', () => {
  expect(endSteps(made, tail).map((s) => s.id)).toEqual(['check_counters', 'cut_main', 'waste_off', 'run_off']);
});

test('a piece ends with its ends woven in, its tools counted and its size taken', () => {
  expect(tidySteps(6, 'width').map((s) => [s.driver, s.count])).toEqual([
    ['weave_in', 6],
    ['check', 1],
  ]);
});

test('the steps of a part repeated count for all the parts, also where they were repeated before', () => {
  const [once] = tidySteps(2, 'length');
  if (once === undefined) throw new Error('no steps');
  expect(repeated([once, { ...once, times: 3 }], 2).map((s) => [s.count, s.times])).toEqual([
    [2, 2],
    [2, 6],
  ]);
});
