import type { Plan } from './plan.js';
import { type Measure, rowsGiven } from './sizing/rows.js';
import { chance, count, length, range, say, type Words } from './words.js';
import { isRing } from './yarn/stripes.js';

/**
 * Why a plan has its rows, a sentence each: what was wanted, the row it stands on, the sum, the rows at the edges of the
 * window, and how sure that is.
 * @param others counts of rows to set beside the plan's own, each with what it would come to
 */
export function reasons(plan: Plan, others: readonly number[]): Words[] {
  const { landing, onMachine, work } = plan;
  const { rowsInPiece, loMm, hiMm, measure, chance: landed } = landing;
  const row = work?.pitch ?? onMachine.row;
  const aimMm = Math.sqrt((loMm - measure.fixedMm) * (hiMm - measure.fixedMm)) + measure.fixedMm;
  const straightMm = (aimMm - measure.fixedMm) / measure.share;
  const spread = Math.exp(row.sd) - 1;
  return [
    say`Wanted: ${range(loMm, hiMm)} ${adjectiveOf(plan)}, so aim for ${length(aimMm)}.`,
    ...straightened(measure, aimMm, straightMm),
    say`Sum: ${length(straightMm)} at ${millimetres(Math.exp(row.mu))} a row is ${count(rowsInPiece, 'row')}${closed(plan)}.`,
    say`Edges: ${edgesOf(plan)}`,
    say`Chance: the next piece may differ by about ${percent(spread)} from what was measured, which leaves it ${chance(landed)}.`,
    ...others.map((other) => outcomeOf(plan, other)),
  ];
}

/** What any count of rows would come to: `125 rows would come out near 12 5/8 in: unlikely (2%).` */
export function outcomeOf({ landing, onMachine, work }: Plan, rows: number): Words {
  const { expectedMm, chance: there } = rowsGiven(rows, landing, landing.measure, work?.pitch ?? onMachine.row);
  return say`${count(rows, 'row')} would come out near ${length(expectedMm)}: ${chance(there)}.`;
}

/** The rows that would most likely end on either edge of what was asked. */
export const edgesOf = ({ landing: { loMm, hiMm, rowsAtLo, rowsAtHi } }: Plan): Words =>
  say`row ${Math.round(rowsAtLo)} would most likely give ${length(loMm)}, row ${Math.round(rowsAtHi)} would give ${length(hiMm)}.`;

/** A row is finer than a tape shows, so it is told in mm whatever the reader's units. */
const millimetres = (mm: number): string => `${mm.toFixed(2)} mm`;
const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)}%`;

function straightened({ share, fixedMm }: Measure, aimMm: number, straightMm: number): Words[] {
  if (share === 1 && fixedMm === 0) return [];
  const other = length(Math.abs(fixedMm));
  const without = fixedMm > 0 ? say`, less ${other} that no rows make,` : say`, with ${other} turned up or taken in,`;
  return [say`Laid straight: ${length(aimMm)}${fixedMm === 0 ? '' : without} comes to ${length(straightMm)} of rows.`];
}

const adjectiveOf = ({ sizes, landing }: Plan): string =>
  sizes.find(({ id }) => id === landing.dimension)?.adjective ?? '';

/** What closing makes of the rows, or the fold takes from them. */
function closed({ rows, graftRows, steps }: Plan): Words {
  if (graftRows === 0) return say``;
  if (graftRows < 0) return say`; the fold takes ${-graftRows}, so knit ${rows}`;
  return isRing(steps)
    ? say`; the graft makes one of them, so knit ${rows}`
    : say`; closing the ends makes ${graftRows} of them, so knit ${rows}`;
}
