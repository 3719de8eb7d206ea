import type { Request } from '../../request.js';

const FORMS: [RegExp, Request][] = [
  [
    /^(?:help|\?|(?:hi|hello|hey|hiya)(?: (?:there|again))?|good (?:morning|evening)|what can (?:you do|i say|i ask)|what do i (?:do|say)|commands|how does this work|hi how does this work)$/,
    { kind: 'help' },
  ],
  [/^(?:start|begin)(?: knitting)?(?: now| please)?$/, { kind: 'start' }],
  [/^(?:never ?mind|forget it|forget that|cancel|stop|drop it|drop that|nothing|no thanks?)$/, { kind: 'drop' }],
  [/^(?:undo|undo (?:that|it|this)|take (?:that|it) back)$/, { kind: 'undo', redo: false }],
  [/^(?:redo|put (?:that|it) back)$/, { kind: 'undo', redo: true }],
  [/^(?:thanks|thank you|thx|cheers|ta)(?: (?:a lot|so much|very much))?$/, { kind: 'thanks' }],
  [
    /^(?:(?:use|in|switch to|i use|i work in|set units to|units) )?(?:inch|inches|imperial)(?: please)?$/,
    { kind: 'set_units', units: 'in' },
  ],
  [
    /^(?:(?:use|in|switch to|i use|i work in|set units to|units) )?(?:cm|cms|centimetres?|centimeters?|metric)(?: please)?$/,
    { kind: 'set_units', units: 'cm' },
  ],
  [
    /^(?:show )?(?:me )?(?:the )?(?:long |all )?steps(?: please)?$|^how do i (?:make|knit) (?:it|this)$/,
    { kind: 'steps' },
  ],
  [
    /^(?:show |list |look up |what |whats |what is |what are |see )?(?:me )?(?:my |the |our )?(?:gauges?|tension|gauge profiles?)(?: (?:list|please|so far|do i have))?(?: (?:on|for|in|with) (?:the |my )?(?:[\p{L} ]*(?: yarn)?|\d+(?: needles?| machine)?))?$/u,
    { kind: 'show_gauge', on: {} },
  ],
];

/** Messages that mean one thing as a whole: `help`, `never mind`, `my gauge`, `use inches`. */
export function shortRequest(text: string): Request | undefined {
  const bare = text
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{N}?]+/gu, ' ')
    .trim()
    .replace(/(?<=\S)\s*\?+$/, '')
    .replace(/^(?:(?:oops|sorry|oh|ok|okay|please|actually|wait|hey|well|and|then|so|um) )+/, '');
  return FORMS.find(([form]) => form.test(bare))?.[1];
}
