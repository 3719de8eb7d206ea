import { aspects } from '../aspects.js';
import { castOffSteps, looseTail } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { type Asked, type Fabric, type Layout, piece } from '../piece.js';
import { done, type Offer, type Outcome, refused } from '../problems.js';
import { needlesFor } from '../sizing/needles.js';
import { count, length, say, type Words } from '../words.js';

/** Needles a panel must leave free on the circle. Common practice; the machine's own limit wins. */
const NEEDLES_FREE = 2;

const asks = {
  width: {
    is: 'window',
    label: 'Width',
    question: 'How wide should the panel be?',
    words: aspects.wide,
    minMm: 20,
    maxMm: 1500,
    tolerance: { share: 0.03 },
    source: 'tolerance: from memory',
  },
  length: {
    is: 'window',
    label: 'Length',
    question: 'How long should the panel be?',
    words: [...aspects.long, ...aspects.tall],
    minMm: 20,
    maxMm: 20_000,
    tolerance: { share: 0.03 },
    source: 'tolerance: from memory',
  },
  needles: { is: 'count', label: 'Needles', words: ['needles', 'needle'], min: 3, max: 400 },
  seam: {
    is: 'choice',
    label: 'Edges',
    words: ['seam', 'seams', 'edges'],
    options: [
      { id: 'free', label: 'free edges', words: ['free', 'no', 'none'] },
      { id: 'half', label: 'a half-stitch seam at each edge', words: ['half'] },
      { id: 'full', label: 'a full-stitch seam at each edge', words: ['full', 'seamed'] },
    ],
    default: 'free',
  },
} as const;

/** Stitches lost to the seams at both edges. */
const LOST: Record<string, number> = { free: 0, half: 1, full: 2 };
const lost = (seam: string): number => LOST[seam] ?? 0;

/**
 * Panels of at most `max` needles: one as wide as it gets, and several joined to a width. K of n needles come to
 * K(n − 2)w + 2w, for each full-stitch seam takes a stitch of either panel.
 * @param stitches the width wanted, in stitches that show
 */
function narrower(stitches: number, max: number, stitchMm: number | undefined): Offer[] {
  if (max < asks.needles.min) return [];
  const wide = (shown: number): Words =>
    stitchMm === undefined ? say`${count(shown, 'stitch', 'stitches')} wide` : say`${length(shown * stitchMm)} wide`;
  const panels = Math.max(2, Math.ceil((stitches - 2) / (max - 2)));
  const each = Math.max(asks.needles.min, Math.round((stitches - 2) / panels) + 2);
  const edit = (needles: number, seam: string): Offer['edit'] => ({
    width: null,
    needles: { is: 'count', count: needles },
    seam: { is: 'choice', id: seam },
  });
  return [
    {
      label: say`${panels} panels of ${each} needles, joined with full-stitch seams to about ${wide(panels * (each - 2) + 2)}`,
      edit: edit(each, 'full'),
    },
    { label: say`${max} needles, the most it takes, about ${wide(max)}`, edit: edit(max, 'free') },
  ];
}

function layouts(asked: Asked<typeof asks>, fabric: Fabric): Outcome<readonly Layout[]> {
  const measure = { share: 1, extra: 0 - lost(asked.seam), fixedMm: 0 };
  const stitchMm = fabric.stitchMm.flat;
  const forWidth = asked.width && stitchMm && needlesFor(asked.width, measure, stitchMm);
  const needles = asked.needles ?? (forWidth && Math.max(asks.needles.min, forWidth));
  if (needles === undefined)
    return refused({ code: 'no_stitch_gauge', field: { id: 'width', label: asks.width.label } });
  if (fabric.needles !== undefined && needles > fabric.needles - NEEDLES_FREE) {
    return refused({
      code: 'too_many_needles',
      given: needles,
      max: fabric.needles - NEEDLES_FREE,
      machine: fabric.needles,
      offers: narrower(needles - lost(asked.seam), fabric.needles - NEEDLES_FREE, stitchMm),
    });
  }
  return done([
    {
      id: 'flat',
      form: 'flat',
      parts: 1,
      needles,
      dimensions: [
        {
          id: 'length',
          figure: 'lengthMm',
          label: 'Length',
          adjective: 'long',
          axis: 'rows',
          share: 1,
          extra: 0,
          fixedMm: 0,
          window: asked.length,
        },
        {
          id: 'width',
          figure: 'widthMm',
          label: 'Width',
          adjective: 'wide',
          axis: 'needles',
          ...measure,
          window: asked.width,
        },
      ],
    },
  ]);
}

export const flatPanel = piece({
  id: 'flat-panel',
  label: 'Flat panel',
  words: ['panel', 'panels', 'flat panel', 'flat panels', 'flat piece'],
  asks,
  pair: ['width', 'length'],
  needs: [['length'], ['width', 'needles']],
  example: 'a flat panel 8 in wide and 12 in long',
  layouts,
  assumes: ({ asked, rows }) => [
    ...(asked.seam === 'free' ? [say`free edges, which curl inward a little`] : []),
    ...(rows % 2 === 0
      ? []
      : [say`${rows} rows, an odd count, end at the far side; even ones, ${rows - 1} or ${rows + 1}, are easier`]),
  ],
  notions: () => [],
  steps: (made) => {
    const side = made.rows % 2 === 0 ? say`the side it began on` : say`the side away from its start`;
    const bars = made.asked.seam === 'free' ? say`` : say`, with ${count(made.rows, 'bar')} up each edge to sew`;
    return [
      ...startSteps(made, looseTail, {
        beside: say` Mark the first and the last of them, leave the others out of work, and turn back at the marks: past them stitches drop.`,
      }),
      ...bodySteps(made, {
        crank: say` to and fro, weights on both edges`,
        stop: say``,
        end: say`; it ends at ${side}${bars}`,
      }),
      ...endSteps(made, looseTail),
      ...castOffSteps(made.needles),
      ...tidySteps(2, 'length'),
    ];
  },
  outline: ({ layout, rows, rowMm, needles, stitchMm }) =>
    rectangle(((needles ?? 0) + (layout.dimensions[1]?.extra ?? 0)) * (stitchMm ?? 0), rows * rowMm, {
      bottom: 'edge',
      right: 'edge',
      top: 'edge',
      left: 'edge',
    }),
  traits: () => [],
});
