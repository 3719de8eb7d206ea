import { CM, IN_HAND, NO_UNIT, POUCH, type Rows, type Themes } from './row.js';

const GAUGES: Rows = [
  ['5 rows to the inch', 'record rows=20/101.6 counted'],
  ['5 rows/in', 'record rows=20/101.6 counted'],
  ['5 rows per inch', 'record rows=20/101.6 counted'],
  ['5 rows an inch', 'record rows=20/101.6 counted'],
  ['2 rows per cm', 'record rows=20/100 counted'],
  ['tension 5 1/2 rows to the inch', 'record rows=22/101.6 counted'],
  ['20 rows to 10 cm', 'record rows=20/100 counted'],
  ['20 rows over 4 in', 'record rows=20/101.6 counted'],
  ['20 rows to the 4 inches', 'record rows=20/101.6 counted'],
  ['6 rows in 1 in', 'record rows=6/25.4 counted'],
  ['20 sts per 4 in', 'record stitches=20/101.6 counted'],
  ['13.5 stitches to 4"', 'record stitches=13.5/101.6 counted'],
  ['5 rows and 3.4 sts to the inch', 'record rows=20/101.6 counted stitches=13.6/101.6 counted'],
  ['3.4 sts and 5 rows to the inch', 'record rows=20/101.6 counted stitches=13.6/101.6 counted'],
  ['13.5 stitches x 20 rows to 4"', 'record rows=20/101.6 counted stitches=13.5/101.6 counted'],
  ['110 rows in 22 in', 'record rows=110/558.8'],
  ['110 rows in 22', 'record rows=110/558.8'],
  ['110 rows in 55.9', 'record rows=110/559', CM],
  ['110 rows in 22', 'record rows=110/22 of no unit', NO_UNIT],
  ['110 rows measures 22"', 'record rows=110/558.8'],
  ['110 rows came out at 22 in', 'record rows=110/558.8'],
  ['22 in for 110 rows', 'record rows=110/558.8'],
  ['22 in long, 110 rows', 'record rows=110/558.8'],
  ['the tube is 22 in long, 110 rows', 'record rows=110/558.8'],
  ['110 rnds, 22 in', 'record rows=110/558.8'],
  ['rows: 110, length: 22 in', 'record rows=110/558.8'],
  [
    '110 rows in 22 in and 110 rows in 30 in, 46 needles',
    'unread contradiction "110 rows in 22 in and 110 rows in 30 in"',
  ],
  [
    '110 rows in 22 in, 46 needles, 7 rows to the inch',
    'unread contradiction "110 rows in 22 in and 7 rows to the inch"',
  ],
  ['needles: 46, rows: 110, length: 22 in, flat: 6 3/4', 'record rows=110/558.8 flat=171.45 needles=46'],
  ['46 needles, 110 rows, 22 in long, 6 3/4 flat', 'record rows=110/558.8 flat=171.45 needles=46'],
  ['6 3/4 in flat, 46 ndls, 22" long, 110 rows', 'record rows=110/558.8 flat=171.45 needles=46'],
  ['40 needles, 60 rows, 27 cm long, 14.5 flat', 'record rows=60/270 flat=145 needles=40'],
  ['46-needle tube, 110 rows, 22 in long, 6 3/4 in wide', 'record rows=110/558.8 flat=171.45 needles=46'],
  ['46 needles, tube 6 3/4 in flat', 'record flat=171.45 needles=46'],
  ['46 needles, folded 6 3/4', 'record flat=171.45 needles=46'],
  ['flat width 6 3/4 in on 46 needles', 'record flat=171.45 needles=46'],
  ['panel 20 needles, 60 rows in 12 in, 6 in wide', 'record rows=60/304.8 flat=152.4 needles=20 panel'],
  ['swatch: 60 rows, 12 1/4 in, 6 3/4 in flat, washed', 'record rows=60/311.15 flat=171.45 washed'],
  ['60 rows hanging 12.5 in', 'record rows=60/317.5 hanging'],
  ['60 rows straight off the machine 12 3/4 in', 'record rows=60/323.85 hanging'],
  ['60 rows in 12 in, laid flat to rest, relaxed', 'record rows=60/304.8 rested'],
  ['110 rows in 22 in on the 48 in grey medium', 'record rows=110/558.8 machine=48 needles=48 yarn=grey medium'],
  ['110 rows in 22 in with the blue bulky yarn', 'record rows=110/558.8 yarn=blue bulky'],
  ['110 rows in 22 in and 60 rows in 12.2 in', 'record rows=110/558.8; record rows=60/309.88'],
  [
    '60 rows in 12.2 in, 80 rows in 15.8 in, 110 rows in 22 in',
    'record rows=60/309.88; record rows=80/401.32; record rows=110/558.8',
  ],
  ['110 rows', 'record rows=110/?'],
  ['my machine has 46 needles', 'record needles=46'],
  ['46 needles', 'record needles=46', { command: '/gauge' }],
  ['46 sts round, 110 rows, 22 in long', 'record rows=110/558.8 needles=46'],
  ['46 stitches around, 6 3/4 flat', 'record flat=171.45 needles=46'],
  ['46 needles, 13 1/2 in around, 110 rows in 22 in', 'record rows=110/558.8 flat=171.45 needles=46'],
  ['machine: 46 needles. 110 rows = 22 in. flat = 6 3/4', 'record rows=110/558.8 flat=171.45 needles=46'],
  ['knitted 110 rows and it is 22 inches long and 6 and three quarters wide flat', 'record rows=110/558.8 flat=171.45'],
  ['60 rows in 12 1/4 after washing', 'record rows=60/311.15 washed'],
  ['46 needles 110 rows in 22 in 6 3/4 flat', 'record rows=110/558.8 flat=171.45 needles=46', CM],
  ['46 needles 110 rows in 22 in 1 1/2 flat', 'record rows=110/558.8 flat=38.1 needles=46', CM],
  ['1e9 rows in 12 in', 'record rows=1000000000/304.8', POUCH],
  ['gauge: 110 rows in 22 in', 'record rows=110/558.8', POUCH],
];

const GUESSES: Rows = [
  ['about 60 rows in 12 in I think', 'unread guess "about 60 rows in 12 in I think"'],
  ['60 rows in 12 in, I guess.', 'unread guess "60 rows in 12 in, I guess"'],
  ['about 60 rows in 12 in', 'unread guess "about 60 rows in 12 in"'],
  ['110 rows in 22 in, 46 needles I think', 'unread guess "110 rows in 22 in, 46 needles I think"'],
  ['probably 60 rows in 12 in', 'unread guess "probably 60 rows in 12 in"'],
  ['60 rows in 12 in. pouch maybe 11 in wide', 'record rows=60/304.8; plan pouch width=279.4'],
  ['60 rows in 12 in, I think I want a pouch 11 in wide', 'record rows=60/304.8; plan pouch width=279.4'],
  ['60 rows in about 12 in', 'record rows=60/304.8'],
  ['row 60, 12 1/4 in I think', 'unread guess "row 60, 12 1/4 in I think"', IN_HAND],
  ['tube about 11 in wide I think', 'plan plain-tube width=279.4'],
];

const BARE: Rows = [
  ['gauge 5', 'unread bare_gauge "gauge 5"'],
  ['gauge 5', 'unread bare_gauge "gauge 5"', POUCH],
  ['my gauge is 5 to the inch', 'unread bare_gauge "gauge is 5"', POUCH],
  ['gauge 6, the 60, grey medium', 'unread bare_gauge "gauge 6"', POUCH],
  ['gauge 5 rows to the inch', 'record rows=20/101.6 counted', POUCH],
];

const STATES: Rows = [
  ['60 rows were 11 7/8 hanging and now 11 1/2 rested', 'record rows=60/292.1 rested after 60/301.63 hanging'],
  [
    '60 rows: 11 7/8 in hanging, 11 1/2 in rested, 6 3/4 flat',
    'record rows=60/292.1 flat=171.45 rested after 60/301.63 hanging',
  ],
  ['60 rows hanging 12.5 in, rested 12.1 in', 'record rows=60/307.34 rested after 60/317.5 hanging'],
  ['60 rows 12 1/2 in hanging, 60 rows 12.1 in rested', 'record rows=60/307.34 rested after 60/317.5 hanging'],
  [
    '60 rows 12.5 in hanging, 12.1 in rested, 12 in washed',
    'record rows=60/304.8 washed after 60/317.5 hanging after 60/307.34 rested',
  ],
  [
    '110 rows 22 1/2 in hanging, 22 in after rest, 46 needles',
    'record rows=110/558.8 needles=46 rested after 110/571.5 hanging',
  ],
  ['60 rows 12 in rested and 11 1/2 after washing', 'record rows=60/292.1 washed after 60/304.8 rested'],
  ['60 rows in 12 in hanging, 80 rows in 15.8 in rested', 'record rows=60/304.8 hanging; record rows=80/401.32 rested'],
  [
    '60 rows were 12 hanging and 11.5 rested. pouch 11 in wide',
    'record rows=60/292.1 rested after 60/304.8 hanging; plan pouch width=279.4',
  ],
  ['60 rows, 12 in before washing, 11.5 after', 'record rows=60/292.1 washed after 60/304.8 rested'],
  ['60 rows weighted 12 1/2, relaxed 12', 'record rows=60/304.8 rested after 60/317.5 hanging'],
  ['60 rows 12 in before washing', 'record rows=60/304.8 rested'],
];

const BOTH: Rows = [
  ['pouch 11 in wide, 5 rows to the inch', 'record rows=20/101.6 counted; plan pouch width=279.4'],
  ['5 rows per inch, rows for a pouch 11 in wide?', 'record rows=20/101.6 counted; plan pouch width=279.4'],
  [
    'I get 110 rows in 22 in, how many rows for a pouch 11 by 6 3/4',
    'record rows=110/558.8; plan pouch width=279.4 height=171.45',
  ],
  [
    '46 needles, 110 rows, 22 in long, 6 3/4 flat. Rows for a pouch with a 9 in zip',
    'record rows=110/558.8 flat=171.45 needles=46; plan pouch closure=228.6',
  ],
  ['the tube is 22 in long, 110 rows. rows for a pouch 11 in wide', 'record rows=110/558.8; plan pouch width=279.4'],
  [
    '46-needle tube, 110 rows, 22 in long, 6 3/4 in wide, rows for a pouch 11 in wide',
    'record rows=110/558.8 flat=171.45 needles=46; plan pouch width=279.4',
  ],
];

export const GAUGES_THEMES: Themes = [
  ['something measured', GAUGES],
  ['one object in several states', STATES],
  ['a gauge and a plan in one message', BOTH],
  ['a guess', GUESSES],
  ['a gauge of one number', BARE],
];
