import type { Step, Things } from '../piece.js';
import { key, length, say, type Words } from '../words.js';
import { further } from './further.js';

/** What a strap lies over: a hand, or from a longer drop on a shoulder. Common practice, no source. */
const HAND_MM = 80;
const SHOULDER_MM = 100;
/** Hands take drops of 100 to 150 mm, shoulders 200 mm and more. Common practice, no source. */
const LEAST_SHOULDER_DROP_MM = 175;
/** Turned in at each end. Common practice, no source. */
const TURNED_MM = 40;

/** Drops by the place a strap is carried, the middle of 100 to 150, 200 to 300 and 500 to 600 mm. Common practice, no source. */
export const STRAPS = [
  { words: ['hand strap', 'wrist strap', 'wrist loop'], mm: 125 },
  { words: ['shoulder strap', 'long strap'], mm: 250 },
  { words: ['hip strap', 'crossbody strap', 'cross body strap'], mm: 550 },
] as const;

/**
 * The strap that hangs a piece `widthMm` wide `dropMm` below a hand or shoulder, cut length in mm:
 * 2·√(v² + ((W − b)/2)²) + b, and what is turned in at its ends.
 */
export function strapMm(dropMm: number, widthMm: number): number {
  const over = dropMm < LEAST_SHOULDER_DROP_MM ? HAND_MM : SHOULDER_MM;
  return 2 * Math.hypot(dropMm, (widthMm - over) / 2) + over + 2 * TURNED_MM;
}

/** The strap to have at hand. */
export const strapNotion = (cutMm: number): Things => ({ id: 'strap', count: 1, one: 'strap', cutMm });

/** What a strap asked for is taken to do. */
export const strapAssumed = (dropMm: number | undefined): Words[] =>
  dropMm === undefined ? [] : [say`a strap that drops ${length(dropMm)} to the top edge`];

/** Both ends of a strap sewn on, through rings where there are any, and tried. */
export const strapSteps = (rings: boolean): Step[] => [
  {
    id: 'strap',
    driver: 'strap',
    count: 2,
    say: say`Turn ${length(TURNED_MM)} of ${key`each end of the strap ${rings ? 'through its ring' : 'in at a side fold'}`}; ${key`sew it down`}.`,
  },
  further('try_strap', say`${key`Hang twice the load on it`} and look at the seams.`),
];
