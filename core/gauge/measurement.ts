export type State = 'hanging' | 'rested' | 'washed';
export type Form = 'tube' | 'panel';

/** How a length was measured, or is meant: the state of the fabric, and whether it is a tube or a flat panel. */
export type Setting = { state: State; form: Form };

/**
 * Rows or stitches and the length they span.
 * `counted`: whole rows or stitches counted inside a fixed ruler length, so the count may be off by a part of one.
 * `read`: the count is known and its length was read, so only the ruler errs.
 */
export type Count = {
  count: number;
  overMm: number;
  how: 'read' | 'counted';
  /** What rows of the same fabric outside this length may add to it, in mm: a part of a piece stands for the whole. */
  spreadMm?: number | undefined;
};

/** One reading of one swatch or piece in one state. Readings that share `swatch` are of the same fabric. */
export type Measurement = Setting & {
  swatch: string;
  /** The day it was read, as a count of days from any fixed one; without it a reading takes no part in drift. */
  day?: number | undefined;
  rows?: Count | undefined;
  /** Across the needles. A flat tube of N needles is N/2 stitches over its flat width. */
  stitches?: Count | undefined;
};
