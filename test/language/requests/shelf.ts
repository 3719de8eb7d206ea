import { asking, GREY, type Rows, type Themes } from './row.js';

const ON_SHELF = { onShelf: ['grey medium', 'latte', 'zips 8 in'] };
const POUCH_ON_SHELF = { ...ON_SHELF, subjectPiece: 'pouch' };

const SET: Rows = [
  ['I have 3 of lot 12', 'stock set count=3 lot=12'],
  ['I have 3 balls of grey medium, lot 2117', 'stock set count=3 name=grey medium lot=2117'],
  ["I've got 3 balls of Oat, dye lot no. 2117A", 'stock set count=3 name=Oat lot=2117A'],
  ['i have 3 balls of grey', 'stock set count=3 name=grey'],
  ['grey medium: 3 balls, lot 12', 'stock set count=3 name=grey medium lot=12'],
  ['3 grey balls lot 12', 'stock set count=3 name=grey lot=12'],
  ['3 balls of grey for the team', 'stock set count=3 name=grey team'],
  ['the team has 6 skeins of oat, lot 4', 'stock set count=6 name=oat lot=4 team'],
  ['I have 2 1/2 balls of grey', 'stock set count=2.5 name=grey'],
  ['I have half a ball of grey', 'stock set count=0.5 name=grey'],
  ['I have a ball of grey left', 'stock set count=1 name=grey'],
  ['38 g left of lot 12', 'stock set 38g lot=12'],
  ['1.5 oz of grey left', 'stock set 42.52g name=grey'],
  ['I have 200 g of oat', 'stock set 200g name=oat'],
  ['I have 38 g of latte left', 'stock set 38g name=latte', ON_SHELF],
  ['3 of lot 12 and 2 of lot 7', 'stock set count=3 lot=12; stock set count=2 lot=7'],
  [
    'I have 3 balls of grey lot 12, used 2 balls of oat lot 7',
    'stock set count=3 name=grey lot=12; stock take count=2 name=oat lot=7',
  ],
  ['I have 6 balls of 4 ply oat', 'stock set count=6 name=4 ply oat'],
  ['I have 3 balls of grey for a cowl', 'stock set count=3 name=grey'],
  ['there are 4 balls of oat on the shelf', 'stock set count=4 name=oat'],
  ['latte: 3 balls, lot 4', 'stock set count=3 name=latte lot=4'],
  ['I have 3 balls of grey. pouch 11 in wide', 'stock set count=3 name=grey; plan pouch width=279.4'],
];

const ADDED: Rows = [
  ['bought 4 more balls of grey at 6.50', 'stock add count=4 name=grey price=6.5/1'],
  ['got 10 x 50 g oat, lot 7, 105 m a ball', 'stock add count=10 name=oat lot=7 ball=50g/105m'],
  ['bought 10 50g balls of oat', 'stock add count=10 name=oat ball=50g/?m'],
  ['I bought 10 balls of grey for €56', 'stock add count=10 name=grey price=56/10 EUR'],
  ['bought 10 balls of grey for 56', 'stock add count=10 name=grey price=56/10'],
  ['paid 26 for 4 balls of grey', 'stock add count=4 name=grey price=26/4'],
  ['bought 4 balls of grey at £6.50 each', 'stock add count=4 name=grey price=6.5/1 GBP'],
  ['bought 4 balls of grey at 4 pounds', 'stock add count=4 name=grey price=4/1 GBP'],
  ['3 more balls of grey', 'stock add count=3 name=grey'],
  ['put 3 balls of grey on the shelf', 'stock add count=3 name=grey'],
  ['3 more of lot 12', 'stock add count=3 lot=12'],
  ['I got 500 g of oat', 'stock add 500g name=oat'],
  ['bought 3 balls of grey, 50 g / 105 m, lot 12', 'stock add count=3 name=grey lot=12 ball=50g/105m'],
];

const TAKEN: Rows = [
  ['used 2 balls of grey', 'stock take count=2 name=grey'],
  ['used half a ball of grey', 'stock take count=0.5 name=grey'],
  ['I have used 2 of lot 12', 'stock take count=2 lot=12'],
  ['take 2 balls of grey off the shelf', 'stock take count=2 name=grey'],
  ['threw away 20 g of lot 12', 'stock take 20g lot=12'],
  ['used 20 g', 'stock take 20g'],
  ['used 20 g of lot 12', 'stock take 20g lot=12'],
  ['gave away the lot 12', 'stock take all lot=12'],
  ['used up all the grey', 'stock take all name=grey'],
  ['no grey left', 'stock take all name=grey'],
  ['none left of lot 12', 'stock take all lot=12'],
  ["I'm out of latte", 'stock take all name=latte', ON_SHELF],
  ['no zips left', 'stock take all notion name=zips'],
  ['used 2 balls of grey for the cowl', 'stock take count=2 name=grey'],
  ["used a ball of the team's grey", 'stock take count=1 name=grey team'],
];

const NOTIONS: Rows = [
  ['I have 6 zips 8 in at 1.20', 'stock set count=6 notion name=zips 8 in price=1.2/1'],
  ['I have six 8 in zips', 'stock set count=6 notion name=zips 8 in'],
  ['12 x 8 in zips', 'stock set count=12 notion name=zips 8 in'],
  ['24 rings', 'stock set count=24 notion name=rings'],
  ['bought 12 split rings, ten for 9', 'stock add count=12 notion name=split rings price=9/10'],
  ['add 12 rings to my shelf', 'stock add count=12 notion name=rings'],
  ['used 2 rings', 'stock take count=2 notion name=rings'],
  ['I have half a zip at 1.20', 'stock set count=0.5 notion name=zip price=1.2/1'],
  ['bought a 9 in zip at 80p', 'stock add count=1 notion name=zip 9 in price=0.8/1 GBP'],
];

const SOLD: Rows = [
  ['50 g / 100 m', 'sold_as ball=50g/100m'],
  ['50g balls of 105 m', 'sold_as ball=50g/105m'],
  ['100 m per 50 g', 'sold_as ball=50g/100m'],
  ['balls of 50 g, 105 m', 'sold_as ball=50g/105m'],
  ['115 yds to 50 g', 'sold_as ball=50g/105.16m'],
  ['3.5 oz / 220 yd', 'sold_as ball=99.22g/201.17m'],
  ['grey medium is 200 m per 100 g', 'sold_as name=grey medium ball=100g/200m'],
  ['6.50 a ball', 'sold_as price=6.5/1'],
  ['€6.50 a ball', 'sold_as price=6.5/1 EUR'],
  ['6,20 euros a ball', 'sold_as price=6.2/1 EUR'],
  ['£4 a skein', 'sold_as price=4/1 GBP'],
  ['4 pounds a ball', 'sold_as price=4/1 GBP'],
  ['usd 5 a ball', 'sold_as price=5/1 USD'],
  ['US$5 each', 'sold_as price=5/1 USD'],
  ['$5 a ball', 'sold_as price=5/1 USD|CAD|AUD|NZD'],
  ['5 canadian dollars a ball', 'sold_as price=5/1 CAD'],
  ['500 yen a ball', 'sold_as price=500/1 JPY'],
  ['650p a ball', 'sold_as price=6.5/1 GBP'],
  ['6.20 each, ten for 56', 'sold_as price=6.2/1 price=56/10'],
  ['ten for 9', 'sold_as price=9/10'],
  ['grey is 6.20 a ball, 10 balls for 56', 'sold_as name=grey price=6.2/1 price=56/10'],
  ['a ball of grey costs 6.50', 'sold_as name=grey price=6.5/1'],
  ['50 g balls of 105 m at 6.50', 'sold_as ball=50g/105m price=6.5/1'],
];

const CURRENCY: Rows = [
  ['prices in euros', 'set_currency EUR'],
  ['my currency is GBP', 'set_currency GBP'],
  ['use euros', 'set_currency EUR'],
  ['prices in €', 'set_currency EUR'],
  ['I pay in pounds', 'set_currency GBP'],
  ['prices in dollars', 'set_currency USD CAD AUD NZD'],
  ['prices in us dollars', 'set_currency USD'],
  ['canadian dollars', 'set_currency CAD', asking('currency')],
  ['USD', 'set_currency USD', asking('currency')],
  ['prices in euros. bought 4 balls of grey at 6.50', 'set_currency EUR; stock add count=4 name=grey price=6.5/1'],
];

const SHOWN: Rows = [
  ["what's on my shelf", 'show_shelf'],
  ['my shelf', 'show_shelf'],
  ['shelf', 'show_shelf'],
  ['what yarn do i have', 'show_shelf'],
  ['how much grey do i have left', 'show_shelf'],
  ['team shelf', 'show_shelf team'],
  ["what's on the team's shelf?", 'show_shelf team'],
];

const ANSWERED: Rows = [
  ['50 g / 105 m', 'of_lot ball=50g/105m', asking('ball')],
  ['50 g and 105 m', 'of_lot ball=50g/105m', asking('ball')],
  ['105 m', 'of_lot ball=?g/105m', asking('ball')],
  ['lot 12', 'of_lot lot=12', asking('lot')],
  ['12', 'of_lot lot=12', asking('lot')],
  ['used 20 g of lot 12', 'stock take 20g lot=12', asking('lot')],
  ['bought 3 balls of oat, 50 g / 105 m', 'stock add count=3 name=oat ball=50g/105m', asking('ball')],
];

/** What sounds like the shelf, a price or a currency, and means something else. */
const OTHERS: Rows = [
  ['3 of them', 'change x3', { subjectPiece: 'pouch' }],
  ['lot of rows', 'unread nothing "lot of rows"'],
  ['a lot of rows in 12 in', 'unread nothing "12 in"'],
  ['I have 46 needles', 'record needles=46'],
  ['have 110 rows', 'record rows=110/?'],
  ['I have a 9 in zip', 'change closure=228.6', POUCH_ON_SHELF],
  ['2 rings', 'unread nothing "2 rings"', POUCH_ON_SHELF],
  ['no rings', 'change ring=0', POUCH_ON_SHELF],
  ['add 2 rings', 'unread nothing "2 rings"', POUCH_ON_SHELF],
  ['38 g left', 'yarn_left 38g', ON_SHELF],
  ['38 g left, how many rows?', 'yarn_left 38g', ON_SHELF],
  ['38 g of lot 12, how many rows?', 'plan ? "38 g of lot 12 , how many rows ?"', ON_SHELF],
  ['I have 3 balls of grey, what can I make', 'what_to_make yarn=grey', GREY],
  ['used grey medium on the 46', 'record machine=46 needles=46 yarn=grey medium'],
  ['4 pounds', 'unread nothing "4 pounds"'],
  ['6.50', 'unread nothing "6.50"'],
  ['at 48', 'unread nothing "48"'],
  ['move 2 balls of lot 12 to the team', 'unread nothing "move 2 balls of lot 12 to the team"'],
  ['give the team 2 balls of grey lot 12', 'unread nothing "team 2 balls of grey lot 12"'],
  ['do I have 3 balls of grey', 'unread nothing "3 balls"'],
  ["that's 4 balls", 'unread nothing "4 balls"'],
  ['call me at 5', 'unread nothing "call me at 5"'],
  ['pouch 11 in wide for €25', 'plan pouch width=279.4'],
  ['pouch 11 in wide at 25 euros each', 'plan pouch width=279.4'],
  ['done, 10 7/8, used 66 g', 'finish 276.22 66g', { subjectPiece: 'pouch' }],
  ['all the rows', 'unread nothing "all the rows"'],
  ['try 12', 'unread nothing "try 12"'],
];

export const SHELF_THEMES: Themes = [
  ['what is on hand', SET],
  ['what came', ADDED],
  ['what went', TAKEN],
  ['notions', NOTIONS],
  ['how yarn is sold', SOLD],
  ['the currency', CURRENCY],
  ['what the shelf shows', SHOWN],
  ['answers about a lot', ANSWERED],
  ['what is not of the shelf', OTHERS],
];
