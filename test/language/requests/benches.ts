import type { Context } from '../../../bot/language/context.js';
import { asking, GREY, NO_YARN, POUCH, type Rows, type Themes, TWO_MACHINES } from './row.js';

const OAT: Partial<Context> = { yarns: ['oat medium'] };
const MEDIUMS: Partial<Context> = { yarns: ['grey medium', 'oat medium'] };
const SWATCH = 'record rows=60/270 flat=145 needles=40';
const OTHER_YARN = 'record rows=120/566 machine=52 needles=52 yarn=grey medium';

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
  ['40 needles 60 rows 27 cm long 14.5 flat, oat medium', `${SWATCH} yarn=oat medium`],
  ['40 needles 60 rows 27 cm long 14.5 flat, oat medium', `${SWATCH} yarn=oat medium`, NO_YARN],
  ['oat medium, 40 needles 60 rows 27 cm long 14.5 flat', `${SWATCH} yarn=oat medium`, NO_YARN],
  ['60 rows 12 in oat medium', 'record rows=60/304.8 yarn=oat medium', { yarns: ['medium'] }],
  ['in the oat', 'change yarn=oat medium', { ...POUCH, ...MEDIUMS }],
  ['in medium oat', 'change yarn=oat medium', { ...POUCH, ...MEDIUMS }],
  [
    '40 needles 60 rows 27 cm long 14.5 flat, grey wool on the 40',
    'record rows=60/270 flat=145 machine=40 needles=40 yarn=grey wool',
    NO_YARN,
  ],
  ['120 rows in 56.6 cm, on the 52, grey medium', OTHER_YARN, { ...asking('gauge', 'pouch'), ...OAT }],
  ['62 rows 28 cm, bulky', 'record rows=62/280 yarn=bulky'],
  ['62 rows 28 cm, heavy', 'record rows=62/280'],
  ['pouch 11 in wide, medium', 'plan pouch width=279.4'],
  ['12 wide, light', 'change width=304.8', POUCH],
  ['medium yarn', 'unread which_yarn "medium: grey medium or oat medium"', { ...POUCH, ...MEDIUMS }],
  ['in the medium', 'unread which_yarn "medium: grey medium or oat medium"', { ...POUCH, ...MEDIUMS }],
  ['60 rows in 12 in, medium yarn', 'record rows=60/304.8', MEDIUMS],
  ['panel 12 in long on the 48', 'plan flat-panel length=304.8 machine=48 needles=48'],
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
