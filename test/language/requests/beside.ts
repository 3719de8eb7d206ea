import { asking, CM, IN_HAND, POUCH, type Rows, type Themes } from './row.js';

const SCARF = { subjectPiece: 'scarf', rowsMake: 'length' };
const PINNED = { ...POUCH, rowsMake: 'width', yarns: ['grey medium', 'oat'], bench: { machine: '48', yarn: 'Oat' } };

/** Sizes told beside the one in hand. */
const RELATIVE: Rows = [
  ['make it 2 cm longer', 'change length+20', SCARF],
  ['2 in shorter please', 'change length-50.8', SCARF],
  ['make it wider by 1 in', 'change width+25.4', POUCH],
  ['2 longer', 'change length+20', { ...SCARF, ...CM }],
  ['one inch wider', 'change width+25.4', POUCH],
  ['and a half inch taller', 'change height+12.7', POUCH],
  ['10% longer', 'change length*1.1', SCARF],
  ['half as long', 'change length*0.5', SCARF],
  ['can you make it twice as wide', 'change width*2', POUCH],
  ['bigger by 1 in', 'change width+25.4', PINNED],
  ['longer', 'unread relative "longer"', SCARF],
  ['a bit wider', 'unread relative "wider"', POUCH],
  ['same as last time but taller', 'unread relative "taller"', POUCH],
];

const NOT_RELATIVE: Rows = [
  ['it came out 2 in longer', 'finish 50.8', { ...POUCH, inHand: { piece: 'pouch', rows: 40, stopAt: 109 } }],
  ['2 cm longer', 'unread no_plan "2 cm longer"'],
];

/** The only other of two. */
const OTHERS: Rows = [
  ['the other yarn', 'change yarn=grey medium', PINNED],
  ['in the other yarn please', 'change yarn=grey medium', PINNED],
  ['on the other machine', 'change machine=46 needles=46', { ...PINNED, machines: ['48', '46'] }],
  ['the other one', 'change yarn=grey medium', { ...PINNED, machines: ['48'] }],
  ['the other one', 'unread which_other "grey medium or the 46"', { ...PINNED, machines: ['48', '46'] }],
  [
    'the other one',
    'unread which_other "grey medium, blue or the 46"',
    { ...PINNED, yarns: ['grey medium', 'blue', 'oat'], machines: ['48', '46'] },
  ],
  ['the other yarn', 'unread which_other', { ...PINNED, yarns: ['oat'] }],
];

/** Two sizes are in the order that the piece can have. */
const TURNED: Rows = [
  ['scarf 18 by 150', 'plan scarf width=180 length=1500', CM],
  ['scarf 150 by 18', 'plan scarf length=1500 width=180', CM],
  ['scarf 60 x 7', 'plan scarf length=1524 width=177.8'],
];

/** The piece in hand by its name. */
const BY_NAME: Rows = [
  ['make the pouch 12 wide', 'change width=304.8', PINNED],
  ['this pouch in oat', 'change yarn=oat', PINNED],
  ['a pouch 12 wide', 'plan pouch width=304.8', PINNED],
  ['the pouch 12 wide', 'plan pouch width=304.8', asking('length', 'pouch')],
  ['the cowl 24 in round', 'plan cowl girth=609.6', PINNED],
];

/** Said last, it drops what was said before it. */
const GIVEN_UP: Rows = [
  ['panel. actually never mind', 'drop', asking('length', 'flat-panel')],
  ['pouch 11 in wide, no, forget it', 'drop'],
  ['nvm', 'drop'],
  ["Never mind, that's all for today, thank you very much for your help!", 'drop'],
  ["that's all for now, thanks", 'thanks'],
  ['Would you mind undoing that last change please', 'undo', POUCH],
];

const BEGINNERS: Rows = [
  ['how do i measure?', 'tell_gauge none'],
  ["I don't have a gauge yet", 'tell_gauge none'],
  ['no gauge yet', 'tell_gauge none'],
  ["what's a swatch", 'tell_gauge none'],
  [
    'I knitted a swatch on my 46 needle machine, 110 rows, and it came out at 22 in long and 6 3/4 flat',
    'record rows=110/558.8 flat=171.45 needles=46',
  ],
];

/** Numbers that are of something else than the question that is open. */
const NO_ANSWERS: Rows = [
  ['what does one cost', 'cost', asking('girth', 'cowl')],
  ['with a 10 in zip', 'change closure=254', asking('gauge', 'pouch')],
  ['what is my stop row', 'where'],
  ['when do I stop?', 'where'],
  ['when will it be ready?', 'show_time', PINNED],
  ['my machines', 'show_gauge'],
  [
    'I have a 22, a 40 and a 48',
    'record machine=22 needles=22; record machine=40 needles=40; record machine=48 needles=48',
  ],
  ['Hi! I make things on a 22 needle and a 48', 'record machine=22 needles=22; record machine=48 needles=48'],
  ['we knit on a 22 and a 48', 'record machine=22 needles=22; record machine=48 needles=48'],
  ['thanks, bye', 'thanks'],
  ['good night', 'thanks'],
  ['my machines are the 46 and the 48.', 'record machine=46 needles=46; record machine=48 needles=48'],
  ['I have 22 and 40', 'unread nothing "22 and 40"'],
  ['i stopped at row 60', 'tally to=60', IN_HAND],
  [
    'I have just finished row sixty-two, and it measures about twelve and a half inches hanging',
    'reading row=62 317.5 hanging',
    IN_HAND,
  ],
  ['what do I need for the 20', 'change x20 first=notions', PINNED],
  ['Could you tell me why it is that many rows, and how long it would take me?', 'why; show_time', PINNED],
  ['What would you suggest I do to be more certain of the size?', 'what_helps', PINNED],
  ['the next stall asks 36', 'unread nothing "stall asks 36"', asking('size')],
  ['and a 9 cm mug', 'unread nothing "mug"', asking('height', 'mug-sleeve')],
  ['about 9 cm', 'reply 90', asking('size')],
  ['I bought 16 x 16 in forms', 'unread nothing "bought 16 x 16 in forms"'],
  ['yes', 'pick 0', { offered: ['60 cm'] }],
  ['yes', 'unread nothing "yes"', { offered: ['on the 48'] }],
  ['could we do 60?', 'change x60', PINNED],
  ['price it at 25', 'cost at=25', PINNED],
  ['hat for my nephew, who is four', 'plan hat head=502.12'],
];

export const BESIDE_THEMES: Themes = [
  ['a size told beside the one in hand', RELATIVE],
  ['a size told by itself', NOT_RELATIVE],
  ['the other one', OTHERS],
  ['two sizes in the order that fits', TURNED],
  ['the piece in hand by its name', BY_NAME],
  ['what is given up', GIVEN_UP],
  ['a maker without a gauge', BEGINNERS],
  ['numbers that answer nothing', NO_ANSWERS],
];
