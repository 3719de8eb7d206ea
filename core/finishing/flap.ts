import type { Made, Step } from '../piece.js';
import { count, say } from '../words.js';
import { graftTail, looseTail } from './joining.js';
import { WASTE_ROWS } from './knitting.js';

type Fabric = Pick<Made<never>, 'needles' | 'rows' | 'loopMm'>;

/** Stitches of the half of an edge that a flap hangs from. */
const flapStitches = (needles: number | undefined): number => Math.floor((needles ?? 0) / 2);

/**
 * A flap knitted apart as a panel over half of the needles, and grafted to the back of the first row.
 * @param onFold true where the rim is a fold without live loops: it is sewn there instead
 */
export function flapSteps({ needles, loopMm, rows }: Fabric, flapRows: number, onFold: boolean): Step[] {
  const n = flapStitches(needles);
  const half = needles === undefined ? say`half of the needles` : say`${count(n, 'needle')}`;
  const pairs = needles === undefined ? say`loop for loop` : say`${count(n, 'pair')}`;
  const left = graftTail({ needles: needles && n, rows, loopMm });
  return [
    {
      id: 'set_up_flap',
      driver: 'set_up',
      count: 1,
      say: say`For the flap set up ${half} with waste yarn; mark the first and the last of them and turn back at the marks.`,
    },
    {
      id: 'waste_flap',
      driver: 'crank',
      count: 2 * WASTE_ROWS * n,
      yarn: [{ role: 'waste', stitches: 2 * WASTE_ROWS * n }],
      say: say`Crank ${WASTE_ROWS} rows of waste yarn, and as many again once the flap is done.`,
    },
    {
      id: 'flap',
      driver: 'crank',
      count: flapRows * n,
      yarn: [
        { role: 'main', stitches: flapRows * n },
        ...[left, looseTail].flatMap(({ lengthMm }) =>
          lengthMm === undefined ? [] : [{ role: 'main' as const, lengthMm }],
        ),
      ],
      say: say`Between them crank ${count(flapRows, 'row')} of main yarn to and fro, ending with ${left.say}; run it off.`,
    },
    {
      id: 'join_flap',
      driver: onFold ? 'hem' : 'graft',
      count: n,
      say: onFold
        ? say`Sew the last row of the flap to the back of the rim, ${pairs}, and take out the waste yarn there.`
        : say`Graft the last row of the flap to the back half of the first row, ${pairs}, and take out the waste yarn there.`,
    },
    {
      id: 'cast_off',
      driver: 'cast_off',
      count: onFold ? n : (needles ?? 0),
      say: say`Cast off the edge of the flap${onFold ? '' : ' and the front half of the opening'}, drawing each loop loosely through the one before it.`,
    },
  ];
}
