import type { Fabric, Layout } from '../piece.js';
import { count, length, say, type Words } from '../words.js';
import { needlesFor } from './needles.js';
import { middleMm, mostNeedles } from './panels.js';
import { dimensionMm, type Measure, type Window } from './rows.js';
import { SIDES } from './sides.js';

/** One side of a form: its label size, and the window that the cover's side must end in. */
type Side = { labelMm: number; window: Window };
export type Sides = { width: Side; height: Side };
type SideName = keyof Sides;

/** A way to lay a cover, the opening along `opens`; `off` tells how far the needles miss the form, in logs. */
type Lay = { layout: Layout; opens: SideName; edgeMm: number; off: number };

/** The share of a form that its cover has: 0 to 5 % under. Common practice. */
export const KEEPS = { lo: 0.95, hi: 1 };

/** Needles may miss that by this share on either side. From memory. */
const GRACE = 0.02;

/** Rings joined side by side in one cover. From memory. */
const MOST_RINGS = 6;

/** A tube stood up, its bottom shut flat; one grafted to a ring and folded, seamed below; flat rings side by side. */
const UPRIGHT = { rows: { share: 1, extra: 1 / 2, fixedMm: 0 }, needles: { share: 1 / 2, extra: 0, fixedMm: 0 } };
const SIDEWAYS = { rows: { share: 1 / 2, extra: 1, fixedMm: 0 }, needles: { share: 1 / 2, extra: -1, fixedMm: 0 } };
const ringsOf = (rings: number): Measure => ({ share: rings, extra: -2, fixedMm: 0 });

const other = (side: SideName): SideName => (side === 'width' ? 'height' : 'width');

/** Whether a size suits a side of the form of this label size. */
export const isNear = (mm: number, labelMm: number): boolean =>
  mm >= (KEEPS.lo - GRACE) * labelMm && mm <= (KEEPS.hi + GRACE) * labelMm;

/** Rows make the side `along`, needles the other. */
function dimensions(sides: Sides, along: SideName, rows: Measure, needles: Measure): Layout['dimensions'] {
  const across = other(along);
  return [
    { ...SIDES[along], axis: 'rows', ...rows, window: sides[along].window },
    { ...SIDES[across], axis: 'needles', ...needles, window: sides[across].window },
  ];
}

/** Tubes whose needles come near a side of the form, the nearest first; of two as near, the one of less yarn. */
function tubes(sides: Sides, needles: number, stitchMm: number): Lay[] {
  const found = (['width', 'height'] as const).flatMap((along) => {
    const { labelMm } = sides[other(along)];
    return [
      { id: 'upright', ...UPRIGHT, opens: other(along) },
      { id: 'sideways', ...SIDEWAYS, opens: along },
    ].flatMap((way): Lay[] => {
      const mm = dimensionMm(way.needles, needles, stitchMm);
      if (!isNear(mm, labelMm)) return [];
      const because = say`laid ${way.id}: your needles make ${length(mm)}, near the ${length(labelMm)} of the form`;
      const layout = { id: way.id, form: 'round' as const, parts: 1, because };
      return [
        {
          layout: { ...layout, dimensions: dimensions(sides, along, way.rows, way.needles) },
          opens: way.opens,
          edgeMm: way.id === 'upright' ? mm : middleMm(sides[along].window),
          off: Math.abs(Math.log(mm / labelMm)),
        },
      ];
    });
  });
  return found.sort((a, b) => (Math.abs(a.off - b.off) > 1e-9 ? a.off - b.off : rank(a) - rank(b)));
}

const rank = ({ layout }: Lay): number => (layout.id === 'upright' ? 0 : 1);

/** Flat rings whose rows make the side `along`: how many side by side, and the needles of each. */
export function ringed(sides: Sides, along: SideName, needles: number | undefined, stitchMm: number) {
  const most = mostNeedles(needles);
  const { window } = sides[other(along)];
  const rings = Math.max(1, Math.ceil(window.loMm / (Math.max(1, most - 2) * stitchMm)));
  const measure = ringsOf(Math.min(rings, MOST_RINGS));
  return { rings, most, window, measure, needles: needlesFor(window, measure, stitchMm) };
}

const whyRings = (rings: number, most: number, tubeMm: number | undefined): Words | undefined => {
  if (rings > 1)
    return say`${count(rings, 'flat ring')} side by side, since a panel takes ${count(most, 'needle')} at most`;
  return tubeMm ? say`a flat ring, since a tube of all your needles is ${length(tubeMm)} wide flat` : undefined;
};

function rings(sides: Sides, { needles, stitchMm: { round } }: Fabric, stitchMm: number): Lay[] {
  const found = (['width', 'height'] as const).flatMap((along): Lay[] => {
    const way = ringed(sides, along, needles, stitchMm);
    const n = Math.min(way.needles, way.most);
    const { labelMm } = sides[other(along)];
    const mm = dimensionMm(way.measure, n, stitchMm);
    if (way.rings > MOST_RINGS || n < 3 || !isNear(mm, labelMm)) return [];
    const layout: Layout = {
      id: 'ring',
      form: 'flat',
      parts: way.rings,
      needles: n,
      because: whyRings(way.rings, way.most, needles && round && (needles * round) / 2),
      dimensions: dimensions(sides, along, SIDEWAYS.rows, way.measure),
    };
    return [{ layout, opens: along, edgeMm: middleMm(sides[along].window), off: Math.abs(Math.log(mm / labelMm)) }];
  });
  return found.sort((a, b) => a.layout.parts - b.layout.parts);
}

/** Ways to lay a cover, best first: tubes that fit, then flat rings. */
export const lays = (sides: Sides, fabric: Fabric, flatMm: number): Lay[] => [
  ...(fabric.needles && fabric.stitchMm.round ? tubes(sides, fabric.needles, fabric.stitchMm.round) : []),
  ...rings(sides, fabric, flatMm),
];
