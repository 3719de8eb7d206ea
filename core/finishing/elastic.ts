import type { Step, Things } from '../piece.js';
import { key, length, say } from '../words.js';

/** Elastic to the girth it holds, and its overlap. Common practice, no source. */
const ELASTIC_SHARE = 0.9;
const OVERLAP_MM = 20;

/** Elastic that holds an edge on a body this far round, cut length in mm: nine tenths of it and an overlap. */
export const elasticMm = (bodyGirthMm: number): number => ELASTIC_SHARE * bodyGirthMm + OVERLAP_MM;

/** Elastic to have at hand, for each of the parts. */
export const elasticNotion = (cutMm: number, parts = 1): Things => ({
  id: 'elastic',
  count: parts,
  one: 'elastic',
  cutMm,
});

/** Elastic threaded into an edge. */
export const elasticStep = (edge: string): Step => ({
  id: 'elastic',
  driver: 'elastic',
  count: 1,
  say: say`${key`Thread the elastic`} in and out round ${edge}; overlap its ends by ${length(OVERLAP_MM)} and ${key`sew them together`}.`,
});
