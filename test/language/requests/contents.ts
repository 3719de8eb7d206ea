import { asking, CM, NO_UNIT, POUCH, type Rows, type Themes, TUBE } from './row.js';

const SACK = { subjectPiece: 'upright-pouch' };

const THINGS: Rows = [
  ['pouch for a phone 163 x 78 x 9 mm', 'plan pouch contents=163x78x9'],
  ['pouch for a phone 163x78x9mm', 'plan pouch contents=163x78x9'],
  ['pouch for a phone, 163 by 78 by 9 mm', 'plan pouch contents=163x78x9'],
  ['pouch for my old phone in its case, 16.3 x 7.8 x 1.2 cm', 'plan pouch contents=163x78x12'],
  ['a pouch for a 163 x 78 x 9 mm phone', 'plan pouch contents=163x78x9'],
  ['bag that holds a book 21 x 15 x 3 cm', 'plan pouch contents=210x150x30'],
  ['bag to fit a book 21 by 15 cm and 3 cm thick', 'plan pouch contents=210x150x30'],
  ['bag for a book 21 x 15 cm, 3 thick', 'plan pouch contents=210x150x30'],
  ['pouch, it must take a tablet 250 x 175 x 8 mm', 'plan pouch contents=250x175x8'],
  ['pouch that takes a tablet 10 x 7 x 1/2 in', 'plan pouch contents=254x177.8x12.7'],
  ['pouch for a tablet 10 x 7 x 1/2', 'plan pouch contents=254x177.8x12.7'],
  ['pouch for a tablet 25 x 17.5 x 0.8', 'plan pouch contents=250x175x8', CM],
  ['pouch for a tablet 25 cm x 17.5 x 8 mm', 'plan pouch contents=250x17.5x8'],
  ['pouch for a phone 163 x 78 x 9', 'plan pouch contents=163x78x9'],
  ['pouch for a phone 163 x 78 x 9', 'plan pouch contents=163x78x9', NO_UNIT],
  ['pouch for a book 21 x 15 x 3', 'plan pouch contents=21x15x3 of no unit', NO_UNIT],
  ['pouch for a phone 163 x 78 x 9 mm, upright', 'plan pouch contents=163x78x9 turned=upright'],
  ['pouch for a phone 163 x 78 x 9 mm lying down', 'plan pouch contents=163x78x9 turned=lying'],
  ['pouch for a phone 163 x 78 x 9 mm, open top', 'plan pouch contents=163x78x9 closure=0'],
  ['two pouches for a phone 163 x 78 x 9 mm', 'plan pouch contents=163x78x9 x2'],
  ['pouch 20 cm wide for a phone 163 x 78 x 9 mm', 'plan pouch contents=163x78x9 width=200'],
  ['pouch for a phone 163 x 78 x 9 mm with an 8 in zip', 'plan pouch contents=163x78x9 closure=203.2'],
  ['lined pouch for a phone 163 x 78 x 9 mm', 'plan pouch contents=163x78x9 lining=lined'],
  ['drawstring bag for a bottle 24 x 7 x 7 cm', 'plan upright-pouch contents=240x70x70'],
  ['upright pouch for a phone 163 x 78 x 9 mm', 'plan upright-pouch contents=163x78x9'],
  ['bag for a cushion 40 x 40 x 10 cm', 'plan pouch contents=400x400x100'],
  [
    'pouch for a phone 163 x 78 x 9 mm and a tube 20 in long',
    'plan pouch contents=163x78x9; plan plain-tube length=508',
  ],
];

const LATER: Rows = [
  ['it must take a tablet 250 x 175 x 8 mm', 'change contents=250x175x8', POUCH],
  ['pouch for a phone 6 x 3 in', 'unread two_sides "pouch for a phone 6 x 3 in"'],
  ['same again but for a phone 6 x 3', 'unread two_sides "pouch for a phone 6 x 3"', POUCH],
  ['pouch for a phone 6 x 3 in, 1/2 in thick', 'plan pouch contents=152.4x76.2x12.7'],
  ['pouch for a phone 6 x 3 x 1/2 in', 'plan pouch contents=152.4x76.2x12.7'],
  ['pouch for my sister 11 x 6 3/4 in', 'plan pouch width=279.4 height=171.45'],
  ['phone pouch 6 in tall 3 in wide', 'plan upright-pouch height=152.4 width=76.2'],
  ['it should hold a book 21 x 15 x 3 cm', 'change contents=210x150x30', SACK],
  ['does it fit a phone 163 x 78 x 9 mm', 'change contents=163x78x9', POUCH],
  ['what about a paperback 7 x 4 1/4 x 1 in', 'change contents=177.8x107.95x25.4', POUCH],
  ['needs to hold a deck of cards 9 x 6.5 x 2 cm', 'change contents=90x65x20', POUCH],
  ['163 x 78 x 9 mm', 'change contents=163x78x9', { ...POUCH, holes: ['width', 'closure', 'contents'] }],
  ['lying', 'change turned=lying', POUCH],
  ['upright', 'change turned=upright', POUCH],
  ['lying down', 'change turned=lying', POUCH],
  ['turn it on its side', 'change turned=lying', SACK],
  ['either way up', 'change turned=either', POUCH],
  ['it must take a tablet 250 x 175 x 8 mm', 'plan ? "it must take a tablet 250 x 175 x 8 mm"'],
  ['a pouch', 'plan pouch contents=250x175x8', { ...asking('piece'), held: 'it must take a tablet 250 x 175 x 8 mm' }],
];

const NOT_HELD: Rows = [
  ['pouch 11 x 6 3/4 in', 'plan pouch width=279.4 height=171.45'],
  ['pouch for a card 9 x 6 cm', 'plan pouch width=90 height=60'],
  ['pouch 25 x 17 x 8 cm', 'unread too_many_sizes "25 x 17 x 8 cm"'],
  ['pouch for a phone 163 x 78 x 9 x 4 mm', 'unread too_many_sizes "163 x 78 x 9 x 4 mm"'],
  ['pouch about 25 x 17 x 8 cm', 'unread too_many_sizes "25 x 17 x 8 cm"'],
  ['phone pouch 163 x 78 x 9 mm', 'unread too_many_sizes "163 x 78 x 9 mm"'],
  ['pouch for a phone 160 to 165 x 78 x 9 mm', 'unread too_many_sizes "160 to 165 x 78 x 9 mm"'],
  ['rows for a pouch 25 x 17 x 8 cm', 'unread too_many_sizes "25 x 17 x 8 cm"'],
  ['tube 22 in long for a phone 163 x 78 x 9 mm', 'plan plain-tube length=558.8'],
  ['it must take a tablet 250 x 175 x 8 mm', 'unread nothing "a tablet 250 x 175 x 8 mm"', TUBE],
];

const LININGS: Rows = [
  ['pouch 11 in wide with a lining', 'plan pouch lining=lined width=279.4'],
  ['lined pouch 11 in wide', 'plan pouch lining=lined width=279.4'],
  ['pouch 11 in wide, unlined', 'plan pouch lining=none width=279.4'],
  ['pouch 11 in wide, no lining', 'plan pouch lining=none width=279.4'],
  ['drawstring bag 20 cm tall, lined', 'plan upright-pouch lining=lined height=200'],
  ['self lined drawstring bag 20 cm tall', 'plan upright-pouch layers=double height=200'],
  ['add a lining', 'change lining=lined', POUCH],
  ['without a lining', 'change lining=none', POUCH],
];

const SHUTS: Rows = [
  ['pouch 11 in wide, open top', 'plan pouch closure=0 width=279.4'],
  ['pouch 11 in wide, no zip', 'plan pouch closure=0 width=279.4'],
  ['pouch 11 in wide without any zipper', 'plan pouch closure=0 width=279.4'],
  ['pouch 11 in wide without rings', 'plan pouch ring=0 width=279.4'],
  ['pouch 11 in wide, no ring', 'plan pouch ring=0 width=279.4'],
  ['without any rings', 'change ring=0', POUCH],
  ['open top', 'change closure=0', POUCH],
  ['drawstring bag 20 cm tall, open top', 'plan upright-pouch top=plain height=200'],
  ['drawstring bag 20 cm tall with a flap of 10 cm', 'plan upright-pouch top=flap height=200 flap=100'],
  ['drawstring bag 20 cm tall with a flap', 'plan upright-pouch top=flap height=200'],
  ['drawstring bag with a flap 20 cm tall', 'plan upright-pouch top=flap height=200'],
  ['pouch 11 in wide lying flat', 'plan pouch width=279.4'],
  ['pouch with no zip', 'plan pouch closure=0'],
];

const STRAPS: Rows = [
  ['pouch 11 in wide with a shoulder strap', 'plan pouch strap=250 width=279.4'],
  ['pouch 11 in wide with a hand strap', 'plan pouch strap=125 width=279.4'],
  ['pouch 11 in wide, wrist strap', 'plan pouch strap=125 width=279.4'],
  ['crossbody strap pouch 11 in wide', 'plan pouch strap=550 width=279.4'],
  ['pouch 11 in wide with a strap', 'plan pouch width=279.4'],
  ['pouch 11 in wide with a strap of 30 cm', 'plan pouch width=279.4 strap=300'],
  ['pouch 11 in wide, shoulder strap 30 cm', 'plan pouch width=279.4 strap=300'],
  ['pouch 11 in wide with a 30 cm shoulder strap', 'plan pouch width=279.4 strap=300'],
  ['pouch 11 in wide without a strap', 'plan pouch width=279.4'],
  ['pouch 11 in wide without a shoulder strap', 'plan pouch width=279.4'],
  ['pouch with a shoulder strap 11 in wide', 'plan pouch strap=250 width=279.4'],
  ['pouch 11 wide, shoulder strap 12', 'plan pouch width=279.4 strap=304.8'],
  ['add a shoulder strap', 'change strap=250', POUCH],
  ['with a hip strap', 'change strap=550', POUCH],
  ['no strap', 'change strap=none', POUCH],
  ['without the shoulder strap', 'change strap=none', POUCH],
];

export const CONTENTS_THEMES: Themes = [
  ['a thing that the piece must take', THINGS],
  ['a thing named later, and which way up it lies', LATER],
  ['lengths that are no thing to take', NOT_HELD],
  ['a lining', LININGS],
  ['a top left open', SHUTS],
  ['a strap by what carries it', STRAPS],
];
