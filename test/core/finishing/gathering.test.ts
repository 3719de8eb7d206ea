import { describe, expect, test } from 'vitest';
import {
  gatherFoldSteps,
  gatherSteps,
  gatherTail,
  gatherTailMm,
  plugRadiusMm,
} from '../../../core/finishing/gathering.js';
import { printed } from '../../../core/units/print.js';
import { say, type Words } from '../../../core/words.js';

const text = (words: Words | undefined) => (words === undefined ? '' : printed(words, { units: 'cm' }));

describe('gathering live loops', () => {
  const steps = gatherSteps({ needles: 48, stitchMm: 7.5 }, say`the last row`);

  test('threads each of them twice and takes out the waste of that end', () => {
    expect(steps.map((s) => [s.driver, s.count])).toEqual([
      ['gather', 96],
      ['take_out_waste', 5],
      [undefined, 0],
    ]);
    expect(text(steps[0]?.say)).toBe('Thread the 48 loops of the last row on the tail there, twice round.');
  });

  // Yarn of 1.5 mm: 1.5·√(48/1.6) = 8.2 mm.
  test('draws them to as small a bunch as their yarn allows', () => {
    expect(plugRadiusMm(48, 7.5)).toBeCloseTo(8.2, 1);
    expect(text(steps[2]?.say)).toContain('until the bunch is about 1.6 cm across and no hole shows');
  });

  // 2·48·7.5 + 300.
  test('takes a tail twice round and an end', () => {
    expect(gatherTailMm(48 * 7.5)).toBe(1020);
    expect(gatherTail(360).lengthMm).toBe(1020);
  });

  test('without known needles goes by the fabric instead', () => {
    const [thread, , draw] = gatherSteps({ needles: undefined, stitchMm: undefined }, say`the last row`);
    expect(thread?.count).toBe(0);
    expect(text(thread?.say)).toContain('all the loops of the last row');
    expect(text(draw?.say)).toContain('until no hole shows');
    expect(gatherTail(undefined).lengthMm).toBeUndefined();
    expect(text(gatherTail(undefined).say)).toBe('leave twice the girth and 30 cm to gather with');
  });
});

test('a fold is gathered through every bar, twice', () => {
  expect(gatherFoldSteps(99, 7.5)).toMatchObject([
    { driver: 'gather', count: 198 },
    { id: 'draw_up', count: 0 },
  ]);
});
