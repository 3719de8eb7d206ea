import { describe, expect, test } from 'vitest';
import { pouch } from '../../../core/pieces/pouch.js';
import { scarf } from '../../../core/pieces/scarf.js';
import { weighedPiece, yarnNeed } from '../../../core/yarn/need.js';
import { mm, planOf } from '../samples.js';
import { LOOP_MM, loopOf, step } from './samples.js';

const LOOP = loopOf(LOOP_MM);
const closure = { closure: mm(203.2) };
const needOf = (...asked: Parameters<typeof planOf>) => {
  const { yarn } = planOf(...asked);
  if (yarn === undefined) throw new Error('no yarn is known');
  return yarn;
};

// Worked by hand at 26.8234 mm a stitch.
describe('the yarn a piece needs', () => {
  test('for 110 rows of 46 stitches is 135.726 m, for one grafted row 1.234 m', () => {
    expect(yarnNeed([step([{ role: 'main', stitches: 110 * 46 }])], LOOP).lengthM).toBeCloseTo(135.726, 3);
    expect(yarnNeed([step([{ role: 'main', stitches: 46 }])], LOOP).lengthM).toBeCloseTo(1.23388, 4);
  });

  test('for a grafted row is 3.6 times the girth of the tube, 342.9 mm', () => {
    const { parts } = needOf(pouch, closure);
    expect((1000 * parts.graftM) / 342.9).toBeCloseTo(3.5984, 3);
  });

  test('for a pouch of 106 rows is its rows, its graft tail and its seam tail: 133.215 m', () => {
    const need = needOf(pouch, closure);
    expect(need.lengthM).toBeCloseTo(130.791 + 1.4456 + 0.97945, 2);
    // Two strips of five rows: 460·26.8234 = 12.34 m.
    expect(need.wasteM).toBeCloseTo(12.34, 2);
  });

  test('tells rows, grafting and seams apart, and they sum to the whole', () => {
    const { parts, lengthM, stitches } = needOf(pouch, closure);
    expect(parts.rowsM).toBeCloseTo(130.791, 2);
    expect(parts.graftM).toBeCloseTo(1.23388, 4);
    expect(parts.seamsM).toBeCloseTo(1.4456 - 1.23388 + 0.97945, 3);
    expect(Object.values(parts).reduce((a, b) => a + b)).toBeCloseTo(lengthM, 9);
    expect(stitches).toBeCloseTo(107 * 46, 6);
  });

  test('tells a fringe, a cord and trimmings apart from seams', () => {
    const cut = (lengthMm: number) => [{ role: 'main' as const, lengthMm }];
    const steps = [
      step(cut(1000), { driver: 'fringe' }),
      step(cut(2000), { driver: 'drawstring' }),
      step(cut(3000), { driver: 'pompom' }),
      step(cut(4000), { driver: 'mattress' }),
      step([{ role: 'main', stitches: 100 }], { driver: 'border' }),
    ];
    const { parts } = yarnNeed(steps, loopOf(20));
    expect(parts).toEqual({ rowsM: 0, graftM: 0, seamsM: 4, fringeM: 1, cordM: 2, trimM: 5 });
    expect(needOf(scarf, { length: mm(1500), fringe: mm(100) }).parts.fringeM).toBeGreaterThan(1);
  });

  test('counts a step as often as it is done, and one without yarn as nothing', () => {
    const steps = [step([{ role: 'main', lengthMm: 1500 }], { times: 3 }), step(undefined)];
    expect(yarnNeed(steps, LOOP)).toMatchObject({ lengthM: 4.5, wasteM: 0 });
    expect(yarnNeed([], LOOP)).toMatchObject({ lengthM: 0, cv: 0.2 });
  });

  // cvQ = √((132.025·.15)² + (1.190·.20)²)/133.215.
  test('is as sure as its loops together and its cut lengths apart from them', () => {
    const steps = planOf(pouch, closure).steps;
    expect(yarnNeed(steps, loopOf(LOOP_MM, { cv: 0.15 })).cv).toBeCloseTo(0.14867, 4);
  });
});

describe('the mass of yarn', () => {
  test('is not known by gauge alone, and with a tex is that of its length: 66.61 g', () => {
    expect(needOf(pouch, closure).massG).toBeUndefined();
    const need = needOf(pouch, closure, { yarn: { tex: 500 } });
    expect(need.massG).toBeCloseTo(66.61, 2);
    expect(need.massCv).toBeCloseTo(need.cv, 9);
  });

  // A swatch of 2760 stitches weighs 38 g: (38/2760)·107·46 = 67.77 g of stitches.
  test('of stitches weighed on the scale that buys the yarn needs no tex, and has none of its error', () => {
    const samples = [{ is: 'weighed' as const, stitches: 2760, massG: 38 }];
    const unnamed = needOf(pouch, closure, { yarn: { samples } });
    expect(unnamed.source).toBe('gauge');
    expect(unnamed.massG).toBeCloseTo(67.768 + 1.19 * (38 / 2760 / 0.0268234), 1);
    expect(unnamed.massCv).toBeLessThan(0.03);
    const named = needOf(pouch, closure, { yarn: { tex: 500, samples } });
    expect(named).toMatchObject({ source: 'weighed' });
    expect(named.massG).toBeCloseTo(67.768 + 1.19 * 0.5, 1);
  });

  test('of a finished piece teaches the loop it was made of', () => {
    const yarn = { tex: 500 };
    const planned = needOf(pouch, closure, { yarn });
    const sample = weighedPiece(planned, planned.massG ?? 0);
    expect(needOf(pouch, closure, { yarn: { ...yarn, samples: [sample] } }).loop.mm).toBeCloseTo(planned.loop.mm, 6);
  });
});
