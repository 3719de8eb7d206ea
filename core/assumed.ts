import type { Drift } from './gauge/drift.js';
import { dimensionalChange } from './gauge/factors.js';
import type { Measurement } from './gauge/measurement.js';
import type { Layout } from './piece.js';
import { length, say, type Words } from './words.js';

type Given = {
  layout: Layout;
  /** Sizes whose window is the usual tolerance. */
  toleranced: readonly string[];
  /** What the piece itself takes for granted. */
  own: readonly Words[];
  measurements: readonly Measurement[];
  borrowedFrom: string | undefined;
  drift: Drift | undefined;
};

/** All that a plan takes for granted, in words. */
export const assumed = ({ layout, toleranced, own, measurements, borrowedFrom, drift }: Given): Words[] => [
  ...tolerances(layout, toleranced),
  ...(layout.assumed ?? []),
  ...own,
  say`measured at rest`,
  ...panelFromTube(layout, measurements),
  ...(borrowedFrom === undefined ? [] : [say`your gauge on ${borrowedFrom} holds here within 3%`]),
  ...drifting(drift),
];

const tolerances = (layout: Layout, toleranced: readonly string[]): Words[] =>
  layout.dimensions.flatMap(({ id, window, label, axis }) =>
    window && toleranced.includes(id)
      ? [
          axis === 'rows'
            ? say`give or take ${length((window.hiMm - window.loMm) / 2)}`
            : say`${label.toLowerCase()} give or take ${length((window.hiMm - window.loMm) / 2)}`,
        ]
      : [],
  );

const panelFromTube = (layout: Layout, measurements: readonly Measurement[]): Words[] =>
  layout.form === 'flat' && measurements.every((m) => m.form === 'tube')
    ? [say`a panel knits up as your tube does, within 3%`]
    : [];

const drifting = (drift: Drift | undefined): Words[] => {
  if (drift?.sureness !== 'established') return [];
  const monthly = dimensionalChange(30 * drift.perDay);
  const per = Math.abs(monthly).toFixed(1);
  return [say`older pieces count less: your rows get ${per}% ${monthly < 0 ? 'shorter' : 'longer'} a month`];
};
