import { say, type Words } from '../words.js';
import type { Window } from './rows.js';

/**
 * Panels alike that come to a size where a tube of all needles does not: `one_layer` as wide as the tube should lie
 * flat, or `sewn_round` to go all round in its place. `along` is what the rows of each must measure.
 */
export type Panels = { way: 'one_layer' | 'sewn_round'; count: number; needles: number; along: Window };

/** `a flat panel of 29 needles in one layer`. */
export function panelsInWords({ way, count: panels, needles }: Panels): Words {
  const made = way === 'one_layer' ? say`in one layer` : say`sewn up`;
  return panels === 1
    ? say`a flat panel of ${needles} needles ${made}`
    : say`${panels} flat panels of ${needles} needles joined and ${made}`;
}
