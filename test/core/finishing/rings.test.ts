import { expect, test } from 'vitest';
import { isTooBig, RING_MM, ringTooBig } from '../../../core/finishing/rings.js';

test('a ring is at most a third of the height, once that is known', () => {
  expect(isTooBig(RING_MM, 3 * RING_MM + 1)).toBe(false);
  expect(isTooBig(RING_MM, 3 * RING_MM - 1)).toBe(true);
  expect(isTooBig(RING_MM, undefined)).toBe(false);
});

test('one too big is refused with none offered', () => {
  expect(ringTooBig(60, 100)).toMatchObject({ ringMm: 60, heightMm: 100, offers: [{ edit: { ring: { mm: 0 } } }] });
});
