import { asking, CM, IN_HAND, POUCH, type Rows, type Themes } from './row.js';

const HELPED = { ...POUCH, onHelp: true };

const WORDS: Rows = [
  ["what's an even chance", 'explain_chance about an even chance', POUCH],
  ['what does about an even chance mean?', 'explain_chance about an even chance', POUCH],
  ['what does likely mean', 'explain_chance likely', POUCH],
  ['what is very likely?', 'explain_chance very likely', POUCH],
  ['what does nearly certain mean', 'explain_chance nearly certain', POUCH],
  ["what's less likely than not", 'explain_chance less likely than not', POUCH],
  ['explain unlikely', 'explain_chance unlikely'],
  ["what's the chance?", 'explain_chance', POUCH],
  ['what does 36% mean', 'explain_chance', POUCH],
  ['how likely is it', 'explain_chance', POUCH],
  ['is that good?', 'what_helps', POUCH],
  ['is it good enough', 'what_helps', IN_HAND],
  ['is that ok?', 'what_helps', POUCH],
  ['is that a good yarn?', 'change first=yarn', POUCH],
  ['how do i get it better', 'what_helps', POUCH],
];

const OWN_COUNTS: Rows = [
  ['I always do 125', 'own_count 125', POUCH],
  ['but I usually knit 125 rows', 'own_count 125', POUCH],
  ['I want 125 rows', 'own_count 125', POUCH],
  ['my count is 125', 'own_count 125', POUCH],
  ["I'd do 125 rows", 'own_count 125', POUCH],
  ['mine is 125 rows', 'own_count 125', POUCH],
  ['my count is 125', 'own_count 125', IN_HAND],
  ['my count is 64', 'tally to=64', IN_HAND],
  ['I always do 105', 'own_count 105', IN_HAND],
  ['2 rows more this time', 'own_count +2', POUCH],
  ['next one same but 2 rows more', 'own_count +2', POUCH],
  ['same again with 3 fewer rows', 'own_count -3', POUCH],
  ['two rows less next time', 'own_count -2', POUCH],
  ['2 rows more', 'tally by=2', IN_HAND],
  ['2 more rows', 'unread no_work "2 more rows"', POUCH],
  ['2 rows more next time', 'own_count +2', asking('length', 'pouch')],
  ['2 rows less this time', 'own_count -2', IN_HAND],
  ['start with 125 rows', 'start rows=125', POUCH],
];

const NOT_OWN: Rows = [
  ['I always do 125', 'unread nothing "125"'],
  ['I always do 125 rows in 24 in', 'record rows=125/609.6', POUCH],
  ['start 2', 'unread which_number "start 2"', POUCH],
  ['start two', 'unread which_number "start two"', POUCH],
  ['start 2 of them', 'change x2; start', POUCH],
  ['38 left', 'unread which_number "38 left"', POUCH],
  ['I have 38 left', 'unread which_number "I have 38 left"', IN_HAND],
  ['38 left', 'reply 965.2', asking('width', 'pouch')],
  ['at 12 in', 'change width=304.8', POUCH],
  ['at 12', 'reply 304.8', asking('width', 'pouch')],
];

const ALLOWED: Rows = [
  ['give or take 1/2 in', 'allow 12.7', POUCH],
  ['± 1/4', 'allow 6.35', POUCH],
  ['allow 1.5', 'allow 15', { ...POUCH, ...CM }],
  ['allow 10 1/2 to 11 1/2', 'allow 266.7..292.1', POUCH],
  ['allow more', 'allow', POUCH],
  ['2.5 is fine, it stretches', 'allow 25', { ...HELPED, ...CM }],
  ['1/2 in would be ok', 'allow 12.7', HELPED],
  ['1/2 in is fine, start', 'allow 12.7; start', HELPED],
  ['11 in is fine', 'change width=279.4', POUCH],
  ['pouch 11 in wide, give or take 1/2 in', 'plan pouch width=266.7..292.1', POUCH],
];

export const CHANCES_THEMES: Themes = [
  ['words for a chance', WORDS],
  ['a count of the maker’s own', OWN_COUNTS],
  ['what only sounds like a count', NOT_OWN],
  ['how far off a size may be', ALLOWED],
];
