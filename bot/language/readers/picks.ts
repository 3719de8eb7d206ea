import type { Meaning } from '../../request.js';
import type { Context } from '../context.js';

const ORDINALS: Record<string, number> = {
  'the first': 0,
  first: 0,
  'the second': 1,
  second: 1,
  'the third': 2,
  third: 2,
};
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
  const index = ORDINALS[words];
  return index !== undefined && holes.length === 0 ? { kind: 'pick', index } : undefined;
}
