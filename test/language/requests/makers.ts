import type { Context } from '../../../bot/language/context.js';
import { asking, CM, NO_UNIT, type Rows, type Themes } from './row.js';

const HAT: Partial<Context> = { subjectPiece: 'hat', rowsMake: 'depth' };
const SIDEWAYS: Partial<Context> = { subjectPiece: 'hat', rowsMake: 'girth' };
const SCARF: Partial<Context> = { subjectPiece: 'scarf', rowsMake: 'length' };

const COUNTS: Rows = [
  ['two double hats for a 56 cm head', 'plan double-hat head=560 x2'],
  ['two drawstring bags 20 cm tall', 'plan upright-pouch height=200 x2'],
  ['6 mug sleeves, 26 cm round 12 cm tall', 'plan mug-sleeve girth=260 height=120 x6'],
  ['3 cushion covers 40 x 40', 'plan cushion-cover width=400 height=400 x3', CM],
  ['four wreath covers 30 cm across 16 cm round', 'plan wreath-cover outside=300 girth=160 x4'],
  ['a dozen coasters 10 cm square', 'plan flat-panel width=100 length=100 x12'],
  ['half a dozen hats for men', 'plan hat head=574.4 x6'],
  ['2 dozen pouches 11 in wide', 'plan pouch width=279.4 x24'],
  ['coasters 10 x 10 cm x6', 'plan flat-panel width=100 length=100 x6'],
  ['drawstring bag 20 cm tall, 2 of', 'plan upright-pouch height=200 x2'],
  ['pouch for a 20 cm zip and 2 cm rings x 3', 'plan pouch closure=200 ring=20 x3'],
  ['make 4', 'change x4', HAT],
  ['make it 4 in', 'change depth=101.6', HAT],
  ['a couple of hats for men', 'plan hat head=574.4 x2'],
  ['sleeves for 4 mugs 26 cm round 9 cm tall', 'plan mug-sleeve girth=260 height=90 x4'],
  ['6 cushion covers for 40 cm inserts', 'plan cushion-cover width=400 x6'],
  ['hats for three tall women', 'plan hat head=561.1 x3'],
  ['a hat for 3 women', 'plan hat head=561.1'],
  ['2 hats for 3 women', 'plan hat head=561.1 x2'],
  ['make them for 3 women', 'change head=561.1 x3', HAT],
];

const WOMAN = 'hand=186.6 calf=373.3 heel=310.3 ankle=215.7';
const PAIRS: Rows = [
  ['a pair of leg warmers 40 cm long, 37 cm round the calf', 'plan limb-warmers limb=leg length=400 calf=370'],
  ['two pairs of wrist warmers for a woman', `plan limb-warmers limb=wrist ${WOMAN} x2`],
  ['wrist warmers for a woman, 2 pairs', `plan limb-warmers limb=wrist ${WOMAN} x2`],
  ['two wrist warmers for a woman', `plan limb-warmers limb=wrist ${WOMAN}`],
  ['4 leg warmers for a woman', `plan limb-warmers limb=leg ${WOMAN} x2`],
  ['3 wrist warmers for a woman', `plan limb-warmers limb=wrist ${WOMAN}`],
  ['leg warmers for 3 women', `plan limb-warmers limb=leg ${WOMAN} x3`],
];

const LIMBS: Rows = [
  ['wrist warmers, hand 18.5 cm round', 'plan limb-warmers limb=wrist hand=185'],
  ['wrist warmers 18 cm long 19 cm round', 'plan limb-warmers limb=wrist length=180 hand=190'],
  ['leg warmers 37 cm round the calf', 'plan limb-warmers limb=leg calf=370'],
  ['leg warmers 37 cm round, 40 cm long', 'plan limb-warmers limb=leg calf=370 length=400'],
  [
    'leg warmers 22 cm round the ankle, 37 cm round the calf and 40 cm long',
    'plan limb-warmers limb=leg ankle=220 calf=370 length=400',
  ],
  ['leg warmers 40cm calf 37cm ankle 23cm', 'plan limb-warmers limb=leg calf=370 ankle=230 length=400'],
  ['leg warmers 40 cm long hand 20 cm', 'plan limb-warmers limb=leg length=400'],
  ['legwarmers 40 cm long', 'plan limb-warmers limb=leg length=400'],
  ['cowl, head 56 cm round, 25 cm deep', 'plan cowl head=560 height=250'],
  ['hat for a girl 4', 'plan hat head=493.32'],
  ['hat for a girl, 4, 7 in deep', 'plan hat head=493.32 depth=177.8'],
  ['hat for a boy 20', 'plan hat head=508'],
  ['hat for my wife', 'plan hat head=561.1'],
  ["hat for my husband's head", 'plan hat head=574.4'],
  ['hat for my son', 'plan hat'],
  ["headband for my daughter she's 7", 'plan headband'],
];

const OBJECTS: Rows = [
  ['mug sleeve for a mug 26 cm round and 12 cm tall', 'plan mug-sleeve girth=260 height=120'],
  ['jar sleeve, jar 8 cm across', 'plan mug-sleeve girth=251.33 across'],
  ['sleeve for a jar 8 cm diameter and 12 cm tall', 'plan mug-sleeve girth=251.33 across height=120'],
  ['cosy for a 9 cm wide mug 10 cm tall', 'plan mug-sleeve girth=282.74 across height=100'],
  ['mug cosy for my 9 cm mug', 'plan mug-sleeve girth=282.74 across'],
  ['sleeve for a jar 3 across 5 tall', 'plan mug-sleeve girth=9.42 of no unit across height=5 of no unit', NO_UNIT],
  ['sleeve 26 cm round, narrowest 22 cm round', 'plan mug-sleeve girth=260 narrowest=220'],
  ['sleeve finished 24 cm round', 'plan mug-sleeve own=240'],
  ['wreath 30 cm across, 16 cm round', 'plan wreath-cover outside=300 girth=160'],
  ['wreath 25 cm across 4 cm thick', 'plan wreath-cover outside=250 girth=125.66 across'],
  ['wreath cover for a 30 cm ring 5 cm thick', 'plan wreath-cover outside=300 girth=157.08 across'],
  ['ball 10 cm across', 'plan stuffed-ball diameter=100'],
  ['ball 30 cm round', 'plan stuffed-ball diameter=95.49 girth'],
  ['stuffed ball, circumference 12 in', 'plan stuffed-ball diameter=97.02 girth'],
  ['a tie 1 m long', 'plan tie-cord length=1000'],
  ['two strap cords 60 cm long', 'plan tie-cord use=strap length=600 x2'],
  ['three 4 in balls', 'plan stuffed-ball diameter=101.6 x3'],
  ['cushion cover 30 cm square', 'plan cushion-cover width=300 height=300'],
  ['a square pouch 8 in wide', 'plan pouch width=203.2 height=203.2'],
  ['hat 56 cm head square', 'plan hat head=560'],
  ['cushion form 30 x 30', 'plan cushion-cover width=300 height=300', CM],
  ['cushion cover, form 40 cm tall 30 cm wide', 'plan cushion-cover height=400 width=300'],
];

const PARTS: Rows = [
  ['blanket 90 by 110 cm with a 2 cm border', 'plan strip-blanket border=20 width=900 length=1100'],
  ['blanket 36 x 44 border 1in wide', 'plan strip-blanket border=25.4 width=914.4 length=1117.6'],
  ['throw 48x60 in strips of 6in', 'plan strip-blanket width=1219.2 length=1524'],
  ['blanket 90x110 2cm border', 'plan strip-blanket border=20 width=900 length=1100', CM],
  ['cord for a 25 cm drop', 'plan tie-cord drop=250'],
  ['scarf with a fringe', 'plan scarf fringe=120'],
  ['fringed scarf 150 cm long', 'plan scarf length=1500 fringe=120'],
  ['scarf 150 cm with a 10 cm long fringe', 'plan scarf fringe=100 length=1500'],
  ['scarf 180x20 fringe 10', 'plan scarf fringe=100 length=1800 width=200', CM],
  ['add a fringe', 'change fringe=120', SCARF],
  ['fringe', 'change fringe=120', SCARF],
  ['no fringe', 'change fringe=none', SCARF],
  ['pouch with a zip 9 in long', 'plan pouch closure=228.6'],
  ['pouch with a 9 in long zip', 'plan pouch closure=228.6'],
  ['cushion cover 16x16 zip', 'plan cushion-cover width=406.4 height=406.4'],
  ['hat 56 cm head, brim 5 cm deep', 'plan hat head=560 brim=50'],
  ['bobble hat 56 cm head', 'plan hat top=pompom head=560'],
  ['headband 8% ease', 'plan headband ease=8%'],
  ['headband for a 56 cm head, as a tube', 'plan headband lay=tube head=560'],
  ['blanket 90 by 110 cm, tubes', 'plan strip-blanket fabric=tube width=900 length=1100'],
  ['drawstring bag with a flap 20 cm', 'plan upright-pouch top=flap height=200'],
  ['2 layer drawstring pouch 15 cm high', 'plan upright-pouch layers=double height=150'],
  ['bag with a drawstring 25 cm tall', 'plan upright-pouch height=250'],
  ['panel 8 by 12, 3 side by side', 'plan flat-panel joined=3 width=203.2 length=304.8'],
  ['doubel hat for a toddler', 'plan double-hat head=477.15'],
];

const RESIZED: Rows = [
  ['make it 20 cm', 'change depth=200', HAT],
  ['make it 20 cm tall', 'change depth=200', HAT],
  ['make it 58 cm', 'change head=580', HAT],
  ['make it 20 cm', 'change depth=200', SIDEWAYS],
  ['make it 40 cm', 'change head=400', SIDEWAYS],
  ['make it 160 cm', 'change length=1600', SCARF],
  ['make it 3 m', 'change length=3000', { ...SCARF, units: undefined }],
  ['make it 20 cm', 'reply 200', { ...HAT, ...asking('head', 'hat') }],
];

const NOT_MEANT: Rows = [
  ['ball of yarn', 'unread nothing "ball"'],
  ['pouch 11 in wide from 2 balls of wool', 'plan pouch width=279.4'],
  ['60 rows in 12 in from a new ball of oat', 'record rows=60/304.8 yarn=oat'],
  ['make it warmer', 'unread nothing "warmer"', HAT],
  ['how long is the fringe', 'unread nothing "how long is the fringe"', SCARF],
  ['a dozen rows', 'record rows=12/?', HAT],
  ['hat in linen for a 56 cm head', 'plan hat head=560 yarn=linen'],
  ['wreath 12 in across, 1 1/2 in thick', 'plan wreath-cover outside=304.8 girth=119.69 across'],
  ['pouch 11 in wide, 1 in thick', 'plan pouch width=279.4'],
  ['blanket 90 by 110 cm and tubes 20 in long', 'plan strip-blanket width=900 length=1100; plan plain-tube length=508'],
];

export const MAKERS_THEMES: Themes = [
  ['how many of a kind with a longer name', COUNTS],
  ['pairs', PAIRS],
  ['limbs and heads', LIMBS],
  ['what a piece goes on', OBJECTS],
  ['parts and their sizes', PARTS],
  ['a bare size for the plan in hand', RESIZED],
  ['words that are not meant', NOT_MEANT],
];
