import type { Size } from '../../../bot/request.js';
import { asking, CM, NO_UNIT, POUCH, type Rows, type Themes } from './row.js';

const HEADS: Size[] = [48, 52, 56].map((cm) => ({
  label: String(cm),
  values: { head: { is: 'length', mm: 10 * cm, said: cm === 56 ? '56 cm' : String(cm), assumed: 'same_unit' } },
}));
const PERSONS: Size[] = ['3 months', '1 year', 'women'].map((label, i) => ({
  label,
  values: { head: { is: 'length', mm: 400 + 50 * i, assumed: 'body' } },
}));
export const HEADBANDS = { ...CM, subjectPiece: 'headband', sizes: HEADS };
const HATS = { ...CM, subjectPiece: 'hat', sizes: PERSONS };

const PAIRS: Rows = [
  ['pouch 11 x 6 and 12 x 7', 'plan pouch each width=279.4 height=152.4 each width=304.8 height=177.8'],
  [
    'pouches 28 x 16 cm, 30 x 17 cm and 32 x 18 cm',
    'plan pouch each width=280 height=160 each width=300 height=170 each width=320 height=180',
  ],
  ['11 x 6 or 12 x 7', 'change each width=279.4 height=152.4 each width=304.8 height=177.8', POUCH],
  ['strip blanket 60 in long in strips of 6 in', 'plan strip-blanket length=1524'],
  ['6 strips', 'change strips=6', asking('width', 'strip-blanket')],
  ['strips of 6 in', 'unread nothing "strips of 6 in"', { subjectPiece: 'strip-blanket' }],
  ['pouch 11 x 6 and 12', 'plan pouch width=279.4 height=152.4'],
];

const LISTS: Rows = [
  ['headbands for heads of 48, 52 and 56 cm', 'plan headband each head=480 each head=520 each head=560'],
  ['headband for a 48 cm and a 52 cm head', 'plan headband each head=480 each head=520'],
  [
    'headbands 48, 52, and 56 cm heads, 10 cm tall',
    'plan headband height=100 each head=480 each head=520 each head=560',
  ],
  [
    'headbands for heads 48, 52, 56 cm, 4 in tall',
    'plan headband height=101.6 each head=480 each head=520 each head=560',
  ],
  ['headbands in sizes 48, 52 and 56', 'plan headband each head=480 each head=520 each head=560', CM],
  ['hats for 20, 21 and 22 in heads', 'plan hat each head=508 each head=533.4 each head=558.8', NO_UNIT],
  ['pouch for 6, 8 and 10 in closures', 'plan pouch each closure=152.4 each closure=203.2 each closure=254'],
  ['pouches with 6, 8 and 10 inch zips', 'plan pouch each closure=152.4 each closure=203.2 each closure=254'],
  ['pouch for an 8 in and a 10 in zip', 'plan pouch each closure=203.2 each closure=254'],
  ['pouch 11 in and 12 in wide', 'plan pouch each width=279.4 each width=304.8'],
  ['pouch 11 or 12 in wide', 'plan pouch each width=279.4 each width=304.8'],
  ['pouches 10 in wide and 12 in wide', 'plan pouch each width=254 each width=304.8'],
  ['pouches 11 in, 9 in and 7 in wide', 'plan pouch each width=279.4 each width=228.6 each width=177.8'],
  ['pouches 10, 11, 12 in wide', 'plan pouch each width=254 each width=279.4 each width=304.8'],
  [
    'pouches 10, 11 and 12 wide',
    'plan pouch each width=10 of no unit each width=11 of no unit each width=12 of no unit',
    NO_UNIT,
  ],
  ['pouches 6, 7 and 8 in tall', 'plan pouch each height=152.4 each height=177.8 each height=203.2'],
  ['pouch 11 in wide, 6 or 7 in tall', 'plan pouch width=279.4 each height=152.4 each height=177.8'],
  [
    'pouches 8-9, 10-11 and 12-13 in wide',
    'plan pouch each width=203.2..228.6 each width=254..279.4 each width=304.8..330.2',
  ],
  ['scarves 140, 160 and 180 cm long', 'plan scarf each length=1400 each length=1600 each length=1800'],
  ['scarves of 140 and 160 cm', 'plan scarf each length=1400 each length=1600'],
  ['scarves 140 cm, 160 cm, 180 cm', 'plan scarf each length=1400 each length=1600 each length=1800'],
  ['cowls 55/60/65 cm round', 'plan cowl each girth=550 each girth=600 each girth=650'],
  ['cowls 55/60 cm round', 'plan cowl each girth=550 each girth=600'],
  ['cowls 60 and 70 cm', 'plan cowl each girth=600 each girth=700'],
  ['blanket 90 and 110 cm long and 80 cm wide', 'plan strip-blanket width=800 each length=900 each length=1100'],
  ['pouches 10 and 12 in wide on the 48', 'plan pouch each width=254 each width=304.8 machine=48 needles=48'],
  [
    'pouches 10 and 12 in wide and a cowl 60 cm round',
    'plan pouch each width=254 each width=304.8; plan cowl girth=600',
  ],
];

const HOW_MANY: Rows = [
  ['two pouches, 10 in and 12 in wide', 'plan pouch each width=254 each width=304.8'],
  ['two pouches 11 in and 12 in wide', 'plan pouch each width=279.4 each width=304.8'],
  ['three pouches 11, 9 and 7 in wide', 'plan pouch each width=279.4 each width=228.6 each width=177.8'],
  ['pouches 10 and 12 in wide, two of each', 'plan pouch each width=254 each width=304.8 x2'],
  ['6 pouches 10, 11 and 12 in wide', 'plan pouch each width=254 each width=279.4 each width=304.8'],
  ['pouches 10 in and 10 in wide', 'plan pouch width=254'],
];

const SEVERAL_PERSONS: Rows = [
  [
    'hats for baby to adult',
    'plan hat each head=400.11 each head=427.74 each head=454.79 each head=477.15 each head=489.86 each head=503.3 each head=561.1 each head=574.4',
  ],
  ['hats for toddler to woman', 'plan hat each head=477.15 each head=489.86 each head=503.3 each head=561.1'],
  ['hats for newborn to 12 months', 'plan hat each head=341.7 each head=400.11 each head=427.74 each head=454.79'],
  ['hats for 3 to 12 months', 'plan hat each head=400.11 each head=427.74 each head=454.79'],
  [
    'hats for babies, toddlers and adults',
    'plan hat each head=427.74 each head=477.15 each head=561.1 each head=574.4',
  ],
  ['hats for a woman and a man', 'plan hat each head=561.1 each head=574.4'],
  ['hats for 3, 6 and 12 months', 'plan hat each head=400.11 each head=427.74 each head=454.79'],
  ['hats for 2, 3 and 4 year olds', 'plan hat each head=477.15 each head=489.86 each head=497.72'],
  ['hats for boys of 2, 3 and 4', 'plan hat each head=482.49 each head=494.62 each head=502.12'],
  ['hats aged 2, 3 and 5', 'plan hat each head=477.15 each head=489.86 each head=503.3'],
  ['hats for a baby and a 2 year old', 'plan hat each head=427.74 each head=477.15'],
  ['headbands for women and men, 4 in tall', 'plan headband height=101.6 each head=561.1 each head=574.4'],
  [
    'leg warmers for women and men',
    'plan limb-warmers limb=leg each hand=186.6 calf=373.3 heel=310.3 ankle=215.7 each hand=212.3 calf=392.3 heel=343.5 ankle=229.3',
  ],
  ['hats for women and men with 56 and 58 cm heads', 'plan hat each head=560 each head=580'],
  ['hats for women and men with a 57 cm head', 'plan hat head=570'],
  ['hats for a woman and a 9 year old', 'plan hat head=561.1'],
  ['hats for women, men and a pouch 11 in wide', 'plan hat each head=561.1 each head=574.4; plan pouch width=279.4'],
];

const FOLLOWING: Rows = [
  ['10 and 12 in wide', 'change each width=254 each width=304.8', POUCH],
  ['10, 11 and 12 in', 'change each width=254 each width=279.4 each width=304.8', asking('width', 'pouch')],
  ['for women and men', 'change each head=561.1 each head=574.4', { subjectPiece: 'hat' }],
  ['50, 54 and 58', 'change each head=500 each head=540 each head=580', HEADBANDS],
  ['50 and 54 instead', 'change each head=500 each head=540', HEADBANDS],
  ['10 cm tall', 'change height=100', HEADBANDS],
  ['5% smaller', 'change ease=5%', HEADBANDS],
  ['on the 48', 'change machine=48 needles=48', HEADBANDS],
  ['two of each', 'change x2', HEADBANDS],
  ['yarn for all', 'change first=yarn', HEADBANDS],
  ['make it 54', 'change head=540', HEADBANDS],
];

const CHOICES: Rows = [
  ['52', 'size 1', HEADBANDS],
  ['the 52 cm one', 'size 1', HEADBANDS],
  ['the 56 cm head please', 'size 2', HEADBANDS],
  ['just the fifty two', 'size 1', HEADBANDS],
  ['rows for 48', 'size 0', HEADBANDS],
  ['steps for 52', 'size 1 first=steps', HEADBANDS],
  ['yarn for the 48', 'size 0 first=yarn', HEADBANDS],
  ['start 52', 'size 1; start', HEADBANDS],
  ['start the women', 'size 2; start', HATS],
  ['steps for the woman', 'size 2 first=steps', HATS],
  ['the 12 months', 'size 1', HATS],
  ['3 months', 'size 0', HATS],
  ['the ninth', 'pick 8', HATS],
  ['make it single', 'which_size', HEADBANDS],
  ['just one size', 'which_size', HEADBANDS],
];

/** Not several sizes, or not one of those in hand. */
const NOT_SEVERAL: Rows = [
  ['pouches 8 to 11 in', 'plan pouch width=203.2..279.4'],
  ['pouch 10, no 11 in', 'plan pouch width=279.4'],
  ['pouch 10 in wide, sorry, 11 in', 'plan pouch width=279.4'],
  ['pouch 10, no, 11 in wide and 6 in tall', 'plan pouch width=279.4 height=152.4'],
  ['pouch 10 in wide, no 6 in tall', 'plan pouch width=254 height=152.4'],
  ['pouches 11 and 6 3/4 in', 'plan pouch width=279.4 height=171.45'],
  ['pouch 11, 6 3/4, 2 in', 'plan pouch width=279.4 height=171.45'],
  ['pouch 11/12 in wide', 'plan pouch width=23.28'],
  ['pouch 11 in wide, 1/2/3', 'plan pouch width=279.4 height=25.4'],
  ['pouch 10 in wide with a 7 in zip and 1 in rings', 'plan pouch width=254 closure=177.8 ring=25.4'],
  ['hats for kids to adults', 'plan hat'],
  ['hats for women and men 8 and 9 in deep', 'unread too_many_sizes "8 and 9 in deep"'],
  ['pouches 10 and 12 in wide, 6 and 7 in tall', 'unread too_many_sizes "10 and 12 in wide"'],
  [
    'pouches 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13 and 14 in wide',
    'unread too_many_at_once "2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13 and 14 in wide"',
  ],
  ['row 52', 'tally to=52', HEADBANDS],
  ['52 needles', 'change needles=52', HEADBANDS],
  ['52 rows in 24 cm', 'record rows=52/240', HEADBANDS],
  ['the 60', 'change head=600', HEADBANDS],
  ['the women', 'unread nothing "women"', HEADBANDS],
  ['52', 'reply 520', { ...HEADBANDS, holes: ['height'] }],
  ['one of them', 'change x1', HEADBANDS],
];

export const SEVERAL_THEMES: Themes = [
  ['several sizes of two sides each', PAIRS],
  ['several sizes of one field', LISTS],
  ['how many of several sizes', HOW_MANY],
  ['several persons', SEVERAL_PERSONS],
  ['a follow-up to several sizes', FOLLOWING],
  ['one of several sizes', CHOICES],
  ['what is not several sizes', NOT_SEVERAL],
];
