import type { Request } from '../../request.js';

const LOOSER =
  /^(?:(?:what )?(?:if|and if) (?:i|we) )?(?:(?:knit|make|knitted|work) (?:it |this |that )?)?(?:(?:a (?:bit|little|touch) |much |slightly |some(?:what)? )?|(?:(?:by )?(\d{1,3})(?: ?(?:percent|per cent))? ))(looser|tighter|stiffer|denser)(?: (?:tension|knitting|fabric))?(?: by (\d{1,3})(?: (?:percent|per cent))?)?(?: please)?$/;

/** `looser`, `what if I knit it 5% tighter`: how the plan in hand would come out; the text without its marks. */
export function looserAsked(bare: string): Request | undefined {
  const [, before, word, after] = LOOSER.exec(bare) ?? [];
  const by = before ?? after;
  if (word === undefined) return undefined;
  return { kind: 'looser', way: word === 'looser' ? 'looser' : 'tighter', ...(by && { percent: Number(by) }) };
}
