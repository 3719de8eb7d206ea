import { IN_HAND, POUCH, type Rows, type Themes } from './row.js';

const BALLS: Rows = [
  ['how many balls at 6.50 for 50 g / 100 m?', 'buy ball=50g/100m price=6.5/1', POUCH],
  ['how many balls?', 'buy', POUCH],
  ['balls', 'buy', POUCH],
  ['how many more balls do I need?', 'buy', POUCH],
  ['how many more balls for 12?', 'buy x12', IN_HAND],
  ['balls for 20', 'buy x20', POUCH],
  ['balls for 20 pouches', 'buy x20', POUCH],
  ['how many balls for 20 at 6.50 for 50 g / 100 m?', 'buy x20 ball=50g/100m price=6.5/1', POUCH],
  ['how many balls at 6.50 for 50 g?', 'buy ball=50g/?m price=6.5/1', POUCH],
  ['how many 50 g balls?', 'buy ball=50g/?m', POUCH],
  ['how many balls of oat do I need for 12?', 'buy x12 name=oat', POUCH],
  ['how many skeins should I buy at €6.20, ten for €56?', 'buy price=6.2/1 EUR price=56/10 EUR', POUCH],
  ['how many balls: 50 g / 105 m at 6.20, ten for 56', 'buy ball=50g/105m price=6.2/1 price=56/10', POUCH],
  [
    'how many balls at €6.50 for 50 g / 100 m or €12 for 100 g / 200 m?',
    'buy ball=50g/100m price=6.5/1 EUR ball=100g/200m price=12/1 EUR',
    POUCH,
  ],
  [
    'how many balls at €6, ten for €56 or €11 for 100 g / 200 m',
    'buy price=6/1 EUR price=56/10 EUR ball=100g/200m price=11/1 EUR',
    POUCH,
  ],
  ['how many balls of lot 7?', 'buy lot=7', POUCH],
  ['be 90% sure', 'buy sure=0.9', POUCH],
  ['with a reserve for repairs', 'buy reserve=0.05', POUCH],
  ['keep 10% for repairs', 'buy reserve=0.1', POUCH],
  ['how many balls and be 99% sure, with a reserve', 'buy sure=0.99 reserve=0.05', POUCH],
  ['how many balls for a pouch 11 in wide?', 'plan pouch width=279.4; buy'],
  ['how many balls for a tube 22 in long in oat', 'plan plain-tube length=558.8 yarn=oat; buy', POUCH],
  ['how many balls for 3 balls 3 in across', 'plan stuffed-ball diameter=76.2 x3; buy', POUCH],
];

const LENGTHS: Rows = [
  ['in yards', 'change first=yarn', POUCH],
  ['how much yarn in metres', 'change first=yarn', POUCH],
  ['yarn for 20', 'change x20 first=yarn', POUCH],
];

const WEIGHED: Rows = [
  ['the cone was 212 g before and 168 after', 'finish 44g', POUCH],
  ['cone 212 before, 168 g now', 'finish 44g', POUCH],
  ['before 212 g, after 168 g', 'finish 44g', POUCH],
  ['done, 11, the cone was 212 g before and 168 after', 'finish 279.4 44g', IN_HAND],
  ['done, 11, used 87 g', 'finish 279.4 87g', IN_HAND],
];

const OTHERS: Rows = [
  ['be 90% sure', 'unread nothing "90%"'],
  ['is it 90% sure to fit', 'unread nothing "90%"', POUCH],
  ['are you sure?', 'unread nothing "are you sure?"', POUCH],
  ['100% wool', 'unread nothing "100% wool"', POUCH],
  ['make it 5% looser for repairs', 'unread nothing "5% looser for repairs"', POUCH],
  ['how many balls do I have?', 'unread nothing "balls"', POUCH],
  ['how many balls can I juggle', 'unread nothing "balls can I juggle"', POUCH],
  ['how many rows for a ball 10 cm across', 'plan stuffed-ball diameter=100'],
  ['waste yarn', 'unread nothing "waste yarn"', POUCH],
  ['it weighed 38 g before', 'record same 38g', POUCH],
  ['20 rows before and 30 now', 'record rows=20/?', POUCH],
  ['measure 5 cm before and after', 'change width=50', POUCH],
];

export const BUYING_THEMES: Themes = [
  ['what to buy', BALLS],
  ['yarn in metres and yards', LENGTHS],
  ['yarn weighed before and after', WEIGHED],
  ['what asks for no balls', OTHERS],
];
