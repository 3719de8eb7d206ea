import { asking, POUCH, type Rows, type Themes } from './row.js';

const NOTIONS: Rows = [
  ['notions', 'change first=notions', POUCH],
  ['the notions please', 'change first=notions', POUCH],
  ['which notions does it take?', 'change first=notions', POUCH],
  ['notoins', 'change first=notions', POUCH],
  ['notions for 12', 'change x12 first=notions', POUCH],
  ['a notions list for 12', 'change x12 first=notions', POUCH],
  ['notions for 12 of them', 'change x12 first=notions', POUCH],
  ['Notions for twelve of these', 'change x12 first=notions', POUCH],
  ['what do I need for 12?', 'change x12 first=notions', POUCH],
  ['what do we need to have for 12', 'change x12 first=notions', POUCH],
  ['what else do I need', 'change first=notions', POUCH],
  ['What else do I need for it?', 'change first=notions', POUCH],
  ['what do I need for 12', 'change x12 first=notions', asking('gauge', 'pouch')],
  ['notions for 12 in', 'change width=304.8 first=notions', POUCH],
  ['notions for 12 wide', 'change width=304.8 first=notions', POUCH],
  ['yarn and notions for 12 of them', 'change x12 first=yarn first=notions', POUCH],
  ['notions for 12 pouches 11 in wide', 'plan pouch width=279.4 x12 first=notions'],
  ['what do I need for a pouch 11 in wide', 'plan pouch width=279.4 first=notions'],
  ['rows and notions for a pouch 11 in wide', 'plan pouch width=279.4 first=notions'],
  ['notions', 'unread nothing "notions"'],
  ['what do I need to knit for 12 in', 'change width=304.8', POUCH],
  ['how much do I need for 12', 'change width=304.8', POUCH],
];

const HOW_MANY: Rows = [
  ['12 of these', 'change x12', POUCH],
  ['for 12 of these', 'change x12', POUCH],
  ['for 12 of them please', 'change x12', POUCH],
  ['yarn for 12 of them', 'change x12 first=yarn', POUCH],
  ['12 of these', 'unread no_plan "12 of these"'],
];

const STEPS: Rows = [
  ['the steps in full please', 'steps'],
  ['long steps', 'steps'],
  ['show me the full steps', 'steps'],
  ['short steps', 'steps short'],
  ['steps in short', 'steps short'],
  ['Brief steps, please', 'steps short'],
  ['the checklist', 'steps short'],
  ['a check list please', 'steps short'],
  ['show me the short checklist', 'steps short'],
  ['steps for a tube 22 in long', 'plan plain-tube length=558.8 first=steps'],
  ['short steps for a tube 22 in long', 'plan plain-tube length=558.8 first=checklist'],
  ['a checklist for a tube 22 in long', 'plan plain-tube length=558.8 first=checklist'],
  ['checklist for 12 of them', 'change x12 first=checklist', POUCH],
  ['a short pouch 11 in wide', 'plan pouch width=279.4'],
];

export const NOTIONS_THEMES: Themes = [
  ['what to have at hand', NOTIONS],
  ['how many of the plan in hand', HOW_MANY],
  ['steps, long and short', STEPS],
];
