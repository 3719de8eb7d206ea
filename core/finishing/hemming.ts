import type { Made, Step } from '../piece.js';
import { count, key, length, say, type Words } from '../words.js';
import { further } from './further.js';
import { graftTail } from './joining.js';
import { type Tail, WASTE_ROWS } from './knitting.js';

/** The tail that sews live loops down: a loop sewn down takes what grafting it takes. */
export const hemTail = (made: Pick<Made<never>, 'needles' | 'rows' | 'loopMm'>, what = 'the hem'): Tail =>
  graftTail(made, `sew ${what} down with`);

/**
 * The live loops of the first row turned over and sewn down, one by one; their waste comes out.
 * @param fold the fold made before
 * @param at where the waste is: `the hem`
 */
export function sewnDownSteps(needles: number | undefined, fold: Words, at: string): Step[] {
  const loops = needles === undefined ? say`every loop` : say`the ${count(needles, 'loop')}`;
  return [
    further('fold_hem', fold),
    {
      id: 'hem',
      driver: 'hem',
      count: needles ?? 0,
      say: say`${key`Sew down ${loops}`} of the first row to the row that they reach, one by one and loosely, with the tail there.`,
    },
    openedStep(at),
  ];
}

/** The waste of the first row taken out. */
export const openedStep = (at: string): Step => ({
  id: 'open_hem',
  driver: 'take_out_waste',
  count: WASTE_ROWS,
  say: say`${key`Take out the waste yarn`} at ${at} (${WASTE_ROWS} rows).`,
});

/** A hem of the first end, folded in. */
export const hemSteps = ({ needles }: { needles: number | undefined }, depthMm: number): Step[] =>
  sewnDownSteps(needles, say`${key`Fold in ${length(depthMm)}`} of the first end.`, 'the hem');
