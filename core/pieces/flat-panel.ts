import { aspects } from '../aspects.js';
import { further } from '../finishing/further.js';
import { castOffSteps, looseTail } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { PANEL_NEEDLES, TO_AND_FRO } from '../finishing/panel-seam.js';
import { joinSteps } from '../finishing/strips.js';
import { type Asked, type Fabric, type Layout, piece, type Step } from '../piece.js';
import { done, type Offer, type Outcome, refused } from '../problems.js';
import { needlesFor } from '../sizing/needles.js';
import { MOST_JOINED, NEEDLES_FREE } from '../sizing/panels.js';
import { SIDES } from '../sizing/sides.js';
import { count, key, length, say, type Words } from '../words.js';

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
  joined: { is: 'count', label: 'Panels joined', words: ['joined', 'strips', 'side'], min: 1, max: MOST_JOINED },
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

/** Panels side by side: K of n needles come to K(n − 2)w + 2w, for each full-stitch seam takes a stitch of either. */
const panelsOf = (asked: Asked<typeof asks>): number => asked.joined ?? 1;
const shownExtra = (panels: number, seam: string): number => (2 - 2 * panels - lost(seam)) / panels || 0;

/**
 * Panels of at most `max` needles: one as wide as it gets, and several joined to a width.
 * @param stitches the width wanted, in stitches that show
 */
function narrower(stitches: number, max: number, stitchMm: number | undefined): Offer[] {
  if (max < asks.needles.min) return [];
  const wide = (shown: number): Words =>
    stitchMm === undefined ? say`${count(shown, 'stitch', 'stitches')} wide` : say`${length(shown * stitchMm)} wide`;
  const panels = Math.max(2, Math.ceil((stitches - 2) / (max - 2)));
  const each = Math.max(asks.needles.min, Math.round((stitches - 2) / panels) + 2);
  const edit = (needles: number, joined: number): Offer['edit'] => ({
    width: null,
    needles: { is: 'count', count: needles },
    joined: joined === 1 ? null : { is: 'count', count: joined },
    seam: { is: 'choice', id: 'free' },
  });
  const joined: Offer = {
    label: say`${panels} panels of ${each} needles, joined with full-stitch seams to about ${wide(panels * (each - 2) + 2)}`,
    edit: edit(each, panels),
  };
  return [
    ...(panels > MOST_JOINED ? [] : [joined]),
    { label: say`${max} needles, the most it takes, about ${wide(max)}`, edit: edit(max, 1) },
  ];
}

function layouts(asked: Asked<typeof asks>, fabric: Fabric): Outcome<readonly Layout[]> {
  const panels = panelsOf(asked);
  const measure = { share: panels, extra: shownExtra(panels, asked.seam), fixedMm: 0 };
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
      offers: narrower(panels * (needles + measure.extra), fabric.needles - NEEDLES_FREE, stitchMm),
    });
  }
  return done([
    {
      id: 'flat',
      form: 'flat',
      parts: panels,
      needles,
      dimensions: [
        {
          ...SIDES.length,
          axis: 'rows',
          share: 1,
          extra: 0,
          fixedMm: 0,
          window: asked.length,
        },
        {
          ...SIDES.width,
          axis: 'needles',
          ...measure,
          window: asked.width,
        },
      ],
    },
  ]);
}

const eachOf = (panels: number): Step => ({
  id: 'each',
  driver: 'check',
  count: 1,
  say: say`${key`Knit ${panels} panels alike`}, each by the steps from here to its cast-off, with the same rows.`,
});

export const flatPanel = piece({
  id: 'flat-panel',
  label: 'Flat panel',
  words: [
    ...['panel', 'panels', 'flat panel', 'flat panels', 'flat piece', 'coaster', 'coasters', 'dishcloth', 'dishcloths'],
    ...['washcloth', 'washcloths', 'face cloth', 'placemat', 'placemats', 'place mat', 'place mats'],
  ],
  nearestTo: [
    {
      words: [
        ...['sweater', 'sweaters', 'jumper', 'jumpers', 'cardigan', 'cardigans', 'pullover', 'pullovers', 'waistcoat'],
        ...['dress', 'dresses', 'skirt', 'skirts', 'tank top', 'romper'],
      ],
      lacks: 'edges that are shaped',
    },
    {
      words: ['potholder', 'potholders', 'pot holder', 'pot holders', 'oven glove'],
      lacks: 'a fabric that keeps heat off',
    },
  ],
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
    const bars = say`Keep the side edges to sew: ${key`${count(made.rows, 'bar')} up each edge`}.`;
    const panels = panelsOf(made.asked);
    const taken = say`a full stitch from each edge`;
    const joined = joinSteps('panels', { parts: panels, bars: made.rows, rowMm: made.rowMm, taken });
    const knitted = [
      ...startSteps(made, looseTail, { beside: PANEL_NEEDLES }),
      ...bodySteps(made, { ...TO_AND_FRO, end: say`; it ends at ${side}` }),
      ...endSteps(made, looseTail),
      ...castOffSteps(made.needles),
      ...(made.asked.seam === 'free' ? [] : [further('edges', bars)]),
    ];
    return [
      ...(panels === 1 ? knitted : [eachOf(panels), ...knitted.map((step) => ({ ...step, times: panels }))]),
      ...(panels === 1 ? [] : joined),
      ...tidySteps(2 * panels + 2 * (panels - 1), 'length'),
    ];
  },
  outline: ({ layout, rows, rowMm, needles, stitchMm }) =>
    rectangle(layout.parts * ((needles ?? 0) + (layout.dimensions[1]?.extra ?? 0)) * (stitchMm ?? 0), rows * rowMm, {
      bottom: 'edge',
      right: 'edge',
      top: 'edge',
      left: 'edge',
    }),
  traits: () => [],
  ofPanels: ({ count: panels, needles, along }) => ({
    length: { is: 'window', ...along },
    needles: { is: 'count', count: needles },
    ...(panels === 1 ? {} : { joined: { is: 'count', count: panels } }),
    seam: { is: 'choice', id: 'full' },
  }),
});
