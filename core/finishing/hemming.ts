import type { Made, Step } from '../piece.js';
import { count, length, say, tail } from '../words.js';
import { graftTail } from './joining.js';
import { type Tail, WASTE_ROWS } from './knitting.js';

/** The tail that sews live loops down: a loop sewn down takes what grafting it takes. */
export function hemTail(made: Pick<Made<never>, 'needles' | 'rows' | 'loopMm'>, sewn = say`hem`): Tail {
  const grafted = graftTail(made);
  if (grafted.lengthMm === undefined) return grafted;
  return { ...grafted, say: say`a tail of ${tail(grafted.lengthMm)} to sew the ${sewn} with` };
}

/** The live loops of the first row folded in and sewn down, one by one; their waste comes out. */
export function hemSteps({ needles }: { needles: number | undefined }, depthMm: number): Step[] {
  const loops = needles === undefined ? say`every loop` : say`the ${count(needles, 'loop')}`;
  return [
    {
      id: 'hem',
      driver: 'hem',
      count: needles ?? 0,
      say: say`Fold ${length(depthMm)} of the first end to the inside and sew ${loops} of the first row down to the row that they reach, one by one and loosely, with the tail there.`,
    },
    {
      id: 'open_hem',
      driver: 'take_out_waste',
      count: WASTE_ROWS,
      say: say`Take out the waste yarn at the hem (${WASTE_ROWS} rows).`,
    },
  ];
}
