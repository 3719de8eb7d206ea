import { POUCH, type Rows, type Themes } from './row.js';

const RATES: Rows = [
  ['my time is 18 an hour', 'rates hour=18/1'],
  ['I charge €18 per hour', 'rates hour=18/1 EUR'],
  ['hourly rate: 18', 'rates hour=18/1'],
  ['overhead is 1.50 an hour', 'rates overhead=1.5/1'],
  ['overhead 12%', 'rates overhead=12%'],
  ['no overhead', 'rates overhead=0/1'],
  ['packing 0.85', 'rates packing=0.85/1'],
  ['card fee 1.7%', 'rates fee=1.7%'],
  ['fees are 6.5% and 0.20 a sale', 'rates fee=6.5% 0.2/1'],
  ['the stall is 90', 'rates stall=90/1'],
  ['zips are 1.20 each, ten for 9', 'rates zips=1.2/1 9/10'],
  ['8 in zips are £1.20 each', 'rates 8 in zips=1.2/1 GBP'],
  ['team rate is 15 an hour', 'rates hour=15/1 team'],
  [
    'my time is 16 an hour; packing 0.85; overhead 1.50 an hour; card fee 1.7%',
    'rates overhead=1.5/1 hour=16/1 packing=0.85/1 fee=1.7%',
  ],
  ['my time is -5 an hour', 'rates hour=-5/1'],
  ['my time is 1,200.50 an hour', 'rates hour=1200.5/1'],
  ['my time is 12 pounds 50 an hour', 'rates hour=12.5/1 GBP'],
  ['rings 15p each', 'rates rings=0.15/1 GBP'],
  ['overhead 8% of it; the stall is 60', 'rates overhead=8% stall=60/1'],
  ['my rates', 'show_rates'],
  ['show my rate card', 'show_rates'],
];

const COSTS: Rows = [
  ['what does it cost?', 'cost', POUCH],
  ['how much does it cost to make', 'cost', POUCH],
  ['cost', 'cost', POUCH],
  ['cost at 48', 'cost at=48', POUCH],
  ['cost at €48', 'cost at=48 EUR', POUCH],
  ['cost of 12', 'cost x12', POUCH],
  ['what would 12 of them cost', 'cost x12', POUCH],
  ['price at 40% margin', 'cost margin=40%', POUCH],
  ['margin 35%', 'cost margin=35%', POUCH],
  ['price at 40% margin for 12', 'cost x12 margin=40%', POUCH],
  ['cost at 40% margin of 12 of them', 'cost x12 margin=40%', POUCH],
  ['markup 100%', 'cost markup=100%', POUCH],
  ['what do I earn if I sell it at 30?', 'cost at=30', POUCH],
  ['break even at 48', 'cost at=48 even', POUCH],
  ['at 52', 'cost at=52', { ...POUCH, onCost: true }],
  ['and 12 of them at 40', 'cost x12 at=40', { ...POUCH, onCost: true }],
  ['and 12 of them?', 'cost x12', { ...POUCH, onCost: true }],
  ['if I sell it at 48 what do I make?', 'cost at=48', POUCH],
  ['what do I earn at 48?', 'cost at=48', POUCH],
  ['how much should I charge?', 'cost', POUCH],
  ['what should I sell it for?', 'cost', POUCH],
  ['how many do I need to sell to pay for the stall at 35?', 'cost at=35 even', POUCH],
  ['what would a shop pay?', 'wholesale'],
  ['I spent 20 hours writing the pattern and sell it at 6', 'pattern hours=20 at=6'],
  ['cost of a cowl 62 cm round', 'plan cowl girth=620; cost'],
  ['wholesale of 48', 'wholesale 48'],
  ['retail from 24 at 40%', 'retail 24 keeps=40%'],
  ['pattern at 6.00, 20 hours', 'pattern hours=20 at=6'],
  ['price for the pattern, 12 hours, sell 40', 'pattern hours=12 copies=40'],
];

const NOT_MONEY: Rows = [
  ['at 48', 'change width=1219.2', POUCH],
  ['pouch 11 in wide with 1 in rings', 'plan pouch width=279.4 ring=25.4'],
  ['and 12 of them', 'change x12', POUCH],
  ['medium is 6.50 for 50 g / 100 m', 'sold_as name=medium ball=50g/100m price=6.5/1', POUCH],
  ['bought 8 zips at 1.20 each', 'stock add count=8 notion name=zips price=1.2/1'],
];

export const COST_THEMES: Themes = [
  ['a rate card', RATES],
  ['what a piece costs and sells for', COSTS],
  ['what only sounds like money', NOT_MONEY],
];
