import type { Context } from '../../../bot/language/context.js';
import { NOVEMBER, type Rows, type Themes } from './row.js';

/** The swatch recorded last has 90 rows. */
const SWATCH: Partial<Context> = { swatchRows: 90 };

const SETTINGS: Rows = [
  ['60 rows in 12 1/4 in, tension 5', 'record rows=60/311.15 tension=5'],
  ['60 rows in 12 1/4 in at tension six', 'record rows=60/311.15 tension=6'],
  ['tension 5: 60 rows in 12 1/4 in', 'record rows=60/311.15 tension=5'],
  ['60 rows 12 1/4 in on 6', 'record rows=60/311.15 tension=6'],
  ['60 rows 12 1/4 in, dial 4½', 'record rows=60/311.15 tension=4½'],
  ['60 rows 12 1/4 in, dial at 4 1/2', 'record rows=60/311.15 tension=4½'],
  ['60 rows 12 1/4 in, dial 4.5', 'record rows=60/311.15 tension=4½'],
  ['pouch 11 in wide at tension 5', 'plan pouch width=279.4 tension=5'],
];

const YARNS: Rows = [
  ['category 4', 'record category=4'],
  ['yarn weight 4', 'record category=4'],
  ['60 rows in 12 in, medium weight (4)', 'record rows=60/304.8 category=4'],
  ['60 rows in 12 in in super bulky weight', 'record rows=60/304.8 category=6'],
  ['lace weight', 'record category=0'],
  ['grey medium is category 4', 'record yarn=grey medium category=4'],
  ['500 tex', 'record tex=500'],
  ['Nm 2/6', 'record tex=333.33'],
  ['6/2 Nm', 'record tex=333.33'],
  ['8/2 Ne', 'record tex=147.64'],
  ['2000 denier', 'record tex=222.22'],
  ['8 wpi', 'record category=5'],
  ['grey yarn is 8 wraps per inch', 'record yarn=grey medium category=5'],
  ['200 m per 100 g', 'record tex=500', { command: '/gauge' }],
  ['200m/100g, category 4', 'record category=4 tex=500'],
  ['50 g = 105 m', 'record tex=476.19', { command: '/gauge' }],
  ['60 rows in 12 in, 109 yd per 50 g', 'record rows=60/304.8 tex=501.66'],
  ['60 yards per ounce', 'record tex=516.72'],
  ['60 rows in 12 in, 200 m per 100 g', 'record rows=60/304.8 tex=500'],
  ['500 tex, 46 needles', 'record needles=46 tex=500'],
];

const MASSES: Rows = [
  ['60 rows 12.2 in, 38 g', 'record rows=60/309.88 38g'],
  ['60 rows in 12.2 in, 6 3/4 flat, weighs 38 g', 'record rows=60/309.88 flat=171.45 38g'],
  ['60 rows, weighs 1 oz, 12.2 in', 'record rows=60/309.88 28.35g'],
  ['60 rows 270 g', 'record rows=60/270g'],
  ['it weighs 38 g', 'record same 38g'],
  ['46 stitches unravelled to 1.24 m', 'record drawn=46/1240'],
  ['20 stitches took 53 cm', 'record drawn=20/530'],
  ['unravelled 46 stitches: 1.24 m', 'record drawn=46/1240'],
  ['46 sts unravled to 1.24 m', 'record drawn=46/1240'],
];

const SAME: Rows = [
  ['same one now 15 3/8, 8 1/8 wide', 'record rows=90/390.53 flat=206.38 same', SWATCH],
  ["it's been lying an hour. same one now 15 3/8, 8 1/8 wide", 'record rows=90/390.53 flat=206.38 rested same', SWATCH],
  ['the same piece: 90 rows 15 3/8 rested', 'record rows=90/390.53 rested same'],
  ['the same piece weighs 38 g', 'record same 38g'],
];

const DAYS: Rows = [
  ['60 rows 12.2 in, measured on 3 november', 'record rows=60/309.88 day=2026-11-03', NOVEMBER],
  ['60 rows 12.2 in yesterday', 'record rows=60/309.88 day=2026-11-08', NOVEMBER],
  ['60 rows 12.2 in, last monday', 'record rows=60/309.88 day=2026-11-02', NOVEMBER],
  ['60 rows 12.2 in on friday', 'record rows=60/309.88 day=2026-11-06', NOVEMBER],
  ['60 rows 12.2 in, 3 days ago', 'record rows=60/309.88 day=2026-11-06', NOVEMBER],
  ['60 rows 12.2 in on 2025-11-03', 'record rows=60/309.88 day=2025-11-03', NOVEMBER],
  [
    '60 rows 12.2 in on 3 november. pouch 11 in wide by 5 december',
    'record rows=60/309.88 day=2026-11-03; plan pouch width=279.4 by=2026-12-05',
    NOVEMBER,
  ],
  ['500 tex since 3 november', 'record tex=500 since=2026-11-03', NOVEMBER],
  ['60 rows 12.2 in, note: new oil, 2 drops', 'record rows=60/309.88 note="new oil, 2 drops"'],
  ['60 rows 12.2 in. Notes: row 60 was loose', 'record rows=60/309.88 note="row 60 was loose"'],
  ['new gauge 60 rows 12.2 in rested, and start', 'record rows=60/309.88 rested; start'],
];

export const GAUGE_MORE_THEMES: Themes = [
  ['a tension setting', SETTINGS],
  ['the weight of a yarn', YARNS],
  ['a mass and an unravelled length', MASSES],
  ['the same swatch again', SAME],
  ['the day and the note of a record', DAYS],
];
