import { describe, expect, test } from 'vitest';
import type { Context } from '../../bot/language/context.js';
import { meaningOf } from './reading.js';

/** What is typed, what it must mean, and what stood before it. Inches unless a row says otherwise; 1 in = 25.4 mm. */
type Row = [text: string, meaning: string, given?: Partial<Context>];
type Rows = readonly Row[];

const CM: Partial<Context> = { units: 'cm' };
const NO_UNIT: Partial<Context> = { units: undefined };
const POUCH: Partial<Context> = { subjectPiece: 'pouch' };
const TUBE: Partial<Context> = { subjectPiece: 'plain-tube' };
const asking = (hole: string, subjectPiece?: string): Partial<Context> => ({ holes: [hole], subjectPiece });

const WIDTHS: Rows = [
  ['pouch 11 in', 'plan pouch width=279.4'],
  ['pouch 11in wide', 'plan pouch width=279.4'],
  ['pouch 11"', 'plan pouch width=279.4'],
  ['pouch 11” wide', 'plan pouch width=279.4'],
  ["pouch 11'' wide", 'plan pouch width=279.4'],
  ['pouch 11-inch wide', 'plan pouch width=279.4'],
  ['pouch 11 in. wide', 'plan pouch width=279.4'],
  ['pouch 11 inches across', 'plan pouch width=279.4'],
  ['pouch eleven inches wide', 'plan pouch width=279.4'],
  ['pouch eleven and a half inches wide', 'plan pouch width=292.1'],
  ['pouch 11 and a half inches wide', 'plan pouch width=292.1'],
  ['pouch 11 and 3/4 in wide', 'plan pouch width=298.45'],
  ['pouch 11 1/2 in wide', 'plan pouch width=292.1'],
  ['pouch 11-1/2" wide', 'plan pouch width=292.1'],
  ['pouch 11½" wide', 'plan pouch width=292.1'],
  ['pouch 11.5 in wide', 'plan pouch width=292.1'],
  ['pouch 27.5cm wide', 'plan pouch width=275'],
  ['pouch 27,5 cm wide', 'plan pouch width=275'],
  ['pouch 280 mm wide', 'plan pouch width=280'],
  ['pouch 0.3 m wide', 'plan pouch width=300'],
  ['tube 2 ft long', 'plan plain-tube length=609.6'],
  ['tube 1 yd long', 'plan plain-tube length=914.4'],
  ['pouch 11 wide', 'plan pouch width=279.4'],
  ['pouch 28 wide', 'plan pouch width=280', CM],
  ['pouch 11 wide', 'plan pouch width=11 of no unit', NO_UNIT],
  ['pouch 11 wide and 6 3/4 in tall', 'plan pouch width=279.4 height=171.45', CM],
  ['flat panel 300 long, 40 cm wide', 'plan flat-panel length=3000 width=400', NO_UNIT],
  ['POUCH 11 IN WIDE', 'plan pouch width=279.4'],
  ['  pouch   11   in   wide  ', 'plan pouch width=279.4'],
];

const RANGES: Rows = [
  ['pouch 10.5-11 in wide', 'plan pouch width=266.7..279.4'],
  ['pouch 10½ to 11" wide', 'plan pouch width=266.7..279.4'],
  ['pouch 10 1/2 in – 11 in', 'plan pouch width=266.7..279.4'],
  ['pouch between 10 1/2 and 11 in wide', 'plan pouch width=266.7..279.4'],
  ['pouch ten to twelve inches wide', 'plan pouch width=254..304.8'],
  ['pouch 27 to 28', 'plan pouch width=270..280', CM],
  ['pouch 10 1/2 to 11', 'plan pouch width=10.5..11 of no unit', NO_UNIT],
  ['pouch 11 in ± 1/4 wide', 'plan pouch width=273.05..285.75'],
  ['pouch 11 in wide ± 1/4', 'plan pouch width=273.05..285.75'],
  ['pouch 11 in wide +/- 1/4 in', 'plan pouch width=273.05..285.75'],
  ['pouch 28 cm wide +/- 5 mm', 'plan pouch width=275..285'],
  ['pouch 11 in wide, give or take a quarter inch', 'plan pouch width=273.05..285.75'],
  ['pouch 11 in wide plus or minus 1/2" and 6 in tall', 'plan pouch width=266.7..292.1 height=152.4'],
  ['pouch 11 to 10 in wide', 'plan pouch width=279.4..254'],
];

const ORDERS: Rows = [
  ['rows for a pouch 11 in wide', 'plan pouch width=279.4'],
  ['11 inch pouch', 'plan pouch width=279.4'],
  ['an 11 in wide pouch', 'plan pouch width=279.4'],
  ['rows for an 11 wide pouch', 'plan pouch width=279.4'],
  ['wide 11 pouch', 'plan pouch width=279.4'],
  ['pouch width 11', 'plan pouch width=279.4'],
  ['pouch width: 11 in, height: 6 3/4 in', 'plan pouch width=279.4 height=171.45'],
  ['pouch width=11 height=6.75', 'plan pouch width=279.4 height=171.45'],
  ['clutch, wide 11, tall 6 3/4', 'plan pouch width=279.4 height=171.45'],
  ['bag 6 3/4 deep and 11 across', 'plan pouch height=171.45 width=279.4'],
  ['purse 6 3/4 in high 11 in broad', 'plan pouch height=171.45 width=279.4'],
  ['pouch 11w x 6h', 'plan pouch width=279.4 height=152.4'],
  ['pouch 11"w x 6"h', 'plan pouch width=279.4 height=152.4'],
  ['pouch 11x6 3/4"', 'plan pouch width=279.4 height=171.45'],
  ['pouch 11" x 6 3/4"', 'plan pouch width=279.4 height=171.45'],
  ['11x7 pouch', 'plan pouch width=279.4 height=177.8'],
  ['pouch 11 × 6¾ in', 'plan pouch width=279.4 height=171.45'],
  ['pouch 11 by 6 3/4', 'plan pouch width=279.4 height=171.45'],
  ['pouch 28 x 17 cm', 'plan pouch width=280 height=170'],
  ['tube 22 in long', 'plan plain-tube length=558.8'],
  ['tube 22 long 7 wide', 'plan plain-tube length=558.8 width=177.8'],
  ['a tube 22" long, 6 3/4 flat', 'plan plain-tube length=558.8 width=171.45'],
  ['tube 22 in long, cast off', 'plan plain-tube ends=cast_off length=558.8'],
  ['flat panel 8 in wide and 12 in long', 'plan flat-panel width=203.2 length=304.8'],
  ['panel 8x12', 'plan flat-panel width=203.2 length=304.8'],
  ['panel 12 in long, 20 needles', 'plan flat-panel length=304.8 needles=20'],
  ['panel 8 by 12 in with full stitch seams', 'plan flat-panel seam=full width=203.2 length=304.8'],
  ['panel 40 cm long half stitch seam 20 cm wide', 'plan flat-panel seam=half length=400 width=200'],
];

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
];

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
];

const TYPOS: Rows = [
  ['guage 5 rows to the inch', 'record rows=20/101.6 counted'],
  ['tensoin 5 rosw to the inch', 'record rows=20/101.6 counted'],
  ['puch 11 in wide', 'plan pouch width=279.4'],
  ['pouch 11 in wdie', 'plan pouch width=279.4'],
  ['pouch widht 11', 'plan pouch width=279.4'],
  ['46 needels, 110 rows, 22 in', 'record rows=110/558.8 needles=46'],
  ['pouch with a 9 in clousre', 'plan pouch closure=228.6'],
  ['pouch with a 9 in zippre', 'plan pouch closure=228.6'],
  ['13 stiches to 4 in', 'record stitches=13/101.6 counted'],
  ['my guage', 'show_gauge'],
];

const SHORT: Rows = [
  ['help', 'help'],
  ['?', 'help'],
  ['Hi!', 'help'],
  ['never mind', 'drop'],
  ['Nevermind.', 'drop'],
  ['undo', 'undo'],
  ['oops, undo that', 'undo'],
  ['put it back', 'redo'],
  ['Thanks!', 'thanks'],
  ['steps please', 'steps'],
  ['How do I make it?', 'steps'],
  ["what's my gauge?", 'show_gauge'],
  ['use cm', 'set_units cm'],
  ['inches', 'set_units in'],
  ['the first', 'pick 0'],
  ['The second.', 'pick 1'],
  ['', 'help', { command: '/walewright' }],
  ['', 'show_gauge', { command: '/gauge' }],
  ['11 in wide', 'plan ? "11 in wide"', { command: '/rows' }],
];

const FOLLOW_UPS: Rows = [
  ['make it 12', 'change width=304.8', POUCH],
  ['12', 'change width=304.8', POUCH],
  ['what about 12 in wide?', 'change width=304.8', POUCH],
  ['and 11 1/2 to 12 in?', 'change width=292.1..304.8', POUCH],
  ['with a 9 in zip', 'change closure=228.6', POUCH],
  ['no rings', 'change ring=0', POUCH],
  ['without a zip', 'change closure=none', POUCH],
  ['two of them', 'change x2', POUCH],
  ['on the 48', 'change machine=48 needles=48', POUCH],
  ['on 48 needles please', 'change needles=48', POUCH],
  ['in oat', 'change yarn=oat', POUCH],
  ['12 tall', 'change height=304.8', POUCH],
  ['11 by 7', 'change width=279.4 height=177.8', POUCH],
  ['make it 24', 'change length=609.6', TUBE],
  ['how many rows?', 'change', POUCH],
  ['cast off', 'change ends=cast_off', TUBE],
  ['5 rows to the inch', 'record rows=20/101.6 counted', POUCH],
  ['a tube 22 in long', 'plan plain-tube length=558.8', POUCH],
];

const ANSWERS: Rows = [
  ['11 in', 'reply 279.4', asking('width', 'pouch')],
  ['about 11, I think', 'reply 279.4', asking('width', 'pouch')],
  ['11 in wide', 'reply 279.4', asking('width', 'pouch')],
  ['22 in', 'reply 558.8', asking('length')],
  ['46', 'reply 1168.4', asking('needles')],
  ['46', 'reply 46 of no unit', { ...asking('needles'), units: undefined }],
  ['cm', 'set_units cm', asking('units', 'pouch')],
  ['22 inches', 'set_units in', asking('units')],
  ['11 in', 'change width=279.4', asking('units', 'pouch')],
  ['with a 9 in zip', 'change closure=228.6', { holes: ['width', 'closure'], subjectPiece: 'pouch' }],
  ['make it 12', 'change width=304.8', asking('gauge', 'pouch')],
  ['rows for 22 inches', 'change length=558.8', asking('length', 'plain-tube')],
  ['yes', 'pick 0', asking('confirm')],
  ["No, that's wrong", 'drop', asking('confirm')],
  ['no', 'drop', asking('confirm')],
  ['5 rows to the inch', 'record rows=20/101.6 counted', asking('gauge', 'pouch')],
  ['46 needles, tube 6 3/4 in flat', 'record flat=171.45 needles=46', asking('gauge', 'pouch')],
  ['46 needles', 'record needles=46', asking('gauge', 'pouch')],
  ['a tube', 'plan plain-tube', asking('piece')],
];

const UNREAD: Rows = [
  ['', 'unread empty'],
  ['11 bananas wide', 'unread nothing "11 bananas"'],
  ['pouch 11 bananas wide', 'unread words "11 bananas"'],
  ['11 in by 11 in by 11 in', 'unread nothing "11 in by 11 in by 11 in"'],
  ['pouch 11 in by 11 in by 11 in', 'unread too_many_sizes "11 in by 11 in by 11 in"'],
  ['5 rows to the inch and 6 rows to the inch', 'unread contradiction "5 rows to the inch and 6 rows to the inch"'],
  ['0/0', 'unread nothing "0/0"'],
  ['yes', 'unread nothing "yes"'],
  ['pouch 38 g wide', 'plan pouch width=38g'],
  ['pouch -3 in wide', 'plan pouch width=-76.2'],
  ['0 rows', 'record rows=0/?'],
  ['-46 needles', 'record needles=-46'],
  ['46.5 needles, 6 3/4 flat', 'record flat=171.45 needles=46.5'],
];

describe.each<[string, Rows]>([
  ['a size in any form', WIDTHS],
  ['a range', RANGES],
  ['sizes with their words in any order', ORDERS],
  ['closures and rings', CLOSURES],
  ['how many', COPIES],
  ['machine and yarn', BENCHES],
  ['a request among other words', NOISE],
  ['something measured', GAUGES],
  ['a gauge and a plan in one message', BOTH],
  ['a slip in a word of the trade', TYPOS],
  ['a short request', SHORT],
  ['a follow-up', FOLLOW_UPS],
  ['an answer to what was asked', ANSWERS],
  ['what cannot be or is not understood', UNREAD],
])('%s', (_name, rows) => {
  test.each(rows.map(([text, meaning, given]) => ({ text, meaning, given })))('"$text" means $meaning', (row) => {
    expect(meaningOf(row.text, row.given)).toBe(row.meaning);
  });
});
