import type { Problem } from '../problems.js';
import { say } from '../words.js';

/** A ring of 1 in at each side. Common practice, no source. */
export const RING_MM = 25.4;

/** A ring stands inside the height: at most a third of it. From memory. */
const RING_SHARE = 1 / 3;

/** True for a ring that a piece is too low for; never while its height is not known. */
export const isTooBig = (ringMm: number, heightMm: number | undefined): boolean =>
  heightMm !== undefined && ringMm > heightMm * RING_SHARE;

export const ringTooBig = (ringMm: number, heightMm: number): Problem => ({
  code: 'ring_too_big',
  ringMm,
  heightMm,
  offers: [{ label: say`no rings`, edit: { ring: { is: 'length', mm: 0 } } }],
});
