import { IN_HAND, POUCH, type Rows, type Themes } from './row.js';

const LEFT: Rows = [
  ['38 g left on the cone, how many rows?', 'yarn_left 38g', POUCH],
  ['38 g left', 'yarn_left 38g', POUCH],
  ['I ran out of yarn', 'yarn_left 0m', IN_HAND],
  ["I'm out of yarn", 'yarn_left 0m', POUCH],
  ['row 60, I ran out of yarn', 'tally to=60; yarn_left 0m', IN_HAND],
  ['I have 40 m left, is that enough?', 'yarn_left 40m', POUCH],
  ['45 yd left, will it last?', 'yarn_left 41.15m', POUCH],
  ["I've got 38 grams left. How many more rows can I knit?", 'yarn_left 38g', IN_HAND],
  ['do I have enough yarn?', 'yarn_left', POUCH],
  ['are 2 balls enough?', 'yarn_left x2', POUCH],
  ['is one ball enough?', 'yarn_left x1', IN_HAND],
  ['half a ball left, will it last?', 'yarn_left x0.5', IN_HAND],
  ['will it last?', 'yarn_left', POUCH],
  ['will the yarn last?', 'yarn_left', IN_HAND],
  ['row 60, 38 g left, how many rows?', 'tally to=60; yarn_left 38g', IN_HAND],
  ['how many rows will 38 g make?', 'yarn_left 38g', IN_HAND],
  ['38 g of grey medium left, how many rows?', 'yarn_left 38g', IN_HAND],
];

const NOT_LEFT: Rows = [
  ['38 g left of lot 12', 'stock set 38g lot=12', POUCH],
  ['38 g of grey left', 'stock set 38g name=grey', POUCH],
  ['half a ball left', 'unread nothing "half a ball"', IN_HAND],
  ['used 20 g of grey', 'stock take 20g name=grey', POUCH],
  ['how many rows left?', 'where', IN_HAND],
  ['how many rows for a pouch 11 in wide', 'plan pouch width=279.4', POUCH],
];

const OTHER: Rows = [
  ['can I use oat fine instead?', 'other_yarn yarn=oat fine', { ...POUCH, yarns: ['oat fine'] }],
  ['could I use red wool instead', 'other_yarn yarn=red wool', POUCH],
  ['in another yarn, 50 g / 140 m, for this plan', 'other_yarn ball=50g/140m', POUCH],
  ['use acrylic 100 g / 300 m instead', 'other_yarn yarn=acrylic ball=100g/300m', POUCH],
  ['use acrylic 100 g / 300 m instead', 'other_yarn yarn=acrylic ball=100g/300m'],
  ['use the 48 instead', 'change machine=48 needles=48', POUCH],
  ['swap to DK 50 g 120 m', 'other_yarn yarn=DK ball=50g/120m', POUCH],
  ['can I use a 9 in zip instead?', 'change closure=228.6', POUCH],
  ['use oat instead', 'change yarn=oat', POUCH],
  ['50 g / 140 m', 'sold_as ball=50g/140m', POUCH],
];

const MAKE: Rows = [
  ['what can I make from what I have?', 'what_to_make'],
  ['what can I make with 80 g of grey?', 'what_to_make 80g yarn=grey'],
  ['what could I knit from the oat?', 'what_to_make yarn=oat', POUCH],
  ['what can you do', 'help'],
];

export const YARN_LEFT_THEMES: Themes = [
  ['yarn left', LEFT],
  ['what is not of yarn left', NOT_LEFT],
  ['another yarn', OTHER],
  ['what can be made of a yarn', MAKE],
];
