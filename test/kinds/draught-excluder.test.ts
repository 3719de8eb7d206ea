import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { between, EVEN, planOf } from '../core/samples.js';
import { meaningOf, PLAIN } from '../language/reading.js';
import { draughtExcluder } from './draught-excluder.js';

// Worked by hand, w 7.5, c 5: √(800·830)/5 = 162.97; 26560 > 162·163 = 26406, so 163 rows, of which shutting both ends
// makes one. Girth 48·7.5 = 360 mm, 360²/4π = 10,313 mm², and 815 mm of it 8405 cm³: 252 g.
test('a draught excluder of 800 to 830 mm is 162 rows, 815 mm, and takes 252 g of stuffing', () => {
  const made = planOf(draughtExcluder, { length: between(800, 830) }, { needles: 48, measurements: EVEN });
  expect([made.rows, made.graftRows]).toEqual([162, 1]);
  expect(made.sizes.map((size) => size.expectedMm)).toEqual([expect.closeTo(815, 9), expect.closeTo(360, 9)]);
  expect(made.notions).toEqual([{ id: 'stuffing', of: 'stuffing', massG: expect.closeTo(252.2, 1) }]);
});

test('is read from plain words with nothing but its file', () => {
  const pieces = [...PLAIN.pieces, draughtExcluder];
  expect(meaningOf('a draught excluder for an 80 cm door', { pieces })).toBe('plan draught-excluder length=800');
  expect(meaningOf('draft stopper 90 cm', { pieces })).toBe('plan draught-excluder length=900');
});

test('stands in DEVELOPERS.md as it is here', () => {
  const guide = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');
  const shown = readFileSync(new URL('./draught-excluder.ts', import.meta.url), 'utf8').replaceAll(
    '../../core/',
    '../',
  );
  expect(guide).toContain(`\`\`\`ts\n${shown}\`\`\``);
});
