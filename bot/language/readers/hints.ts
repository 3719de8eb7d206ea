import type { Meaning } from '../../request.js';
import type { Context } from '../context.js';
import { COLOURS } from '../vocabulary.js';

const ASKED =
  '(?:(?:and|but|ok|can|could|i|you|we|id|like|want|have|make|do|knit|it|this|them|these|all|what about|how about|rather) )*';
const ANY = [...COLOURS].join('|');
const COLOUR = `(?:(?:light|bright|deep|hot) )?(?:${ANY})(?: (?:${ANY}))?`;
const IN_A_COLOUR = new RegExp(
  `^${ASKED}(?:in )?(?<colour>${COLOUR})(?<more>(?:(?: and)? ${COLOUR})*)(?: (?:yarn|wool|instead|one|ones))*$`,
);
const THEM = '(?:these|them|those|it|the batch|the order)';
const HALF = '(?:half|some|part|the other half)';
const MAKE = '(?:make|knit|do|take|help (?:me )?with)';
const DEALT = [
  `(?:can|could|would|will|may) (?<a>.+?) ${MAKE} ${HALF}(?: of)?(?: ${THEM})?`,
  `(?<b>.+?) (?:(?:can|could|will|would) ${MAKE}|makes|knits|does|takes) ${HALF}(?: of)?(?: ${THEM})?`,
  `(?:(?:split|divide|deal)(?: up| out)? ${THEM}|(?:(?:split|make|knit|do) )?${HALF} of ${THEM})(?: up| out)? with (?<c>.+)`,
].map((form) => new RegExp(`^(?:and |but |ok |please )*${form}$`));
const NAME = /^@?[\p{L}\d]+(?: \p{L}+)?$/u;
const NO_NAME = /^(?:i|you|we|they|it|that|this|me|us|each|the|a|an|my|your|rows?|red|no)\b/;

/** What a whole message wants that is said in another way: a colour alone, `can Sam make half of these`. */
export function hinted(text: string, context: Context): Meaning | undefined {
  const bare = text
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^@\p{L}\p{N}]+/gu, ' ')
    .trim()
    .replace(/ please$/, '');
  return ofColour(bare, context) ?? dealt(bare, text, context);
}

/** A colour is no yarn, but where the name of one has it; several are stripes, not said which. */
function ofColour(bare: string, { subjectPiece, yarns, onShelf = [] }: Context): Meaning | undefined {
  const { colour, more } = (subjectPiece === undefined ? null : IN_A_COLOUR.exec(bare))?.groups ?? {};
  if (colour === undefined) return undefined;
  const known = [...yarns, ...onShelf].flatMap((name) => name.split(/[\s-]+/));
  if (bare.split(' ').some((word) => COLOURS.has(word) && known.includes(word))) return undefined;
  return { kind: 'unread', why: more === '' ? 'colour_alone' : 'which_stripes', words: colour };
}

/** Several of the plan in hand made with a maker who is known; else it is told how one says so. */
function dealt(bare: string, text: string, { subjectPiece, copies = 1, team = [] }: Context): Meaning | undefined {
  const groups = DEALT.map((form) => form.exec(bare)?.groups).find((found) => found !== undefined);
  const name = groups?.a ?? groups?.b ?? groups?.c;
  if (name === undefined || !NAME.test(name) || NO_NAME.test(name)) return undefined;
  const isKnown = team.includes(name.replace('@', ''));
  if (subjectPiece !== undefined && copies > 1 && isKnown)
    return { kind: 'change', edit: { values: {}, on: {}, focus: [], team: { names: ['me', name] } } };
  const at = text.toLowerCase().indexOf(name);
  return { kind: 'unread', why: 'whom_with', words: at < 0 ? name : text.slice(at, at + name.length) };
}
