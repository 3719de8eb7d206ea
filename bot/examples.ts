import type { Units } from '../core/index.js';

/** A measured piece as its maker would tell it, in their units; inches while those are not known. */
export const pieceExample = (units: Units | undefined): string =>
  units === 'cm' ? '40 needles, 60 rows, 27 cm long, 14.5 flat' : '46 needles, 110 rows, 22 in long, 6 3/4 flat';

/** Its needles and flat width alone, which tell the width of a stitch. */
export const widthExample = (units: Units | undefined): string =>
  units === 'cm' ? '40 needles, 14.5 cm flat' : '46 needles, 6 3/4 in flat';
