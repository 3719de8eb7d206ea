import type { State } from '../gauge/measurement.js';

/** How far fabric has settled. Fully relaxed is what repeated washing and tumbling leads to. */
export type Relaxation = State | 'fully_relaxed';

/**
 * Loop constants Ks of plain knitting, l² = Ks·w·c, by relaxation. They are a first guess: later work finds that no one
 * constant holds, and on open fabric they read high.
 * @source Munden, J. Text. Inst. 50 (1959) T448: dry relaxed 19.0, wet relaxed 21.6; from memory. Knapton et al., Text.
 * Res. J. 38 (1968) 999: fully relaxed 5.5·4.2 = 23.1. The doubts: Choi & Lo, Text. Res. J. 73 (2003) 739
 */
const LOOP_CONSTANT: Record<Relaxation, number> = { hanging: 19, rested: 19, washed: 21.6, fully_relaxed: 23.1 };

/** The yarn in one stitch, in mm, from stitch width and row height in mm: √(Ks·w·c). */
export const loopLengthMm = (stitchMm: number, rowMm: number, state: Relaxation): number =>
  Math.sqrt(LOOP_CONSTANT[state] * stitchMm * rowMm);

/** Density of fibres, in g/cm³. Textbook figures, from memory. */
export const FIBRE_DENSITY = { wool: 1.31, cotton: 1.52 } as const;

/**
 * How thick a yarn is, in mm, where its fibres fill about half of it: .0444·√(tex/density).
 * @source Peirce's yarn of specific volume 1.1, as textbooks print it for cotton
 */
export const yarnDiameterMm = (tex: number, density: number = FIBRE_DENSITY.wool): number =>
  0.0444 * Math.sqrt(tex / density);

/**
 * The yarn in one stitch, in mm, by the geometry of a loop: 2c + w + 5.94·d. Reads lower than the constants do on open
 * fabric.
 * @source Peirce's loop, as in "The geometry of plain and rib knit cotton fabrics and its relation to shrinkage in
 * laundering", Text. Res. J. 1952
 */
export const peirceLoopMm = (stitchMm: number, rowMm: number, tex: number, density?: number): number =>
  2 * rowMm + stitchMm + 5.94 * yarnDiameterMm(tex, density);

/** How closely a loop is knitted for its yarn: √tex to the loop in cm. */
export const tightness = (tex: number, loopMm: number): number => Math.sqrt(tex) / (loopMm / 10);

/** Loops shorter than this many yarn diameters jam. @source Chamberlain: 16.67; Hepworth & Leaf: 16.75 */
const JAMMING = 16.67;

/** Whether a loop is too short for its yarn to be knitted. */
export const jams = (tex: number, loopMm: number): boolean => loopMm < JAMMING * yarnDiameterMm(tex);

/** The fabric that the constants come from is at least this tight. Spencer: 10 to 20; from memory. */
const CLOSE_FABRIC = 10;

/**
 * How far a loop length worked out from gauge alone may be off, as a coefficient of variation: 15 % on fabric as close as
 * that of the constants, 20 % on open fabric and where the yarn's tex is not known. From memory.
 */
export const guessCv = (loopMm: number, tex: number | undefined): number =>
  tex !== undefined && tightness(tex, loopMm) >= CLOSE_FABRIC ? 0.15 : 0.2;
