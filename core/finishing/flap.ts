import type { Made, Step } from '../piece.js';
import type { Problem } from '../problems.js';
import type { Window } from '../sizing/rows.js';
import { count, key, say, type Words } from '../words.js';
import { graftTail, looseTail } from './joining.js';
import { WASTE_ROWS } from './knitting.js';
import { PANEL_NEEDLES } from './panel-seam.js';

type Fabric = Pick<Made<never>, 'needles' | 'rows' | 'loopMm'>;

/** A flap that covers a third of the height. Common practice. */
export const FLAP_SHARE = 1 / 3;

/** The problem of a flap longer than what it hangs on. */
export function flapProblems(
  flapMm: number | undefined,
  height: Window | undefined,
  { label, minMm }: { label: string; minMm: number },
): Problem[] {
  if (flapMm === undefined || height === undefined || flapMm <= height.loMm) return [];
  return [
    {
      code: 'length_out_of_range',
      field: { id: 'flap', label },
      givenMm: flapMm,
      minMm,
      maxMm: height.loMm,
      why: say`a flap is no longer than what it hangs on`,
      offers: [
        { label: say`a flap of a third of the height`, edit: { flap: null, top: { is: 'choice', id: 'flap' } } },
      ],
    },
  ];
}

/** Stitches of the half of an edge that a flap hangs from. */
const flapStitches = (needles: number | undefined): number => Math.floor((needles ?? 0) / 2);

/**
 * A flap knitted apart as a panel over half of the needles, and grafted to the back of the first row.
 * @param onFold true where the rim is a fold without live loops: it is sewn there instead
 */
export function flapSteps({ needles, loopMm, rows }: Fabric, flapRows: number, onFold: boolean): Step[] {
  const n = flapStitches(needles);
  const half = needles === undefined ? say`half of the needles` : say`${count(n, 'needle')}`;
  const pairs = needles === undefined ? say`every loop` : say`${count(n, 'loop')}`;
  const left = graftTail({ needles: needles && n, rows, loopMm });
  const wasteRows = (id: string, words: Words): Step => ({
    id,
    driver: 'crank',
    count: WASTE_ROWS * n,
    yarn: [{ role: 'waste', stitches: WASTE_ROWS * n }],
    say: words,
  });
  return [
    {
      id: 'set_up_flap',
      driver: 'set_up',
      count: 1,
      say: say`For the flap ${key`set up ${half}`} with waste yarn.`,
    },
    ...PANEL_NEEDLES,
    wasteRows('waste_on_flap', say`${key`Crank ${WASTE_ROWS} waste rows`}.`),
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
      say: say`Change to the main yarn; ${key`crank ${count(flapRows, 'row')}`} to and fro; cut it and ${left.say}.`,
    },
    wasteRows('waste_off_flap', say`Change to waste yarn; ${key`crank ${WASTE_ROWS} waste rows`}; run the flap off.`),
    {
      id: 'join_flap',
      driver: onFold ? 'hem' : 'graft',
      count: n,
      say: onFold
        ? say`${key`Sew ${pairs}`} of the last row of the flap ${key`to the back of the rim`}; take out the waste yarn there.`
        : say`${key`Graft ${pairs}`}: the last row of the flap ${key`to the back half of the first row`}; take out the waste yarn there.`,
    },
    {
      id: 'cast_off',
      driver: 'cast_off',
      count: onFold ? n : (needles ?? 0),
      say: say`${key`Cast off the edge of the flap${onFold ? '' : ' and the front half of the opening'}`}, drawing each loop loosely through the one before it.`,
    },
  ];
}
