import type { FieldName, Offer, Problem } from '../problems.js';
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
