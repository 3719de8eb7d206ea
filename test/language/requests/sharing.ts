import { IN_HAND, POUCH, type Rows, type Themes } from './row.js';

const WITH: Rows = [
  ['share this with @Owen', 'share @Owen'],
  ['share with Owen', 'share Owen', POUCH],
  ['Share it with Owen please.', 'share Owen'],
  ['share the pouch with Owen', 'share Owen', POUCH],
  ['share my plan with @U0OWEN1234', 'share @U0OWEN1234'],
  ['send this to Owen', 'share Owen'],
  ['show the plan to Lotte Berg', 'share Lotte Berg'],
  ['share this with Owen and Lotte', 'share Owen+Lotte'],
  ['share this with Owen, Lotte & Nadia', 'share Owen+Lotte+Nadia'],
  ['share this with Owen, with my rows', 'share Owen rows'],
  ['share this with Owen with my rows and needles', 'share Owen rows'],
  ['share this with my rows with Owen', 'share Owen rows'],
  ['share my rows with Owen', 'share Owen rows'],
  ['share this with Owen, size only', 'share Owen'],
  ['share this with Owen without my rows', 'share Owen'],
  ['share with <!channel>', 'share <!channel>'],
  ['share this with', 'share you', POUCH],
  ['share it', 'share you', POUCH],
  ['post this here', 'share here'],
  ['share this in the channel', 'share here'],
  ['share it here', 'share here'],
  ['post the pouch in this channel', 'share here'],
  ['share this with the channel', 'share here'],
];

const AFTER: Rows = [
  ['size it to my gauge', 'size_share'],
  ['Size this to my own gauge!', 'size_share'],
  ['not now', 'leave_share'],
  ['take the change', 'size_share change'],
  ['keep mine', 'leave_share keep'],
  ['send the change', 'send_change'],
  ['send the changes to them', 'send_change'],
  ['take back the share with Owen', 'withdraw_share Owen'],
  ['withdraw it', 'withdraw_share'],
  ['withdraw the plan from @Owen', 'withdraw_share @Owen'],
  ['stop sharing this with Owen', 'withdraw_share Owen'],
  ['unshare it', 'withdraw_share'],
  ['results', 'show_results'],
  ['how did it land?', 'show_results'],
  ['who else has it', 'show_results'],
  ['send the size', 'send_result'],
  ['send the size and rows', 'send_result rows'],
];

/** Words of sharing that ask for something else. */
const NOT: Rows = [
  ['take it back', 'undo', POUCH],
  ['take back that', 'unread nothing "take back that"', POUCH],
  ['show my gauge', 'show_gauge'],
  ['show the steps', 'steps'],
  ['show the steps to Owen', 'unread nothing "Owen"', POUCH],
  ['done, 10 7/8', 'finish 276.22', IN_HAND],
  ['pouch 11 in wide to share', 'plan pouch width=279.4'],
  ['drop it', 'drop'],
];

export const SHARING_THEMES: Themes = [
  ['a plan shown to others', WITH],
  ['what becomes of a share', AFTER],
  ['no sharing', NOT],
];
