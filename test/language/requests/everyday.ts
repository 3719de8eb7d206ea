import { asking, IN_HAND, POUCH, type Rows, type Themes } from './row.js';

const LACKING: Rows = [
  ['bit wider', 'unread no_plan "bit wider"'],
  ['can you do three of those', 'unread no_plan "can you do three of those"'],
  ['two of them', 'unread no_plan "two of them"'],
  ['what if I only have 90 g', 'unread no_plan "what if I only have 90 g"'],
  ['and for a toddler?', 'unread no_plan "and for a toddler?"'],
  ['make the brim deeper', 'unread no_plan "make the brim deeper"'],
  ['25 more', 'unread no_work "25 more"'],
  ['25 more', 'tally by=25', IN_HAND],
  ['6 1/4 long hanging', 'unread no_work "6 1/4 long hanging"'],
  ['banana', 'unread nothing "banana"'],
  ['banana', 'unread nothing "banana"', POUCH],
  ['what about lunch', 'unread nothing "lunch"'],
  ['how about you', 'unread nothing "how about you"'],
  ['what do you think of it', 'unread nothing "what do you think of it"'],
  ['10 more in', 'unread nothing "10"'],
];

const NAMES: Rows = [
  ['pencil case 8 in wide', 'plan pouch width=203.2'],
  ['make-up bag 8 in wide', 'plan pouch width=203.2'],
  ['purse 8 in wide', 'plan pouch width=203.2'],
  ['gift bag 8 in tall', 'plan upright-pouch height=203.2'],
  ['phone pouch 6 in tall', 'plan upright-pouch height=152.4'],
  ['glasses case 7 in tall', 'plan upright-pouch top=plain height=177.8'],
  ['toque for a 22 in head', 'plan hat head=558.8'],
  ['two neckwarmers 24 in round', 'plan cowl girth=609.6 x2'],
  ['an infinity scarf 50 in round', 'plan cowl girth=1270'],
  ['boot cuffs 5 in long', 'plan limb-warmers limb=leg length=127'],
  ['arm warmers 8 in long', 'plan limb-warmers limb=wrist length=203.2'],
  ['cup cosy 4 in tall', 'plan mug-sleeve height=101.6'],
  ['baby blanket 30 by 36 in', 'plan strip-blanket width=762 length=914.4'],
  ['throw pillow 16 in', 'plan cushion-cover width=406.4'],
  ['a bauble 3 in across', 'plan stuffed-ball diameter=76.2'],
  ['i-cord 30 in', 'plan tie-cord length=762'],
  ['dishcloth 8 in wide and 9 in long', 'plan flat-panel width=203.2 length=228.6'],
  ['rows for a tea towel 12 in', 'plan ? "rows for a 12 in" thing=tea towel'],
  ['how many rows for 12 in', 'plan ? "how many rows for 12 in"'],
];

const UNMADE: Rows = [
  ['a pair of socks for size 8', 'unread not_made "socks"'],
  ['rows for mittens', 'unread not_made "mittens"'],
  ['socks 20 in long', 'unread not_made "socks"', POUCH],
  ['fingerless mittens 7 in long', 'plan limb-warmers limb=wrist length=177.8'],
  ['tea cosy 10 in round', 'unread not_made "tea cosy"'],
  ['a sleeping bag 30 in wide', 'unread not_made "sleeping bag"'],
  ['a sweater', 'unread not_made "sweater"'],
  ['a hat for a 22 in head and mittens', 'plan hat head=558.8'],
  ['110 rows in 22 in, sock yarn', 'record rows=110/558.8 yarn=sock'],
  ['sock yarn', 'unread nothing "sock yarn"'],
];

const SHORT: Rows = [
  ['hey! new here. what do I type first?', 'help'],
  ['hi, how do I start?', 'help'],
  ['where do I begin', 'help'],
  ['what now?', 'help'],
  ["thanks that's lovely", 'thanks'],
  ['great thanks!', 'thanks'],
  ['perfect, thank you so much', 'thanks'],
  ['ok', 'thanks'],
  ['Lovely!', 'thanks'],
  ['right', 'pick 0', asking('confirm')],
  ['great, start', 'start'],
  ['perfect size', 'unread nothing "perfect"'],
  ['it unravelled, start over', 'start_over', IN_HAND],
  ['the cat got it, starting again', 'start_over', IN_HAND],
  ['start over', 'start_over'],
  ['I have to start over', 'start_over', IN_HAND],
  ['start again', 'start', IN_HAND],
  ["don't start over", 'unread nothing "don\'t start over"', IN_HAND],
  ['should I start over?', 'unread nothing "should I start over?"', IN_HAND],
  ['use in', 'set_units in'],
];

export const EVERYDAY_THEMES: Themes = [
  ['everyday names of pieces', NAMES],
  ['what no kind of piece is', UNMADE],
  ['small talk and beginning again', SHORT],
  ['words without the plan or the work that they are of', LACKING],
];
