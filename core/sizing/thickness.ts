/** Thickness of one layer in mm: of medium yarn, and of bulky from this stitch width up. From memory. */
const MEDIUM_MM = 2.5;
const BULKY_MM = 3;
const BULKY_STITCH_MM = 8.5;

/** How thick one layer of fabric is, in mm, told from the width of its stitches; that of medium yarn until it is known. */
export const layerMm = (stitchMm: number | undefined): number =>
  stitchMm === undefined || stitchMm < BULKY_STITCH_MM ? MEDIUM_MM : BULKY_MM;
