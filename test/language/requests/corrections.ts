import { asking, CM, POUCH, type Rows, type Themes } from './row.js';

const CORRECTIONS: Rows = [
  ['that was 21.5, not 22', 'correct 546.1 was=22'],
  ['that was 21.5 not 22', 'correct 546.1 was=22'],
  ['that was 21.5 instead of 22', 'correct 546.1 was=22'],
  ['that was 55.6', 'correct 556', CM],
  ['no, 21.5', 'correct 546.1'],
  ['No, it was 21.5', 'correct 546.1'],
  ['should be 108 rows', 'correct count=108'],
  ['it should have been 108 rows', 'correct count=108'],
  ['no it was 60 rows not 62', 'correct count=60 was=62'],
  ['sorry 21.5', 'correct 546.1'],
  ['sorry, I meant 10 1/4', 'correct 260.35'],
  ['I meant 10 1/4', 'correct 260.35'],
  ['10 1/4 sorry', 'correct 260.35'],
  ['27 cm, sorry', 'correct 270'],
  ['the 22 should be 21.5', 'correct 546.1 was=22'],
  ['that was 6 1/2 flat', 'correct 165.1'],
  ['that was 38 g', 'correct 38g'],
  ['typo: 21.5', 'correct 546.1'],
  ['that was twenty one and a half', 'correct 546.1'],
  ['that was 8 1/4', 'correct 209.55', POUCH],
  ['10 1/4 sorry', 'reply 260.35', asking('confirm')],
  ['it is right', 'pick 0', asking('confirm')],
];

const LOOKED_AT: Rows = [
  ['my measurements', 'show_pieces'],
  ['show my measurements', 'show_pieces'],
  ['what did I measure?', 'show_pieces'],
  ['the pieces behind the 52', 'show_pieces machine=52 needles=52'],
  ['my swatches on the 48', 'show_pieces machine=48 needles=48'],
  ['the pieces behind the grey medium', 'show_pieces yarn=grey medium'],
];

const TAKEN_BACK: Rows = [
  ['drop the 6', 'take_back "6"'],
  ['drop the 6, that was by eye', 'take_back "6"'],
  ['forget the 60 rows', 'take_back "60 rows"'],
  ['forget the 60 rows in 12 1/4 in', 'take_back "60 rows in 12 1/4 in"'],
  ['delete the 110', 'take_back "110"'],
  ['please remove the 110 rows', 'take_back "110 rows"'],
  ['take back the 60 rows', 'take_back "60 rows"'],
];

export const CORRECTIONS_THEMES: Themes = [
  ['a slip put right', CORRECTIONS],
  ['measurements looked at', LOOKED_AT],
  ['a measurement taken back', TAKEN_BACK],
];
