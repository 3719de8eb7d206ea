import type { Meaning } from '../../request.js';
import type { Context } from '../context.js';

/** Names of what a card numbers, from the first on. */
export const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(' ');
const YES = /^(?:yes|yep|right|it is(?: right)?|correct|thats right)$/;
const NO = /^(?:no|nope|wrong|not right|(?:no )?(?:it isnt|thats wrong))$/;

/** `the first` picks what was last offered; a plain yes or no counts only while a yes-or-no question is open. */
export function pickOf(text: string, { holes }: Context): Meaning | undefined {
  const words = text
    .toLowerCase()
    .replace(/[^\p{L} ]/gu, '')
    .trim();
  if (holes[0] === 'confirm' && YES.test(words)) return { kind: 'pick', index: 0 };
  if (holes[0] === 'confirm' && NO.test(words)) return { kind: 'drop' };
  const index = ORDINALS.indexOf(words.replace(/^the /, ''));
  return index >= 0 && holes.length === 0 ? { kind: 'pick', index } : undefined;
}
