import { describe, expect, test } from 'vitest';
import type { Step } from '../../../core/piece.js';
import { pouch } from '../../../core/pieces/pouch.js';
import { say } from '../../../core/words.js';
import { yarnNeed } from '../../../core/yarn/need.js';
import { mm, planOf } from '../samples.js';

const LOOP_MM = 26.8234;
const step = (yarn: Step['yarn'], times?: number): Step => ({
  id: 'step',
  driver: 'crank',
  count: 1,
  say: say`knit`,
  ...(yarn && { yarn }),
  ...(times && { times }),
});

// Worked by hand at 26.8234 mm a stitch.
describe('the yarn a piece needs', () => {
  test('for 110 rows of 46 stitches is 135.726 m, for one grafted row 1.234 m', () => {
    expect(yarnNeed([step([{ role: 'main', stitches: 110 * 46 }])], LOOP_MM)?.lengthM).toBeCloseTo(135.726, 3);
    expect(yarnNeed([step([{ role: 'main', stitches: 46 }])], LOOP_MM)?.lengthM).toBeCloseTo(1.23388, 4);
  });

  test('for a pouch of 106 rows is its rows, its graft tail and its seam tail: 133.215 m', () => {
    const need = planOf(pouch, { closure: mm(203.2) }).yarn;
    expect(need?.lengthM).toBeCloseTo(130.791 + 1.4456 + 0.97945, 2);
    // Two strips of five rows: 460·26.8234 = 12.34 m.
    expect(need?.wasteM).toBeCloseTo(12.34, 2);
  });

  test('counts a step as often as it is done, and one without yarn as nothing', () => {
    const steps = [step([{ role: 'main', lengthMm: 1500 }], 3), step(undefined)];
    expect(yarnNeed(steps, LOOP_MM)).toMatchObject({ lengthM: 4.5, wasteM: 0 });
  });

  test('is not known without the yarn in a stitch', () => {
    expect(yarnNeed([step([{ role: 'main', stitches: 1 }])], undefined)).toBeUndefined();
  });
});
