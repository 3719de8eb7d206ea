import type { Step, Things } from '../piece.js';
import { count, key, length, say, tail } from '../words.js';
import { further } from './further.js';

/** Left hanging at each end of a cord, to pull and knot. Common practice, no source. */
const END_MM = 140;

/** The cord taken where none was chosen. Common practice, no source. */
const CORD_MM = 5;

/** Room in a channel beside half of the cord's girth. Common practice, no source. */
const CHANNEL_ROOM_MM = 5;

/** Eyelets come in pairs, so that both ends of the cord come out on one side: one every 6 to 8 stitches, 7 of them here. */
const STITCHES_A_PAIR = 14;

/** The cord that draws an edge this far round, cut length in mm. */
export const drawstringMm = (girthMm: number): number => girthMm + 2 * END_MM;

/** The least depth of a hem that a cord runs in: (π/2)·cord and room. */
export const CHANNEL_MM = (Math.PI / 2) * CORD_MM + CHANNEL_ROOM_MM;

/** Eyelets round an edge of so many stitches: an even number. */
export const eyelets = (stitches: number): number => 2 * Math.max(1, Math.round(stitches / STITCHES_A_PAIR));

/** The cord to have at hand; its length by the edge where that is not known. */
export const drawstringNotion = (girthMm: number | undefined): Things => ({
  id: 'drawstring',
  count: 1,
  one: 'cord',
  ...(girthMm === undefined
    ? { after: say`, once round the top and ${tail(2 * END_MM)} more` }
    : { cutMm: drawstringMm(girthMm), after: say`, ${length(CORD_MM)} thick` }),
});

/**
 * The cord drawn in: through a hem deep enough to run in, else in and out through the fabric.
 * @param downMm how far below the edge the cord goes where no hem holds it
 */
export function drawstringSteps(stitches: number | undefined, hemMm: number, downMm: number): Step[] {
  const thread = key`Thread the cord`;
  const inHem = say`${thread} ${key`through the hem`}, in between two stitches at one side fold and out there again.`;
  const holes =
    stitches === undefined
      ? say`every 6 to 8 stitches, an even number of times`
      : say`${key`${count(eyelets(stitches), 'time')}`}, evenly apart`;
  const inOut = say`${thread} in and out between stitches, ${key`${length(downMm)} below the edge`}, ${holes}.`;
  return [
    { id: 'drawstring', driver: 'drawstring', count: 1, say: hemMm >= CHANNEL_MM ? inHem : inOut },
    further(
      'knot_cord',
      say`${key`Knot its ends together`}; for two cords that pull from both sides take a second from the other side fold.`,
    ),
  ];
}
