import { asking, type Rows, type Themes } from './row.js';

const COWL = { subjectPiece: 'cowl' };

const UNTOLD: Rows = [
  ['in stripes', 'unread which_stripes "in stripes"', COWL],
  ['make it striped', 'unread which_stripes "make it striped"', COWL],
  ['striped', 'unread which_stripes "striped"'],
  ['cowl 24 in round in stripes', 'plan cowl girth=609.6'],
];

const ONE_COLOUR: Rows = [
  ['in red', 'unread colour_alone "red"', COWL],
  ['In red please', 'unread colour_alone "red"', COWL],
  ['can I have it in dark blue?', 'unread colour_alone "dark blue"', COWL],
  ['make it red', 'unread colour_alone "red"', asking('height', 'cowl')],
  ['in grey', 'change yarn=grey medium', COWL],
  ['in red', 'unread nothing "red"'],
  ['in red and white', 'unread which_stripes "red"', COWL],
  ['red balls', 'unread nothing "red balls"', COWL],
];

const WITH_A_PLAN: Rows = [
  ['cowl 24 in round in stripes of 4 red 2 cream', 'plan cowl girth=609.6 stripes=4 red/2 cream'],
  ['cowl 24 in round, 4 red 2 cream', 'plan cowl girth=609.6 stripes=4 red/2 cream'],
  ['cowl 24 in round in 2 cm stripes of red and white', 'plan cowl girth=609.6 stripes=20mm red/20mm white'],
  ['striped cowl 24 in round, 4 red, 2 dusky rose', 'plan cowl girth=609.6 stripes=4 red/2 dusky rose'],
  ['cowl 24 in round in even stripes of 3 colours', 'plan cowl girth=609.6 stripes=colour 1/colour 2/colour 3'],
];

const FOLLOWING: Rows = [
  ['in stripes of 4 red 2 cream', 'change stripes=4 red/2 cream', COWL],
  ['in stripes: 4 red, 2 cream', 'change stripes=4 red/2 cream', COWL],
  ['4 red 2 cream', 'change stripes=4 red/2 cream', COWL],
  ['4 rows of red and 2 of cream', 'change stripes=4 red/2 cream', COWL],
  ['red 4, cream 2', 'change stripes=4 red/2 cream', COWL],
  ['2.5 red, 3 cream', 'change stripes=2.5 red/3 cream', COWL],
  ['1 in rust, 2 in oat', 'change stripes=25.4mm rust/50.8mm oat', COWL],
  ['stripes of 2 cm in red and white', 'change stripes=20mm red/20mm white', COWL],
  ['4 row stripes of red, white and light blue', 'change stripes=4 red/4 white/4 light blue', COWL],
  ['even stripes in red, white and blue', 'change stripes=red/white/blue', COWL],
  ['make it 12 in stripes of 4 red 2 cream', 'change girth=304.8 stripes=4 red/2 cream', COWL],
  ['make it meet', 'change stripes=meet', COWL],
  ['no stripes', 'change stripes=none', COWL],
];

const NOT_STRIPES: Rows = [
  ['2 in 1', 'unread nothing "2 in 1"', COWL],
  ['4 red balls of yarn', 'stock set count=4 name=red', COWL],
  ['3 balls of red, 2 balls of cream', 'stock set count=3 name=red; stock set count=2 name=cream', COWL],
  ['24 rings, 12 zips', 'unread nothing "24 rings, 12 zips"', COWL],
  ['48 women, 52 men', 'unread words "48 women"', COWL],
  ['make it 4 in', 'change girth=101.6', COWL],
];

export const STRIPES_THEMES: Themes = [
  ['stripes not said which', UNTOLD],
  ['one colour', ONE_COLOUR],
  ['stripes with a plan', WITH_A_PLAN],
  ['stripes of the plan in hand', FOLLOWING],
  ['what is no stripes', NOT_STRIPES],
];
