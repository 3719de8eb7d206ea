/** Slack in a grafted row and one working end to thread and fasten. Common practice. */
const GRAFT_SLACK = 1.05;
const WORKING_END_MM = 150;
/** Yarn of a mattress seam to its length, with an end at each side. Common practice: 1.5 to 3. */
const MATTRESS_RATIO = 2.5;

/** A tail left hanging to be woven in, in mm. Common practice. */
export const LOOSE_TAIL_MM = WORKING_END_MM;

/** The tail that grafts `pairs` live stitches, in mm. */
export const graftTailMm = (pairs: number, loopMm: number): number => pairs * loopMm * GRAFT_SLACK + WORKING_END_MM;

/** The tail that sews a mattress seam, in mm. */
export const mattressTailMm = (seamMm: number): number => MATTRESS_RATIO * seamMm + 2 * WORKING_END_MM;

/** Without a stitch width a tail is told by the fabric itself. Common practice: 3 to 4 times the width. */
export const GRAFT_WIDTHS = 4;
