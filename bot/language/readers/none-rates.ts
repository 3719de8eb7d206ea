import type { RateAsk } from '../../request.js';

/** Whose rate card it is. */
export const OWN = "(?:my |our |the |team |teams |team's |the team's )*";

const NONE_NAMES: readonly [RateAsk['of'], string][] = [
  ['overhead', 'overheads?'],
  ['hour', '(?:time|labou?r)'],
  ['packing', '(?:packing|packaging|wrapping)'],
  ['fee', '(?:(?:card|platform|shop|sales?|selling|listing|market) )?fees?'],
  ['stall', '(?:stall|stand|pitch|booth)(?: fee)?'],
];
/** What costs nothing: `no stall`, `forget the packing`, `my time is free`. */
export const NONE_FORMS = NONE_NAMES.map(([of, name]): [RateAsk['of'], RegExp] => {
  const isLed =
    of === 'hour' ? "(?:forget|don['’]?t (?:count|charge))(?: about)?" : '(?:no|forget(?: about)?|drop|without|remove)';
  const led = String.raw`(?<=^\s*|[.;,]\s*|\band )${isLed} ${OWN}${name}(?=\s*(?:$|[.;,!]|and\b))`;
  return [of, new RegExp(String.raw`(?:${led}|\b${OWN}${name} (?:is|are|costs?) (?:free|nothing|none)\b)()`, 'gi')];
});
