import { expect, test } from 'vitest';
import { STOCK_CLOSURES } from '../../../core/tables/closures.js';

test('stock closures run from short to long, each under a centimetre label within 1 cm of its length', () => {
  const inches: number[] = STOCK_CLOSURES.map((c) => c.inches);
  expect(inches).toEqual([...inches].sort((a, b) => a - b));
  for (const { inches, labelCm } of STOCK_CLOSURES) expect(Math.abs(inches * 2.54 - labelCm)).toBeLessThan(1);
});
