import type { FieldName, Offer, Problem } from '../problems.js';
import type { Panels } from './in-panels.js';
import { needlesFor } from './needles.js';
import { dimensionMm, type Measure, type Window } from './rows.js';

/** Needles a panel must leave free on the circle. Common practice; the machine's own limit wins. */
export const NEEDLES_FREE = 2;

/** The most needles a panel can have; without limit while the machine is not known. */
export const mostNeedles = (needles: number | undefined): number =>
  needles === undefined ? Number.POSITIVE_INFINITY : needles - NEEDLES_FREE;

/** The middle of a window as factors see it: lo and hi are as many times off. */
export const middleMm = ({ loMm, hiMm }: Window): number => Math.sqrt(loMm * hiMm);

export const isWithin = (mm: number, { loMm, hiMm }: Window): boolean => mm >= loMm && mm <= hiMm;

/** Within this share of the middle, tension reaches a size across the needles. From memory. */
const REACH = 0.08;
export const isReached = (mm: number, window: Window): boolean => Math.abs(mm / middleMm(window) - 1) <= REACH;

/** Panels that one piece may be joined from; more of them are a blanket. From memory. */
export const MOST_JOINED = 12;

/** Stitches of a panel that full-stitch seams at both edges take in. */
const SEAM_STITCHES = 2;

/**
 * The fewest panels that a machine's needles can knit to a size: K(n − 2)·w, since a full stitch of each edge goes into
 * a seam. Undefined where they would be a blanket, or where whole stitches miss the window.
 * @param needles of the machine
 */
export function panelsInstead(
  { way, along }: Pick<Panels, 'way' | 'along'>,
  { window, measure, stitchMm }: Pick<Panel, 'window' | 'measure' | 'stitchMm'>,
  needles: number,
): Panels | undefined {
  // A single layer shows all of its stitches side by side.
  const shown = way === 'one_layer' ? { ...measure, share: 1, extra: 0 } : measure;
  const stitches = needlesFor(window, shown, stitchMm);
  const most = mostNeedles(needles) - SEAM_STITCHES;
  const count = Math.ceil(stitches / most);
  if (most < 1 || count > MOST_JOINED) return undefined;
  const each = Math.round(stitches / count);
  const isMade = isWithin(dimensionMm(shown, count * each, stitchMm), window);
  return isMade ? { way, count, needles: each + SEAM_STITCHES, along } : undefined;
}

type Panel = { field: FieldName; window: Window; needles: number; measure: Measure; stitchMm: number };

/** A panel that takes more needles than there are, or whose needles come to another size than was asked for. */
export function panelRefused(panel: Panel, most: number, offers: readonly Offer[]): Problem {
  const { field, window, needles, measure, stitchMm } = panel;
  if (needles > most)
    return { code: 'too_many_needles', given: needles, max: most, machine: most + NEEDLES_FREE, offers };
  const expectedMm = dimensionMm(measure, needles, stitchMm);
  return {
    code: 'needles_set_it',
    field: { id: field.id, label: field.label },
    expectedMm,
    window,
    needles,
    needlesWanted: needles,
    stitchChange: middleMm(window) / expectedMm - 1,
    offers,
  };
}
