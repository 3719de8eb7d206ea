import { IN_HAND, POUCH, type Rows, type Themes } from './row.js';

const BOTH: Rows = [
  ['what does it cost and how much yarn', 'change first=yarn; cost', POUCH],
  ['how long does it take and what does it cost?', 'show_time; cost', POUCH],
  ['4 red 2 cream, how long?', 'change stripes=4 red/2 cream; show_time', POUCH],
  ['cost of 12 and time for 12', 'show_time copies=12; cost x12', POUCH],
  ['how long for 12, what does it cost', 'show_time copies=12; cost', POUCH],
  ['how many balls for 12, what does it cost', 'buy x12; cost', POUCH],
  ['cost for 12 on the 48', 'change machine=48 needles=48; cost x12', POUCH],
  ['on the 48, what does it cost?', 'change machine=48 needles=48; cost', POUCH],
  ['12 of them, what do they cost', 'change x12; cost', POUCH],
  ['two of them at 48 each', 'change x2; cost at=48', POUCH],
  ['12 wide, how many balls?', 'change width=304.8; buy', POUCH],
  ['12 wide and start', 'change width=304.8; start', POUCH],
  ['with a 10 in zip, how much is it?', 'change closure=254; cost', POUCH],
  ["hat for a woman, what's it cost & how long", 'plan hat head=561.1 first=time; cost'],
  ['what do I need to buy and what does it cost?', 'change first=notions; cost', POUCH],
  ['finished 11 in wide and took 85 minutes, what did it cost?', 'log_time 5100; finish width=279.4; cost', IN_HAND],
];

const APART: Rows = [
  ['undo that and start', 'undo; start', POUCH],
  ['looser and what does it cost', 'looser; cost', POUCH],
  ['in cm and how long does it take', 'set_units cm; show_time', POUCH],
  ['start and remind me', 'start; remind set', POUCH],
  ['share it with Owen and start', 'share Owen; start', POUCH],
  ['pouch 11 in wide and share it with Owen', 'plan pouch width=279.4; share Owen'],
  ['share it with Owen and Lotte, and what does it cost', 'share Owen+Lotte; cost', POUCH],
  ['never mind, pouch 12 in wide', 'plan pouch width=304.8'],
  ['my gauge and what does it cost', 'show_gauge; cost', POUCH],
  ['my shelf, and how many balls for 12', 'show_shelf; buy x12', POUCH],
  ['undo and make it 12 wide', 'undo; change width=304.8', POUCH],
  ['where am I and what does it cost?', 'where; cost', IN_HAND],
  ['row 40, what does it cost?', 'tally to=40; cost', IN_HAND],
  ['done, 10 7/8, start another', 'finish 276.22; start', IN_HAND],
  ['done, start another one', 'finish; start', IN_HAND],
  ['done and start the next one', 'finish; start', IN_HAND],
  ['time and cost', 'show_time; cost', POUCH],
  ['steps and what does it cost', 'change first=steps; cost', POUCH],
  ['rows, time and cost', 'change; show_time; cost', POUCH],
];

const NOT_TWO: Rows = [
  ['start another pouch 11 in wide', 'plan pouch width=279.4', POUCH],
  ['the next time and cost', 'cost', POUCH],
  ['share it with Owen and Lotte', 'share Owen+Lotte', POUCH],
  ['share this with Owen and Cap', 'share Owen+Cap', POUCH],
  ['tube 20 minutes long', 'plan plain-tube'],
  ['how much is it wide', 'unread nothing "how much is it wide"', POUCH],
  ['3 balls at 6.50 each', 'unread words "3 balls"', POUCH],
];

export const TOGETHER_THEMES: Themes = [
  ['two requests in one message', BOTH],
  ['two requests, each with words of its own', APART],
  ['what only sounds like two', NOT_TWO],
];
