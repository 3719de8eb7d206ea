import { expect, test } from 'vitest';
import { contentsOf, leastHeightMm, leastWidthMm, needsOf } from '../../../core/sizing/contents.js';

const PHONE = contentsOf([163, 78, 9]);
const [WALL, OPEN, CLOSED] = [5, true, false] as const;

test('a thing is known by its sides in any order', () => {
  expect(contentsOf([9, 163, 78])).toEqual({ longMm: 163, shortMm: 78, thickMm: 9 });
  expect(contentsOf([30, 30, 30])).toEqual({ longMm: 30, shortMm: 30, thickMm: 30 });
});

// Worked by hand: 78 + 9 + (π/2)·5 + 10 = 104.85; 163 + 9 + 7.85 + 10 = 189.85.
test('a phone of 163 by 78 by 9 mm in a wall of 5 mm needs 104.85 mm of width upright, 189.85 mm lying down', () => {
  expect(leastWidthMm(78, 9, WALL)).toBeCloseTo(104.85, 2);
  expect(leastWidthMm(163, 9, WALL)).toBeCloseTo(189.85, 2);
});

test('the same phone needs 172 mm and half a wall of height where the top closes, 167.5 where it stays open', () => {
  expect(leastHeightMm(163, 9, WALL, CLOSED) - WALL / 2).toBe(172);
  expect(leastHeightMm(163, 9, WALL, OPEN) - WALL / 2).toBe(167.5);
});

// The inside of the wall is 2·D − π·tau round, the thing 2·(b + h).
test('the inside of the least width goes round the thing with the ease twice', () => {
  const insideMm = 2 * leastWidthMm(78, 9, WALL) - Math.PI * WALL;
  expect(insideMm).toBeCloseTo(2 * (78 + 9) + 2 * 10, 9);
});

test('either way up is worked out, each with the opening that lets the thing in', () => {
  const [upright, lying] = needsOf(PHONE, WALL, CLOSED);
  expect(upright).toMatchObject({ way: 'upright', heightMm: 174.5, openingMm: 87 });
  expect(lying).toMatchObject({ way: 'lying', heightMm: 89.5, openingMm: 172 });
});
