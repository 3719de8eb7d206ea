import type { Request } from '../../request.js';
import type { Context } from '../context.js';

const NUMBER = '(?:\\d+(?:[.,]\\d+)?|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty)';
const AT = new RegExp(`^(?:and )?at ${NUMBER}$`, 'i');
const LEFT = new RegExp(`^(?:(?:i have|ive got|theres|there is|there are) )?${NUMBER} left$`, 'i');
const START = new RegExp(`^(?:start|begin|starting) ${NUMBER}$`, 'i');

/** A number that may be of several things: `at 48` a price or a machine, `start 2` how many or a row, `38 left` grams, metres or rows. */
export function doubtfulNumber(text: string, { holes, onCost }: Context): Request | undefined {
  const words = text.trim().replace(/[.?!]+$/, '');
  const isAt = AT.test(words) && onCost !== true && holes.length === 0;
  const isLeft = LEFT.test(words.replace(/['\u2019]/g, '')) && holes.length === 0;
  return isAt || isLeft || START.test(words) ? { kind: 'unread', why: 'which_number', words } : undefined;
}
