import { describe, expect, test } from 'vitest';
import { printed } from '../../../core/units/print.js';
import { combined, doubts, type LoopSample, loopEstimate, weighedCv } from '../../../core/yarn/loop-estimate.js';

const FABRIC = { stitchMm: 342.9 / 46, rowMm: 5.08, state: 'rested' } as const;
/** 60 rows of 46 stitches; at 500 tex 38 g of them are loops of 27.54 mm. */
const swatch = (massG: number, more: object = {}): LoopSample => ({ is: 'weighed', stitches: 2760, massG, ...more });
const drawnOut: LoopSample = { is: 'unravelled', stitches: 46, lengthMm: 46 * 27 };

const estimated = (...known: Parameters<typeof loopEstimate>) => {
  const loop = loopEstimate(...known);
  if (loop === undefined) throw new Error('nothing to estimate from');
  return loop;
};

describe('the yarn in a stitch', () => {
  test('is a guess from gauge where nothing was weighed, and open fabric shows the other guess beside it', () => {
    expect(estimated(FABRIC)).toMatchObject({ cv: 0.2, from: 'gauge', peirceMm: undefined, gPerStitch: undefined });
    expect(estimated(FABRIC).mm).toBeCloseTo(26.8234, 4);
    expect(estimated(FABRIC, { tex: 500 }).peirceMm).toBeCloseTo(22.77, 2);
  });

  // Worked by hand: 1e6·38/(500·2760) = 27.536.
  test('is l = 1e6·mass/(tex·stitches) where a swatch was weighed', () => {
    const { sources, from } = estimated(FABRIC, { tex: 500, samples: [swatch(38)] });
    expect(sources.at(-1)).toMatchObject({ from: 'weighed' });
    expect(sources.at(-1)?.mm).toBeCloseTo(27.536, 3);
    expect(from).toBe('weighed');
  });

  // 27.4 (3%), 26.9 (3%) and 26.82 (15%) come to 27.142 at 2.10%.
  test('combines what was told by inverse variance in logs', () => {
    const loop = combined([
      { value: 27.4, cv: 0.03 },
      { value: 26.9, cv: 0.03 },
      { value: 26.82, cv: 0.15 },
    ]);
    expect(loop?.value).toBeCloseTo(27.142, 3);
    expect(loop?.cv).toBeCloseTo(0.021, 4);
    expect(combined([])).toBeUndefined();
  });

  test('says which ways it was told by, and is never surer than 1% however often it was weighed', () => {
    const both = estimated(FABRIC, { tex: 500, samples: [swatch(38), drawnOut] });
    expect(both.from).toBe('combined');
    expect(both.cv).toBeLessThan(0.03);
    expect(estimated(FABRIC, { samples: [drawnOut] }).from).toBe('unravelled');
    expect(estimated(FABRIC, { tex: 500, samples: Array.from({ length: 50 }, () => swatch(38)) }).cv).toBe(0.01);
  });

  test('needs no stitch width where it was unravelled, and is not known where nothing tells it', () => {
    const unmeasured = { ...FABRIC, stitchMm: undefined };
    expect(estimated(unmeasured, { samples: [drawnOut] }).mm).toBeCloseTo(27, 9);
    expect(loopEstimate(unmeasured, { samples: [swatch(38)] })).toBeUndefined();
    expect(loopEstimate(unmeasured)).toBeUndefined();
  });

  test('without the tex is not told by weight, but the mass of a stitch is', () => {
    const loop = estimated(FABRIC, { samples: [swatch(38)] });
    expect(loop.from).toBe('gauge');
    expect(loop.gPerStitch?.value).toBeCloseTo(38 / 2760, 9);
    expect(loop.gPerStitch?.cv).toBeCloseTo(weighedCv(38), 9);
  });

  // 2.4 m of tails at 500 tex weigh 1.2 g: 1e6·(39.2 − 1.2)/(500·2760) = 27.536.
  test('leaves out tails and seams of a piece that was weighed whole', () => {
    const { sources } = estimated(FABRIC, { tex: 500, samples: [swatch(39.2, { otherMm: 2400 })] });
    expect(sources.at(-1)?.mm).toBeCloseTo(27.536, 3);
  });

  test('does not take a weight that is less than its tails', () => {
    expect(estimated(FABRIC, { tex: 500, samples: [swatch(1, { otherMm: 2400 })] }).sources).toHaveLength(1);
  });
});

// 1/(√12·5) = 5.8%; with 2% that weighing leaves unsure 6.1%.
test('a scale of whole grams is 5.8% unsure of 5 g and 1.4% of 20 g; tenths are told from the figure', () => {
  expect(weighedCv(5)).toBeCloseTo(Math.hypot(0.02, 0.0577), 4);
  expect(weighedCv(20)).toBeCloseTo(Math.hypot(0.02, 0.0144), 4);
  expect(weighedCv(5.2)).toBeCloseTo(Math.hypot(0.02, 0.00555), 4);
  expect(weighedCv(5, 0.1)).toBeCloseTo(Math.hypot(0.02, 0.00577), 4);
});

describe('sources more than 25% apart', () => {
  // 48 needles, 120 courses, 46.08 g of 500 tex: loops of 16 mm; by gauge, at 5.833 by 4 mm, 21.06 mm.
  const loose = estimated(
    { stitchMm: 280 / 48, rowMm: 4, state: 'rested' },
    { tex: 500, samples: [{ is: 'weighed', stitches: 5760, massG: 46.08 }] },
  );

  test('are named, with what would settle it', () => {
    expect(loose.differing).toMatchObject({ least: { from: 'weighed' }, most: { from: 'gauge' } });
    expect(doubts(loose).map((words) => printed(words, { units: 'cm' }))).toEqual([
      'the yarn in ten stitches is 16 cm by weight and 21 cm by gauge, which is far apart: weigh a swatch of 20 g or more to settle it',
    ]);
  });

  test('are passed over in silence when nearer', () => {
    const near = estimated(FABRIC, { tex: 500, samples: [swatch(38)] });
    expect(near.differing).toBeUndefined();
    expect(doubts(near)).toEqual([]);
  });
});
