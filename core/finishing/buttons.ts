import type { Step, Things } from '../piece.js';
import { count, key, length, say, tail } from '../words.js';

/** A button for every so much of an edge. Common practice, no source. */
const EDGE_PER_BUTTON_MM = 50;
/** A line of button size, of which 40 make an inch. */
const LIGNE_MM = 0.635;
/** What is taken where no button was chosen: 32 lignes, 4 mm thick. Common practice, no source. */
const USUAL = { lignes: 32, thickMm: 4 };
/** Ends of a loop, sewn in. Common practice, no source. */
const LOOP_ENDS_MM = 30;

export const ligneMm = (lignes: number): number => lignes * LIGNE_MM;

/** Buttons along an edge: how many, how far apart, and how far the first is from its end, in mm. */
export function buttonsAlong(edgeMm: number): { buttons: number; apartMm: number; firstMm: number } {
  const buttons = Math.max(1, Math.round(edgeMm / EDGE_PER_BUTTON_MM));
  return { buttons, apartMm: edgeMm / buttons, firstMm: edgeMm / (2 * buttons) };
}

/** The loop that takes a button: twice its diameter and thickness, and its ends, in mm. */
export const loopMm = (diameterMm: number, thickMm: number): number => 2 * (diameterMm + thickMm) + LOOP_ENDS_MM;

/** Buttons to have at hand for an edge. */
export function buttonNotion(edgeMm: number): Things {
  const { buttons } = buttonsAlong(edgeMm);
  return {
    id: 'buttons',
    count: buttons,
    one: 'button',
    after: say` of about ${length(ligneMm(USUAL.lignes))} (${USUAL.lignes} lignes)`,
  };
}

/** Loops on one edge and buttons on the other, named in words. */
export function buttonAndLoopSteps(edgeMm: number, on = 'one end', opposite = 'the other end'): Step[] {
  const { buttons, apartMm, firstMm } = buttonsAlong(edgeMm);
  const cutMm = loopMm(ligneMm(USUAL.lignes), USUAL.thickMm);
  const places =
    buttons === 1 ? say`half way up` : say`${length(apartMm)} apart, the first ${length(firstMm)} from the corner`;
  const loops = count(buttons, 'loop');
  return [
    {
      id: 'loops',
      driver: 'loop',
      count: buttons,
      yarn: [{ role: 'main', lengthMm: buttons * cutMm }],
      say: say`${key`Sew ${loops} to ${on}`}, of main yarn, ${tail(cutMm)} each, ${places}; try the button in it.`,
    },
    {
      id: 'buttons',
      driver: 'button',
      count: buttons,
      say: say`${key`Sew ${count(buttons, 'button')} to ${opposite}`}, right across from ${buttons === 1 ? 'it' : 'them'}.`,
    },
  ];
}
