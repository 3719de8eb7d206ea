import { GREY, NO_YARN, POUCH, type Rows, type Themes, TWO_MACHINES } from './row.js';

const BENCHES: Rows = [
  ['pouch 11 in wide on the 48', 'plan pouch width=279.4 machine=48 needles=48'],
  ['pouch 11 in wide on my 24', 'plan pouch width=279.4 machine=24 needles=24'],
  ['pouch 11 in wide on the 48 machine', 'plan pouch width=279.4 machine=48 needles=48'],
  ['pouch 11 in wide on the old blue', 'plan pouch width=279.4 machine=the old blue'],
  ['pouch 11 in wide on 48 needles', 'plan pouch width=279.4 needles=48'],
  ['pouch 11 in wide on a 48-needle machine', 'plan pouch width=279.4 needles=48'],
  ['pouch 11 in wide in the grey medium yarn', 'plan pouch width=279.4 yarn=grey medium'],
  ['pouch 11 in wide, grey medium', 'plan pouch width=279.4 yarn=grey medium'],
  ['pouch 11 in wide in the blue bulky yarn on the 48', 'plan pouch width=279.4 machine=48 needles=48 yarn=blue bulky'],
];

const YARNS: Rows = [
  ['pouch 11 in wide in the grey', 'plan pouch width=279.4 yarn=grey medium'],
  ['pouch 11 in wide, grey', 'plan pouch width=279.4 yarn=grey medium'],
  ['pouch 11 in wide in medium grey', 'plan pouch width=279.4 yarn=grey medium'],
  ['pouch 11 in wide in dark grey medium', 'plan pouch width=279.4 yarn=dark grey medium'],
  ['pouch 11 in wide on the 48 in grey medium', 'plan pouch width=279.4 machine=48 needles=48 yarn=grey medium'],
  [
    'pouch 11 in wide on the 48 in grey medium',
    'plan pouch width=279.4 machine=48 needles=48 yarn=grey medium',
    NO_YARN,
  ],
  ['pouch 11 in wide on the 48 in grey medium', 'plan pouch width=279.4 machine=48 needles=48 yarn=grey medium', GREY],
  ['110 rows in 22 in in oat merino', 'record rows=110/558.8 yarn=oat merino', NO_YARN],
  ['110 rows in 22 in with black dk', 'record rows=110/558.8 yarn=black dk', NO_YARN],
  ['110 rows in 22 in in wool', 'record rows=110/558.8 yarn=wool', NO_YARN],
  ['pouch 11 in wide in grey', 'plan pouch width=279.4', { yarns: ['grey dk', 'grey medium'] }],
  ['pouch 11 in wide in blue', 'plan pouch width=279.4'],
  ['medium pouch 11 in wide', 'plan pouch width=279.4'],
  ['in the grey', 'change yarn=grey medium', POUCH],
  ['what about the oat', 'change yarn=oat', POUCH],
];

const REFUSED: Rows = [
  ['pouch 11 in wide, not on the 46', 'plan pouch width=279.4 machine=48 needles=48', TWO_MACHINES],
  ['pouch 11 in wide not on the 46', 'plan pouch width=279.4'],
  ['pouch 11 in wide on the 48 not the 46', 'plan pouch width=279.4 machine=48 needles=48'],
  ['forget the 46', 'change machine=48 needles=48', { ...POUCH, ...TWO_MACHINES }],
  ['not on the 46', 'change machine=48 needles=48', { ...POUCH, ...TWO_MACHINES }],
  ['forget the 46', 'unread nothing "forget the 46"', POUCH],
];

export const BENCHES_THEMES: Themes = [
  ['machine and yarn', BENCHES],
  ['yarn by name', YARNS],
  ['a machine that is not meant', REFUSED],
];
