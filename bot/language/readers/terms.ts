import { GLOSSARY, HOW_TO } from '../../glossary.js';
import type { Request } from '../../request.js';

const MEANING =
  /^(?:whats|what is|what are|define|explain|meaning of|what do you mean by) (?:an? |by )?(?<term>.+?)(?: mean| then| please)?$|^what does (?:an? |the )?(?<said>.+?) mean(?: here)?$/;
const HOW = /^how (?:do|can|should|would) (?:i|we) (?<part>\p{L}[\p{L} -]{2,40})$/u;
/** Beside these more than the part is asked. */
const OTHER = /\b(?:many|much|long|cost|make|knit|plan|record|charge|price|measure|change|start)\b/;

/** `what is ease`, `what does rough mean`: a term of the glossary; `how do I put the zip in`: a part of the steps. */
export function termAsked(bare: string): Request | undefined {
  const { term: first, said } = MEANING.exec(bare)?.groups ?? {};
  const word = first ?? said;
  const term = word && GLOSSARY.find(({ words }) => words.includes(word));
  if (term) return { kind: 'meaning', term: term.words[0] ?? '' };
  const part = HOW.exec(bare)?.groups?.part;
  const asked = part === undefined || OTHER.test(part) ? undefined : HOW_TO.find(({ words }) => words.test(part));
  return asked && part !== undefined ? { kind: 'how_to', said: part, steps: [...asked.steps] } : undefined;
}
