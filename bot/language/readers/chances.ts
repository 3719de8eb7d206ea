import { CHANCE_WORDS } from '../../../core/index.js';
import type { Request } from '../../request.js';

const NAMES = CHANCE_WORDS.map(({ word }) => word.replace('about an ', '(?:about )?(?:an )?')).join('|');
/** Asks what one of the words means: `what's an even chance`, `what does very likely mean`. */
const WORD = new RegExp(
  `^(?:what(?:s| is| does| do you mean by)|explain|meaning of|how (?:sure|likely|often) is)(?: it is)?(?: an?)? (?<word>${NAMES})(?: means?)?(?: here)?$`,
);
const OWN =
  /^(?:(?:what(?:s| is| are| does| do)|explain|show me) (?:the|my|this|that|its) (?:landing )?(?:chances?|odds|percentage)(?: means?)?|what(?:s| is| does) (?:the )?\d{1,2} (?:percent |chance )?mean|how (?:likely|sure) is (?:it|that|this))$/;
/** Asks whether the chance is enough, which what would raise it tells. */
const IS_GOOD =
  /^(?:so )?(?:is|was) (?:that|it|this|the chance)(?: (?:any|a))?(?: (?:good|ok|okay|alright|close|fine|decent|reliable))(?: enough)?(?: (?:chance|reading|one|result))?$/;

/** What a word for a chance means, and whether it is a good one: asked of words without marks. */
export function chanceAsked(bare: string): Request | undefined {
  const named = WORD.exec(bare)?.groups?.word;
  const bareName = named?.replace(/^(?:about )?(?:an )?/, '');
  const word = CHANCE_WORDS.find((one) => one.word.replace('about an ', '') === bareName);
  if (word !== undefined) return { kind: 'explain_chance', word: word.word };
  if (IS_GOOD.test(bare)) return { kind: 'what_helps' };
  return OWN.test(bare) ? { kind: 'explain_chance' } : undefined;
}
