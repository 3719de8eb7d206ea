import { expect, test } from 'vitest';
import { cautions } from '../../core/cautions.js';

test('every piece reminds of pins, tired hands and rules where it is sold, its own cautions first', () => {
  const always = cautions([]);
  expect(always).toHaveLength(3);
  expect(cautions(['small_parts']).slice(1)).toEqual(always);
  expect(cautions(['small_parts'])[0]?.parts[0]).toMatch(/under three/);
});
