import { POUCH, type Rows, type Themes } from './row.js';

const HERE = 'which_machine';
const SIZED = 'which_machine pouch width=279.4 height=171.45';

const ASKED: Rows = [
  ['which machine for a pouch 11 by 6 3/4', SIZED],
  ['Which machine would be best for a pouch 11 by 6 3/4?', SIZED],
  ['which of my machines suits a pouch 11 in wide and 6 3/4 in tall', SIZED],
  ['a pouch 11 by 6 3/4, on which machine?', SIZED],
  ['compare my machines for a pouch 11 by 6 3/4', SIZED],
  ['what machine do i need for a pouch 11 by 6 3/4', SIZED],
  ['the 46 or the 48 for a pouch 11 by 6 3/4?', SIZED],
  ['is the old blue or the 48 better for a pouch 11 by 6 3/4', SIZED],
  ['which machine for two pouches 11 in wide in grey', 'which_machine pouch width=279.4 x2 yarn=grey medium'],
  ['which machine for a pouch 11 in wide in the oat', 'which_machine pouch width=279.4 yarn=oat'],
  ['which machine for a pouch', 'which_machine pouch'],
  ['pouch 11 by 6 3/4 on another machine', SIZED],
  ['which machine for a poncho', 'unread nothing "poncho"', POUCH],
  ['which machine for a lamp 10 cm across', 'unread nothing "lamp"', POUCH],
  ['which machine for 11 by 6 3/4', 'which_machine ? "which machine for 11 by 6 3/4"'],
];

const IN_HAND: Rows = [
  ['which machine?', HERE, POUCH],
  ['which machine', HERE],
  ['on which machine', HERE, POUCH],
  ['which of my machines suits this?', HERE, POUCH],
  ['which one of my machines is best', HERE, POUCH],
  ['which of my two machines should i use for this', HERE, POUCH],
  ['can i make it on another machine', HERE, POUCH],
  ['could I knit this on a different machine?', HERE, POUCH],
  ['what about my other machines', HERE, POUCH],
  ['would another machine fit better', HERE, POUCH],
  ['compare machines', HERE, POUCH],
  ['compare the machines please', HERE, POUCH],
  ['compare all my machines', HERE, POUCH],
  ['best machine?', HERE, POUCH],
  ['is there a better machine for this', HERE, POUCH],
  ['on another machine', HERE, POUCH],
  ['which machine do you recommend', HERE, POUCH],
  ["what's the right machine for it", HERE, POUCH],
  ['the 46 or the 48?', HERE, POUCH],
  ['on the 46 or on the old blue', HERE, POUCH],
  ['the 48 vs the 46', HERE, POUCH],
  ['what would it be on the 46 compared with the 48?', HERE, POUCH],
  ['the 48 compared to the old blue', HERE, POUCH],
  ['is it better on the 48 than on the 46', HERE, POUCH],
  ['make it 12 wide, which machine?', 'change width=304.8; which_machine', POUCH],
  ['46 needles, 110 rows in 22 in, which machine?', 'record rows=110/558.8 needles=46; which_machine', POUCH],
];

const OFFERED = { ...POUCH, offered: ['on the 48', 'the second', ''] };

const PICKED: Rows = [
  ['on the 48', 'pick 0', OFFERED],
  ['OK, on the 48.', 'pick 0', OFFERED],
  ['make it on the 48 please', 'pick 0', OFFERED],
  ['use the 48', 'pick 0', OFFERED],
  ['the second', 'pick 1', OFFERED],
  ['on the 46', 'change machine=46 needles=46', OFFERED],
  ['on the 48 in oat', 'change machine=48 needles=48 yarn=oat', OFFERED],
];

/** What is said of machines and asks for none. */
const TOLD: Rows = [
  ['i have another machine, 48 needles, 6 3/4 flat', 'record flat=171.45 needles=48'],
  ['another machine: 60 rows in 12 in, 40 needles', 'record rows=60/304.8 needles=40'],
  ['the machine i used was the 48', 'change machine=48 needles=48', POUCH],
  ['which machine did i use', 'unread nothing "which machine did i use"', POUCH],
  ['not the 46', 'change machine=the old blue', { ...POUCH, machines: ['the old blue', '46'] }],
];

export const MACHINES_THEMES: Themes = [
  ['which machine for a piece', ASKED],
  ['which machine for the plan in hand', IN_HAND],
  ['a way that was offered in its own words', PICKED],
  ['no question for a machine', TOLD],
];
