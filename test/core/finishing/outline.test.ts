import { expect, test } from 'vitest';
import { plainTube } from '../../../core/pieces/plain-tube.js';
import { pouch } from '../../../core/pieces/pouch.js';
import { mm, planOf } from '../samples.js';

test('a pouch is drawn as it lies: seam below, closure above, the graft on a side fold', () => {
  const { outline, sizes } = planOf(pouch, { closure: mm(203.2) });
  expect(outline.lines.map(({ is }) => is)).toEqual(['seam', 'fold', 'opening', 'graft']);
  const [, , corner] = outline.points;
  expect(corner?.[0]).toBeCloseTo(sizes[0]?.expectedMm ?? 0, 9);
  expect(corner?.[1]).toBeCloseTo(sizes[1]?.expectedMm ?? 0, 9);
});

test('a tube shut at both ends shows two grafts', () => {
  const { outline } = planOf(plainTube, { length: mm(558.8), ends: { is: 'choice', id: 'shut' } });
  expect(outline.lines.filter(({ is }) => is === 'graft')).toHaveLength(2);
});
