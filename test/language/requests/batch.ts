import { NOVEMBER, POUCH, type Rows, type Themes } from './row.js';

const TEAM = { team: ['nadia', 'owen', 'u2'] };
const OPEN = { ...TEAM, batch: { left: 9 } };

const MAKERS: Rows = [
  [
    '12 pouches 11 in wide with Owen by 5 december',
    'plan pouch width=279.4 x12 by=2026-12-05 makers=me+owen',
    { ...NOVEMBER, ...TEAM },
  ],
  ['12 with Owen by 5 december', 'change x12 by=2026-12-05 makers=me+owen', { ...NOVEMBER, ...POUCH, ...TEAM }],
  ['split with @Owen and Lotte', 'change makers=me+owen', { ...POUCH, ...TEAM }],
  ['split with @Owen and @Lotte', 'change makers=me+owen+lotte', { ...POUCH, ...TEAM }],
  ['24 between Nadia and Owen', 'change x24 makers=nadia+owen', { ...POUCH, ...TEAM }],
  ['24 of them between Nadia, Owen and me', 'change x24 makers=nadia+owen+me', { ...POUCH, ...TEAM }],
  ['Nadia knits, Owen finishes', 'change makers=nadia+owen knits=nadia finishes=owen', { ...POUCH, ...TEAM }],
  ['I knit and @U2 seams', 'change makers=me+u2 knits=me finishes=u2', { ...POUCH, ...TEAM }],
  ['20 cowls 60 cm round, @Owen and me', 'plan cowl girth=600 x20 makers=owen+me', TEAM],
  ['pouch 11 in wide with a 9 in zip', 'plan pouch width=279.4 closure=228.6', TEAM],
  ['with a 9 in zip', 'change closure=228.6', { ...POUCH, ...TEAM }],
  ['between 11 and 12 in wide', 'change width=279.4..304.8', { ...POUCH, ...TEAM }],
];

const SEVERAL = { ...POUCH, ...TEAM, copies: 12 };

const HALVES: Rows = [
  ['can Owen make half of these?', 'change makers=me+owen', SEVERAL],
  ['split these with Owen', 'change makers=me+owen', SEVERAL],
  ['half of them with Owen please', 'change makers=me+owen', SEVERAL],
  ['can Sam make half of these', 'unread whom_with "Sam"', SEVERAL],
  ['can Owen make half of these', 'unread whom_with "Owen"', { ...POUCH, ...TEAM, copies: 1 }],
  ['can Owen make half', 'unread whom_with "Owen"', TEAM],
  ['split these with sam', 'unread whom_with "sam"', POUCH],
  ['Sam could do half of them', 'unread whom_with "Sam"', { ...POUCH, holes: ['due'] }],
  ['can you make half of these', 'unread nothing "half"', POUCH],
  ['make it with rings', 'unread nothing "make it with rings"', POUCH],
  ['share it with Owen', 'share Owen', SEVERAL],
];

const ON_THE_WAY: Rows = [
  ['done 3', 'batch_done 3', OPEN],
  ['three done', 'batch_done 3', OPEN],
  ["I've finished 2 more of them", 'batch_done 2', OPEN],
  ['Owen did 2', 'batch_done 2 by=owen', OPEN],
  ['done 2 knitted', 'batch_done 2 knit', OPEN],
  ['re-plan', 'batch replan', OPEN],
  ['Where are we with the batch?', 'batch show', OPEN],
  ['how is the batch going', 'batch show', OPEN],
  ['without Owen next week', 'batch_without owen next_week', OPEN],
  ['without me tomorrow', 'batch_without me tomorrow', OPEN],
  ['without Owen', 'batch_without owen always', OPEN],
  ['24 of them', 'change x24', { ...OPEN, ...POUCH }],
  ['without a zip', 'change closure=0', { ...OPEN, ...POUCH }],
  ['60 rows done', 'tally to=60', { ...OPEN, ...POUCH, inHand: { piece: 'pouch', rows: 40, stopAt: 109 } }],
  ['where am I', 'where', OPEN],
];

const REMINDERS: Rows = [
  ['remind me', 'remind set'],
  ['Please remind me of it', 'remind set'],
  ['stop reminding me', 'remind stop'],
  ['no more reminders', 'remind stop'],
];

export const BATCH_THEMES: Themes = [
  ['who makes a batch', MAKERS],
  ['half of them for someone else', HALVES],
  ['a batch on its way', ON_THE_WAY],
  ['reminders', REMINDERS],
];
