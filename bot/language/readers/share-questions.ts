import type { Request } from '../../request.js';

/** A maker by name, or nobody in particular. */
const BY =
  "(?!(?:i|we|you|it|that|this|my|our|the|was|is)\\b)(?:someone|anyone|anybody|somebody|they|(?<by>@?[\\p{L}\\d'-]+))";
const WHAT = '(?:plan|one|piece|share|(?<what>\\p{L}[\\p{L} -]{0,30}?))';
const SHOW = '(?:show|give|open|see|list)(?: me)?';
const WITH_ME = '(?: (?:with |to )?(?:me|us))?';
const THAN = '(?: than .{1,40})?';
const ALL =
  '(?:everything|all(?: of)?(?: (?:my|the|them|our|those))?(?: (?:shares|shared plans|plans|pieces))?|(?:my|the) shares|every share)';
const I_SHARED = " (?:that )?i(?:['’]ve| have)? shared?";
const SIDE = '(?:taller|shorter|higher|lower|wider|narrower|longer|bigger|smaller|larger)';

type Named = { by?: string; piece?: string };
type Form = [RegExp, (named: Named) => Request];

const whole = (words: string): RegExp => new RegExp(`^(?:${words})$`, 'iu');
const theirs = ({ by }: Named): Request => ({ kind: 'show_shares', of: 'theirs', ...(by && { by }) });
const oneOfTheirs = (named: Named): Request => ({ kind: 'show_shares', of: 'theirs', one: true, ...named });
const apart = (of: 'rows' | 'across' | 'both') => (): Request => ({ kind: 'why_apart', of });

const FORMS: readonly Form[] = [
  [
    whole(
      `(?:(?:what|which plans?)(?:['’]?s| is| are| was| were| has been| have been)?|is (?:there )?anything) (?:being )?shared (?:with|to) (?:me|us)`,
    ),
    theirs,
  ],
  [
    whole(
      `(?:${SHOW} )?(?:(?:all )?(?:the |my )?(?:plans|pieces|things|everything) |what(?:['’]?s| is) )?shared with me`,
    ),
    theirs,
  ],
  [whole(`${SHOW} (?:all )?(?:the )?shared plans|shared plans`), theirs],
  [whole(`(?:what|which plans?) (?:did|has|have) ${BY} shared?${WITH_ME}`), theirs],
  [whole(`who(?: has|['’]s)? shared (?:(?:something|anything|a plan|plans|what) )?with (?:me|us)`), theirs],
  [whole(`(?:did|has|have) ${BY} shared? (?:anything|something|a plan)${WITH_ME}`), theirs],
  [whole(`${SHOW} (?:the |that )?shared ${WHAT}(?: again)?(?: (?:from|by|of) ${BY})?`), oneOfTheirs],
  [whole(`${SHOW} (?:the |that )?${WHAT} (?:that )?${BY} (?:has )?(?:shared|sent)${WITH_ME}`), oneOfTheirs],
  [whole(`${SHOW} (?:the |that )?${WHAT} (?:that (?:was|is) )?shared with me`), oneOfTheirs],
  [
    whole(
      `(?:size|fit|work out) (?:the |that )?${WHAT} (?:that )?${BY} (?:has )?(?:shared|sent)${WITH_ME}(?: (?:to|for|in) my (?:own )?gauge)?`,
    ),
    (named) => ({ kind: 'size_share', ...named }),
  ],
  [
    whole(
      `(?:what|which plans?)(?:['’]ve| have| did| do| am)? i(?:['’]ve| have)? (?:been )?(?:share|shared|sharing)(?: so far)?|(?:${SHOW} )?(?:all )?(?:my shares|my shared plans|(?:the )?plans i(?:['’]ve| have)? shared|what i(?:['’]ve| have)? shared)`,
    ),
    () => ({ kind: 'show_shares', of: 'own' }),
  ],
  [
    whole(
      `(?:(?:unshare|withdraw|stop sharing) ${ALL}(?:${I_SHARED})?|take back (?:${ALL}${I_SHARED}|(?:all )?(?:of )?(?:my|the) shares))(?: (?:with|from) ${BY})?`,
    ),
    ({ by }) => ({ kind: 'withdraw_share', every: true, ...(by && { with: by }) }),
  ],
  [
    whole(`how (?:is|are|did) (?:the|my) ${WHAT} (?:doing|coming (?:out|along)|land|come out|turn out)`),
    ({ piece }) => ({ kind: 'show_results', ...(piece && { piece }) }),
  ],
  [
    whole(`why(?: is|['’]s| are|['’]re) (?:mine|my (?:own )?${WHAT}) (?:so )?(?:much )?${SIDE}${THAN}`),
    apart('across'),
  ],
  [
    whole(
      `why (?:do|would|must|should) i (?:need|have|get|knit|make) (?:so many )?(?:more|fewer|less)(?: rows)?${THAN}|why (?:is|are) (?:mine|my rows) (?:so many |so few )?(?:more|fewer|less)(?: rows)?${THAN}`,
    ),
    apart('rows'),
  ],
  [
    whole(
      `why (?:is|are) (?:mine|ours|the two|my rows|our rows) (?:so )?(?:different|not the same)(?: (?:from|to|than) .{1,40})?|(?:why|how) do (?:ours|the two|our rows|our plans) differ`,
    ),
    apart('both'),
  ],
];

/** Each of them holds one of these. */
const CUE = /shar|withdraw|sent|why|how/i;

/** Whole messages about what is shared, by whom, and why it differs. `pieceOf`: the kind that words name. */
export function shareQuestion(plain: string, pieceOf: (words: string) => string | undefined): Request | undefined {
  if (!CUE.test(plain)) return undefined;
  for (const [form, request] of FORMS) {
    const found = form.exec(plain);
    const { by, what } = found?.groups ?? {};
    const piece = what === undefined ? undefined : pieceOf(what);
    const isMeant = found !== null && (what === undefined || piece !== undefined);
    if (isMeant) return request({ ...(by && { by }), ...(piece && { piece }) });
  }
  return undefined;
}
