import type { Step } from '../piece.js';
import { key, length, say } from '../words.js';

/** Across, where no size is asked. From memory. */
const POMPOM_MM = 70;
/** Strands as long as it is across. From memory. */
const STRANDS = 200;

/** A pompom made of the main yarn and sewn on. */
export const pompomStep: Step = {
  id: 'pompom',
  driver: 'pompom',
  count: 1,
  yarn: [{ role: 'main', lengthMm: STRANDS * POMPOM_MM }],
  say: say`${key`Make a pompom ${length(POMPOM_MM)} across`} of the main yarn and ${key`sew it on the crown`}, through and back more than once.`,
};
