import { done, type Outcome, refused } from '../problems.js';
import type { Window } from '../sizing/rows.js';
import { say } from '../words.js';
import { closureLength, closureWindow, longestStockClosureMm } from './closing.js';

/**
 * The window of a width that a closure, rings at its sides and an ease of 1/2 to 1 in bound: their own, or where a width
 * was asked for the part of it that takes them.
 * @param leastMm what else the width needs
 */
export function closureWidth(
  closureMm: number,
  ringMm: number,
  width: Window | undefined,
  leastMm = 0,
): Outcome<Window> {
  const needed = closureWindow(closureMm, ringMm);
  const loMm = Math.max(needed.loMm, leastMm);
  if (width === undefined) return done({ loMm, hiMm: needed.hiMm });
  if (width.hiMm > needed.loMm) return done({ loMm: Math.max(width.loMm, loMm), hiMm: width.hiMm });
  const fitting = longestStockClosureMm((width.loMm + width.hiMm) / 2, ringMm);
  const shorter =
    fitting === undefined || closureWindow(fitting, ringMm).hiMm <= leastMm
      ? []
      : [
          {
            label: say`a closure of ${closureLength(fitting)}`,
            edit: { closure: { is: 'length' as const, mm: fitting } },
          },
        ];
  return refused({
    code: 'closure_too_long',
    closureMm,
    needsMm: needed.loMm,
    window: width,
    offers: [{ label: say`the width this closure needs`, edit: { width: { is: 'window', ...needed } } }, ...shorter],
  });
}
