import type { Step, Stuff } from '../piece.js';
import { count, key, say } from '../words.js';

/** Stuffing that fills a cubic centimetre, in grams. From memory: 0.025 to 0.035. */
const G_PER_CM3 = 0.03;

/** What fills a ball of this diameter, in cm³ and grams. */
export function ballFilling(diameterMm: number): { volumeCm3: number; massG: number } {
  const volumeCm3 = (Math.PI * diameterMm ** 3) / 6000;
  return { volumeCm3, massG: volumeCm3 * G_PER_CM3 };
}

/** Stuffing to have at hand. */
export const stuffingNotion = (massG: number): Stuff => ({
  id: 'stuffing',
  massG,
  of: 'stuffing',
});

/** The piece filled through the end still open. */
export const stuffStep = (volumeCm3: number): Step => ({
  id: 'stuff',
  driver: 'stuff',
  count: volumeCm3,
  say: say`${key`Fill it with ${count(Math.round(volumeCm3), 'cubic centimetre')}`} of stuffing through the open end, a little at a time and evenly all round.`,
});
