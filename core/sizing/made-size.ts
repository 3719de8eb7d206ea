import type { Made } from '../piece.js';
import { dimensionMm } from './rows.js';

type Laid = Pick<Made<never>, 'layout' | 'rows' | 'rowMm' | 'needles' | 'stitchMm'>;

/** A size of a piece with its counts settled, in mm, by the rows or the needles that make it; 0 for one it has not. */
export function madeSizeMm({ layout, rows, rowMm, needles = 0, stitchMm = 0 }: Laid, id: string): number {
  const dimension = layout.dimensions.find((one) => one.id === id);
  if (dimension === undefined) return 0;
  return dimension.axis === 'rows' ? dimensionMm(dimension, rows, rowMm) : dimensionMm(dimension, needles, stitchMm);
}
