import type { Context } from '../../../bot/language/context.js';
import { pieces } from '../../../core/index.js';
import { asking, NOVEMBER, POUCH, type Rows, type Themes, TUBE } from './row.js';

/** Every kind as if it were a pair by itself. */
const TWINS: Partial<Context> = { pieces: pieces.map((piece) => ({ ...piece, isPair: true })) };

const A_ZIP = 'I have a 9 inch zipper, what width should I knit?';

const CLOSURES: Rows = [
  ['pouch for a 9 in zip', 'plan pouch closure=228.6'],
  ['pouch to take a 9 inch zipper', 'plan pouch closure=228.6'],
  ['pouch closure: 9in', 'plan pouch closure=228.6'],
  ['zip pouch 11 wide', 'plan pouch width=279.4'],
  ['pouch zip 9 in', 'plan pouch closure=228.6'],
  ['pouch with 9 in closure and no rings', 'plan pouch ring=0 closure=228.6'],
  ['pouch 9 in zip, 1/2 in rings', 'plan pouch closure=228.6 ring=12.7'],
  ['pouch 11 1/2 in wide with a 9" zip', 'plan pouch width=292.1 closure=228.6'],
  ['pouch 11 in wide with two 1/2 in rings', 'plan pouch width=279.4 ring=12.7'],
  ['rows for a purse 10 inches across with two rings of 3/4 in', 'plan pouch width=254 ring=19.05'],
  ['pouch 11 in wide, no closure', 'plan pouch closure=0 width=279.4'],
  ['pouch 11 in wide without a closure', 'plan pouch closure=0 width=279.4'],
  ['pouch 11 in wide with one ring', 'plan pouch width=279.4'],
  ['pouch 11 in wide with one 1 in ring', 'plan pouch width=279.4 ring=25.4'],
  ['pouch 11 in wide with three 1/2 in rings', 'plan pouch width=279.4 ring=12.7'],
  ['pouch 11 in wide skip the rings', 'plan pouch ring=0 width=279.4'],
];

const COPIES: Rows = [
  ['3 pouches 11 in wide', 'plan pouch width=279.4 x3'],
  ['twelve pouches, 11 in wide', 'plan pouch width=279.4 x12'],
  ['2 blue pouches 9 in across', 'plan pouch width=228.6 x2'],
  ['two 11 inch pouches', 'plan pouch width=279.4 x2'],
  ['2 x 11 in pouches', 'plan pouch width=279.4 x2'],
  ['2 pouch 11 in wide', 'plan pouch width=279.4 x2'],
  ['3x pouch 11 in wide', 'plan pouch width=279.4 x3'],
  ['pouch 11 in wide x3', 'plan pouch width=279.4 x3'],
  ['pouch 11 in wide, two of them', 'plan pouch width=279.4 x2'],
  ['need 3 pouches 11x7', 'plan pouch width=279.4 height=177.8 x3'],
  ['a pair of tubes 12 in long', 'plan plain-tube length=304.8 x2'],
  ['two pairs of tubes 12 in long', 'plan plain-tube length=304.8 x4'],
  ['400 pairs of tubes 12 in long', 'plan plain-tube length=304.8'],
  ['a pair of tubes 12 in long', 'plan plain-tube length=304.8', TWINS],
  ['two pairs of tubes 12 in long', 'plan plain-tube length=304.8 x2', TWINS],
  ['how many needles for a pouch 8 in tall', 'plan pouch height=203.2 first=needles'],
  ['how much yarn for 4 pouches 11 in wide', 'plan pouch width=279.4 x4 first=yarn'],
];

const SEVERAL: Rows = [
  ['pouch 11 in wide and a tube 20 in long', 'plan pouch width=279.4; plan plain-tube length=508'],
  ['an 11 in wide pouch and a 20 in long tube', 'plan pouch width=279.4; plan plain-tube length=508'],
  [
    'pouch 11 in wide, 6 in tall and a tube 20 in long',
    'plan pouch width=279.4 height=152.4; plan plain-tube length=508',
  ],
  [
    'an 11 in wide, 6 in tall pouch and a 20 in long, 6 in wide tube',
    'plan pouch width=279.4 height=152.4; plan plain-tube length=508 width=152.4',
  ],
  ['11x6 pouch, 20 in long tube', 'plan pouch width=279.4 height=152.4; plan plain-tube length=508'],
  [
    'pouch 11 in wide and 6 in tall, tube 20 in long',
    'plan pouch width=279.4 height=152.4; plan plain-tube length=508',
  ],
  [
    'pouch 11 in wide. tube 20 in long. panel 8 by 12',
    'plan pouch width=279.4; plan plain-tube length=508; plan flat-panel width=203.2 length=304.8',
  ],
  ['2 pouches 11 in wide and 3 tubes 20 in long', 'plan pouch width=279.4 x2; plan plain-tube length=508 x3'],
  ['a pouch 11 in wide and a pouch 9 in wide', 'plan pouch width=279.4; plan pouch width=228.6'],
  ['two scarves 150 cm long', 'plan scarf length=1500 x2'],
  ['two pouches, 11 and 12 in wide', 'plan pouch each width=279.4 each width=304.8'],
  [
    'pouch 11 in wide and tube 20 in long on the 48',
    'plan pouch width=279.4 machine=48 needles=48; plan plain-tube length=508 machine=48 needles=48',
  ],
  [
    'pouch 11 in wide on the 48 and tube 20 in long on the 46',
    'plan pouch width=279.4 machine=48 needles=48; plan plain-tube length=508 machine=46 needles=46',
  ],
  ['pouch 11 in wide and a tube', 'plan pouch width=279.4; plan plain-tube'],
  ['pouch and a tube 20 in long', 'plan pouch; plan plain-tube length=508'],
  [
    'pouch 11 in wide and a tube 20 in long by friday',
    'plan pouch width=279.4 by=2026-11-13; plan plain-tube length=508 by=2026-11-13',
    NOVEMBER,
  ],
  ['I want a pouch. The pouch should be 11 in wide', 'plan pouch width=279.4'],
  ['pouch 11 in wide 12 in wide', 'unread too_many_sizes "11 in wide 12 in wide"'],
  ['tube 22 in long 20 in long', 'unread too_many_sizes "22 in long 20 in long"'],
  ['pouch 11 in and 6 in tall', 'plan pouch height=152.4 width=279.4'],
  ['pouch 11 in wide & tube 20 in long', 'plan pouch width=279.4; plan plain-tube length=508'],
  ['pouch 11 in wide / tube 20 in long', 'plan pouch width=279.4; plan plain-tube length=508'],
  ['one pouch 11 in and two tubes 20 in', 'plan pouch width=279.4; plan plain-tube length=508 x2'],
  [
    'tube 20 in long and a pouch 11 in wide 12 in wide',
    'unread too_many_sizes "11 in wide 12 in wide"; plan plain-tube length=508',
  ],
];

const STRANGERS: Rows = [
  ['pouch 11 in wide and poncho for a 22 in head', 'plan pouch width=279.4'],
  ['pouch and poncho 60 in long', 'plan pouch'],
  ['pouch 11 in wide, poncho 60 in long on the 48', 'plan pouch width=279.4 machine=48 needles=48'],
  ['poncho 60 in long and a pouch 11 in wide', 'plan pouch width=279.4'],
  ['pouch 11 in wide and a 60 in poncho', 'plan pouch width=279.4'],
  ['pouch 11 in wide with a 2 in flange', 'plan pouch width=279.4'],
  ["Susan's 11 in pouch", 'plan pouch width=279.4'],
  ['pouch for Anna, 11 in wide', 'plan pouch width=279.4'],
];

const ENDS: Rows = [
  ['tube 22 in long shut at one end', 'plan plain-tube ends=one_shut length=558.8'],
  ['tube 22 in long, one end shut', 'plan plain-tube ends=one_shut length=558.8'],
  ['tube 22 in long cast off one end', 'plan plain-tube length=558.8'],
  ['tube 22 in long, one end cast off', 'plan plain-tube length=558.8'],
  ['tube 22 in long grafted at both ends', 'plan plain-tube length=558.8'],
];

const OTHER_ZIPS: Rows = [
  [A_ZIP, 'plan ? "I have a 9 inch zipper , what width should I knit ?"', asking('length', 'flat-panel')],
  [A_ZIP, 'plan ? "I have a 9 inch zipper , what width should I knit ?"', TUBE],
  ['9 in zipper', 'unread nothing "9 in"', asking('length', 'flat-panel')],
  [A_ZIP, 'change closure=228.6', POUCH],
];

const NOISE: Rows = [
  ['how many rows for an 11 inch pouch?', 'plan pouch width=279.4'],
  ['how many rows do I need for a purse that is 11 inches wide and 6 3/4 tall', 'plan pouch width=279.4 height=171.45'],
  ["hi there! I'd like to knit a bag about 12 inches wide please, thanks!", 'plan pouch width=304.8'],
  ['hello, pouch 11 in wide pls', 'plan pouch width=279.4'],
  ['could you tell me what rows for a bag 30cm', 'plan pouch width=300'],
  ['I have 3 kids and want an 11 in pouch', 'plan pouch width=279.4'],
  ['rows for 11 in wide', 'plan ? "rows for 11 in wide"'],
  ['a pouch', 'plan pouch width=279.4', { ...asking('piece'), held: 'rows for 11 in wide' }],
];

export const PIECES_THEMES: Themes = [
  ['closures and rings', CLOSURES],
  ['how many', COPIES],
  ['several pieces in one message', SEVERAL],
  ['a piece that is not known, beside one that is', STRANGERS],
  ['one end of two', ENDS],
  ['a thing that the piece in hand does not take', OTHER_ZIPS],
  ['a request among other words', NOISE],
];
