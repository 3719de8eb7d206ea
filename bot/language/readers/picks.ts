import type { Meaning } from '../../request.js';
import type { Context } from '../context.js';

/** Names of what a card numbers, from the first on. */
export const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(' ');
const AGREED =
  '(?:yes|yep|yeah|yup|sure(?: thing)?|ok|okay|alright|right|correct|exactly|perfect|great|lovely|fine|good|of course|go ahead|do it|it is(?: right| fine)?|thats (?:right|fine|correct|ok|okay|good))';
/** Praise and courtesies are a yes where one was asked for. */
const YES = new RegExp(
  `^(?:${AGREED} )*${AGREED}(?: please)?$|^(?:yes|yep|yeah|yup|sure)(?: please)?(?: thanks| thank you)$`,
);
/** A size offered alone is as good as asked about: `60 cm, if that is what you meant`. */
const A_SIZE = /^[\d.]+ (?:cm|in)$/;
const NO = /^(?:no|nope|wrong|not right|(?:no )?(?:it isnt|thats wrong))$/;

/** Before the name of a way, and before that of one to be started: `let's go with the second one`. */
const CHOOSING =
  '(?:(?:ok|okay|yes|then|so|lets|ill|id like|i want|go (?:with|for)|do|take|try|use|pick|choose|make) )*';
const ORDINAL = `(?:the )?(?<ordinal>${ORDINALS.join('|')})(?: (?:one|way|option|choice))?(?: (?:then|please|now))*`;
const CHOSEN = new RegExp(`^${CHOOSING}${ORDINAL}$`);
const STARTED = new RegExp(`^${CHOOSING}(?:start|begin)(?: (?:with|on|knitting))? ${ORDINAL}$`);

/** Around a way that is taken up in its own words: `ok, on the 48`, `make it on the 48 please`, `use the 48`. */
const TAKING = /^(?:(?:ok|okay|yes|then|so|plan|make|knit|do|try|use|take|it|this|that|on) )*| please$/g;

const plainly = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\d ]/gu, '')
    .trim();

const taken = (text: string): string => plainly(text).replace(TAKING, '');

/** A plain yes or no, which counts only while a yes-or-no question is open. */
export function yesOrNo(text: string, { holes, offered = [] }: Context): Meaning | undefined {
  const isSlip = offered.length === 1 && A_SIZE.test(offered[0] ?? '') && holes.length === 0;
  const isAsked = holes[0] === 'confirm';
  const words = plainly(text);
  if ((isAsked || isSlip) && YES.test(words)) return { kind: 'pick', index: 0 };
  return isAsked && NO.test(words) ? { kind: 'drop' } : undefined;
}

/** `the first`, or the words beside it, pick what was last offered; `start the first one` starts it too, while that card is the last. */
export function picksOf(text: string, { holes, offered = [] }: Context): Meaning[] {
  if (holes.length > 0) return [];
  const said = offered.findIndex((way) => way !== '' && taken(way) === taken(text));
  if (said >= 0) return [{ kind: 'pick', index: said }];
  const words = plainly(text);
  const started = offered.length === 0 ? null : STARTED.exec(words);
  const { ordinal } = (started ?? CHOSEN.exec(words))?.groups ?? {};
  if (ordinal === undefined) return [];
  const pick: Meaning = { kind: 'pick', index: ORDINALS.indexOf(ordinal) };
  return started === null ? [pick] : [pick, { kind: 'start' }];
}
