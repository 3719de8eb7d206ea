import type { Request } from '../../request.js';
import { logAsked } from './bench-logs.js';
import { chanceAsked } from './chances.js';
import { formAsked } from './forms.js';
import { looserAsked } from './looser.js';
import { startOverAsked } from './start-overs.js';
import { termAsked } from './terms.js';
import { whyAsked } from './whys.js';

const BENCH = '(?: (?:on|for|in|with|behind) (?:the |my )?(?:[\\p{L} ]*(?: yarn)?|\\d+(?: needles?| machine)?))?';
const WORK = '(?:it|this|that|the work|this one|that one|the piece)';

const PRAISE =
  '(?:(?:thats?|this|it|you)(?: (?:is|are|s|re|looks|was))? )?(?:(?:so|very|really|just|absolutely|all) )*(?:lovely|great|perfect|brilliant|fantastic|awesome|amazing|nice(?: one)?|cool|excellent|super|wonderful|grand|ace|fab|helpful|got it|good to know|ok|okay|alright)';
const THANK =
  '(?:(?:many )?thanks|thank you|thankyou|thx|cheers|ta)(?: (?:a lot|a million|a bunch|so much|very much|again|you|everyone))*(?: for (?:that|this|it))?(?: (?:for )?(?:all )?(?:your|the) help)?';
const ALL = 'thats (?:all|it|everything)(?: for (?:now|today|tonight))?';
const BYE = '(?:bye(?: bye| for now)?|goodbye|good ?night|see you(?: later| soon| tomorrow)?)';
/** `thanks that's lovely`, `great thanks`, `perfect`, `that's all for now`. */
const THANKS = new RegExp(
  `^(?:(?:${PRAISE}|${ALL}) )?(?:${THANK})(?: ${PRAISE})?(?: ${BYE})?$|^${PRAISE}(?: ${PRAISE})?$|^(?:${ALL}|${BYE})$`,
);

const FORMS: [RegExp, Request][] = [
  [
    /^(?:help|\?|(?:hi|hello|hey|hiya)(?: (?:there|again))?|good (?:morning|evening)|what can (?:you do|i say|i ask)|what do i (?:do|say)|commands|how does this work|hi how does this work)$/,
    { kind: 'help' },
  ],
  [
    /^(?:(?:hi|hello|hey|hiya)(?: there)? )?(?:(?:im |i am )?(?:new(?: here| to (?:this|it))?|a beginner) )?(?:(?:how|where) (?:do|can|should|would) (?:i|we) (?:start|begin|get (?:started|going))(?: (?:here|with (?:this|you)))?|what (?:do|can|should|shall) i (?:type|write|enter|say|do|ask|tell you)(?: (?:first|here|now|next|to start))*|(?:im |i am )new(?: here| to (?:this|it))?|new here|getting started|what (?:now|next)|now what|whats next|what are you|what is this|who are you|what can you help(?: me)? with)$/,
    { kind: 'help' },
  ],
  [
    /^(?:(?:lets |ill |im |ive )?(?:start|begin|starting|started|beginning)(?: (?:knitting|it|this|that))?|cast(?:ing)? on)(?: (?:now|please|again))?$/,
    { kind: 'start' },
  ],
  [
    new RegExp(
      `^(?:(?:where (?:am|was) i|(?:what|which) row(?: (?:am|was) i (?:on|at)| now)?|how far(?: (?:am i|along|now|along am i))?|how many (?:more )?(?:rows )?(?:are )?(?:left|to go|more rows)(?: do i have)?|rows left|row count|(?:what(?:s| is) )?(?:the |my )?(?:stop row|last row)|(?:where|when|(?:at )?(?:what|which) row) (?:do|should|must) i stop(?: at)?|tally|show (?:me )?the tally)(?: now)?)${BENCH}$`,
      'u',
    ),
    { kind: 'where', on: {} },
  ],
  [
    new RegExp(
      `^(?:i )?(?:(?:give|gave|giving|have given)(?: ${WORK})? up(?: on ${WORK})?|(?:scrap|scrapped|scrapping|bin|binned|abandon|abandoned|unravel|unravelled|unraveled|frogged|frog) ${WORK}|ive (?:given up|unravelled|scrapped|frogged)(?: on)?(?: ${WORK})?)${BENCH}$`,
      'u',
    ),
    { kind: 'give_up', on: {} },
  ],
  [
    /^(?:what (?:would|could|can|will) help(?: me| it)?|what helps|how (?:do|can|could) (?:i|it|we) (?:get|make|be)(?: it| this| that)? (?:better|surer|more sure|more certain)|how to (?:be|get|make)(?: it)? (?:better|surer|more sure)|what would make it (?:better|surer)|what (?:should|can|could) i do to be (?:more )?(?:sure|surer|certain)(?: of (?:it|the size))?|what (?:do|would) you suggest(?: i (?:do|could do))?(?: to be (?:more )?(?:sure|surer|certain)(?: of (?:it|the size))?)?|how (?:do|can) i raise (?:it|the chance))$/,
    { kind: 'what_helps' },
  ],
  [
    new RegExp(
      `^(?:(?:show |list )?(?:me )?(?:my |the |all (?:my )?)?(?:measurements|readings|swatches|measured pieces|pieces(?= behind))|what (?:did|have) i measured?(?: so far)?)${BENCH}$`,
      'u',
    ),
    { kind: 'show_pieces', on: {} },
  ],
  [
    /^(?:(?:i want to|let me|how do i|can i) )?(?:record|add|enter|tell you)(?: (?:a|my|another|the|new))* gauge$/,
    { kind: 'tell_gauge' },
  ],
  [
    /^(?:how (?:do|can|should) (?:i|you) (?:(?:measure|swatch)(?: (?:it|that|this|one|(?:(?:a|my|the) )?(?:gauge|swatch)))?|(?:find|get|make|take|knit) (?:a|my|the) (?:gauge|swatch))|(?:i )?(?:do not|dont|have not|havent) (?:have|got|know|measured)(?: (?:a|any|my))?(?: (?:gauge|swatch|measurements|anything))?(?: yet)?|(?:i have |ive got |ive )?(?:no (?:gauge|swatch|measurements)(?: yet)?|none yet)|what(?:s| is) a (?:gauge|swatch))$/,
    { kind: 'tell_gauge', none: true },
  ],
  [
    /^(?:(?:i want to|let me|how do i|can i) )?(?:plan|size)(?: (?:a|another|the|new))* piece$/,
    { kind: 'plan', ask: { copies: 1, values: {}, on: {}, focus: [] } },
  ],
  [
    /^(?:never ?mind|nvm|forget (?:it|that|about it)|cancel(?: (?:it|that))?|stop|drop (?:it|that)|leave it|keep (?:it|that)(?: as it is)?|nothing|no thanks?)(?: (?:then|about (?:it|that)|for now))?$/,
    { kind: 'drop' },
  ],
  [/^how long$/, { kind: 'show_time' }],
  [
    /^(?:(?:(?:can|could|would|will) you |would you mind )?(?:undo|undoing|reverse|take back|taking back)(?: (?:that|it|this|(?:that |the |my )?last (?:change|one|thing|bit)))?|take (?:that|it|this) back)(?: please)?$/,
    { kind: 'undo', redo: false },
  ],
  [/^(?:redo|put (?:that|it) back)$/, { kind: 'undo', redo: true }],
  [THANKS, { kind: 'thanks' }],
  [
    /^(?:(?:use|in|switch to|i use|i work in|set units to|units) )?(?:inch|inches|imperial)(?: please)?$|^(?:use|switch to|i use|i work in|set units to) in$/,
    { kind: 'set_units', units: 'in' },
  ],
  [
    /^(?:(?:use|in|switch to|i use|i work in|set units to|units) )?(?:cm|cms|centimetres?|centimeters?|metric)(?: please)?$/,
    { kind: 'set_units', units: 'cm' },
  ],
  [
    /^(?:(?:show |list )?(?:me )?(?:my |the )?(?:shelf|stash|stock)|my yarns?|how much (?:of )?(?:the |my )?[\p{L} ]+ (?:do i have|have i got)(?: left)?|what(?:s| is)? (?:(?:is )?(?:on|in) (?:my |the )?(?:shelf|stash)|(?:yarns?|notions) (?:do|have) i(?: have| got)?(?: left)?|(?:do|have) i (?:have|got)(?: left)?(?: on (?:my|the) shelf)?))$/u,
    { kind: 'show_shelf' },
  ],
  [
    /^(?:(?:show |list )?(?:me )?(?:the |our )?teams? (?:shelf|stash)|our (?:shelf|stash)|what(?:s| is)? on (?:the teams?|our) (?:shelf|stash)|what (?:yarn )?does the team have)$/,
    { kind: 'show_shelf', team: true },
  ],
  [
    /^(?:show |give )?(?:me )?(?:the )?(?:all |long |full )?(?:the )?steps(?: in full| at length)?(?: please)?$|^how do i (?:make|knit) (?:it|this)$/,
    { kind: 'steps', form: 'long' },
  ],
  [
    /^(?:show |give )?(?:me )?(?:the |a )?(?:(?:short|brief) (?:steps|checklist)|steps in (?:short|brief)|check ?list)(?: please)?$/,
    { kind: 'steps', form: 'short' },
  ],
  [
    /^(?:show |list |look up |what |whats |what is |what are |see )?(?:me )?(?:my |the |our )?(?:gauges?|tension|gauge profiles?|machines?)(?: (?:list|please|so far|do i have))?(?: (?:on|for|in|with) (?:the |my )?(?:[\p{L} ]*(?: yarn)?|\d+(?: needles?| machine)?))?$/u,
    { kind: 'show_gauge', on: {} },
  ],
];

const OTHERS = [formAsked, startOverAsked, whyAsked, looserAsked, chanceAsked, logAsked, termAsked];

/** Messages that mean one thing as a whole: `help`, `never mind`, `my gauge`, `use inches`. */
export function shortRequest(text: string): Request | undefined {
  const bare = text
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{N}?]+/gu, ' ')
    .trim()
    .replace(/(?<=\S)\s*\?+$/, '')
    .replace(/^(?:(?:oops|sorry|oh|ok|okay|please|actually|wait|hey|well|and|but|then|so|um) )+/, '')
    .replace(
      /^(?:(?:(?:could|can|would|will) you |please )+tell me|id like to know|i would like to know|tell me) (?=why|how|what|where|when)/,
      '',
    );
  return (
    FORMS.find(([form]) => form.test(bare))?.[1] ??
    OTHERS.map((asked) => asked(bare)).find((request) => request !== undefined)
  );
}
