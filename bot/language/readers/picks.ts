import type { Meaning } from '../../request.js';
import type { Context } from '../context.js';

/** Names of what a card numbers, from the first on. */
export const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(' ');
const YES = /^(?:yes|yep|right|it is(?: right)?|correct|thats right)$/;
/** A size offered alone is as good as asked about: `60 cm, if that is what you meant`. */
const A_SIZE = /^[\d.]+ (?:cm|in)$/;
const NO = /^(?:no|nope|wrong|not right|(?:no )?(?:it isnt|thats wrong))$/;

/** Around a way that is taken up in its own words: `ok, on the 48`, `make it on the 48 please`, `use the 48`. */
const TAKING = /^(?:(?:ok|okay|yes|then|so|plan|make|knit|do|try|use|take|it|this|that|on) )*| please$/g;

const plainly = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\d ]/gu, '')
    .trim();

const taken = (text: string): string => plainly(text).replace(TAKING, '');

/** `the first`, or the words beside it, pick what was last offered; a plain yes or no counts only while a yes-or-no question is open. */
export function pickOf(text: string, { holes, offered = [] }: Context): Meaning | undefined {
  const spoken = plainly(text);
  const words = spoken.replace(/\d/g, '').trim();
  if (holes[0] === 'confirm' && YES.test(words)) return { kind: 'pick', index: 0 };
  if (holes[0] === 'confirm' && NO.test(words)) return { kind: 'drop' };
  const isSlip = offered.length === 1 && A_SIZE.test(offered[0] ?? '') && holes.length === 0;
  if (isSlip && YES.test(words)) return { kind: 'pick', index: 0 };
  const said = offered.findIndex((way) => way !== '' && taken(way) === taken(text));
  if (said >= 0 && holes.length === 0) return { kind: 'pick', index: said };
  const index = ORDINALS.indexOf(words.replace(/^the /, ''));
  return index >= 0 && holes.length === 0 ? { kind: 'pick', index } : undefined;
}
