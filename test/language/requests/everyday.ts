import { IN_HAND, POUCH, type Rows, type Themes } from './row.js';

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

export const EVERYDAY_THEMES: Themes = [['words without the plan or the work that they are of', LACKING]];
