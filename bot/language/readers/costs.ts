import { quantityAt } from '../../../core/index.js';
import type { CostAsk, Meaning, MoneyAsk, PatternAsk, RateAsk } from '../../request.js';
import type { Context } from '../context.js';
import { currenciesNamed, hundredthsNamed } from '../currencies.js';
import { claim, isFree, type Sheet, wordAt } from '../sheet.js';
import { NONE_FORMS, OWN } from './none-rates.js';
import { isStockVerb } from './stock-words.js';
import { isBall, isNotion, isThing } from './things.js';

/** A whole number or decimal, all of it: `1.20`, `1,20`, `1,200.50`. */
const FIGURE = String.raw`(?:\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d{1,3}(?:\.\d{3})+,\d\d|\d+(?:[.,]\d+)?)(?![.,]?\d)`;
/** Money in a text: `€1.20`, `1,20 euros`, `-5`, `80p`, `12 pounds 50`. */
const MONEY = String.raw`-?(?:[a-z]{0,2}[$€£¥₹]\s?|(?:aud|cad|chf|dkk|eur|gbp|jpy|nok|nzd|sek|usd) )?${FIGURE}(?:\s?(?:(?:euros?|pounds?|quid|dollars?)\b(?: \d\d\b(?! for\b))?|[$€£¥₹]|eur\b|gbp\b|usd\b|pence\b|p\b|cents?\b|yen\b|kr\b|chf\b|francs?\b))?`;
/** Money that no other number follows, which would be part of it: not the `12` of `12 50`. */
const RATE = String.raw`(${MONEY})(?!\s\d)`;
const PERCENT = String.raw`(-?\d+(?:[.,]\d+)?)\s?(?:%|per ?cent)`;
const IS = String.raw`(?:\s(?:is|are|at|costs?|of)|:|\s?=)?\s`;
const AN_HOUR = String.raw`\s?(?:an|per|a|\/)\s?(?:hour|hr|h)\b`;
const NUMBER = String.raw`\d+|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty`;

/** The amount that a text is, in whole units. */
function moneyIn(text: string): MoneyAsk {
  const said = text.trim();
  const named = said.replace(/[\d.,\s-]/g, '').toLowerCase();
  const [whole = '', hundredths = ''] = said.match(/\d[\d.,]*/g) ?? [];
  const figure = (quantityAt(whole, 0)?.lo ?? Number.NaN) + Number(hundredths) / 100;
  const amount = said.startsWith('-') ? -figure : figure;
  const parts = named === '' ? undefined : hundredthsNamed(named);
  if (parts !== undefined) return { amount: amount / 100, currencies: [...parts], said };
  return { amount, currencies: [...(currenciesNamed(named) ?? [])], said };
}

const figureIn = (text: string): number =>
  (text.startsWith('-') ? -1 : 1) * (quantityAt(text.replace('-', ''), 0)?.lo ?? Number.NaN);
const once = (money: MoneyAsk) => ({ ...money, count: 1 });

type Found = { from: number; to: number };

/** Every free place where a form stands. */
function places(sheet: Sheet, form: RegExp): (Found & { parts: (string | undefined)[] })[] {
  return [...sheet.text.matchAll(form)].flatMap((match) => {
    const found = { from: match.index, to: match.index + match[0].length };
    const inside = tokensOf(sheet, found);
    return inside.length > 0 && inside.every((i) => isFree(sheet, i)) ? [{ ...found, parts: [...match] }] : [];
  });
}

/** Indexes of the tokens that lie in a stretch of the text. */
const tokensOf = (sheet: Sheet, { from, to }: Found): number[] =>
  sheet.tokens.flatMap(({ start, end }, i) => (end > from && start < to ? [i] : []));

/** Lines of a rate card by what begins them; the first group is money, the next a share. */
const RATE_FORMS: readonly [RateAsk['of'], RegExp][] = [
  ['overhead', new RegExp(String.raw`\b${OWN}overheads?${IS}${RATE}${AN_HOUR}`, 'gi')],
  ['overhead', new RegExp(String.raw`\b${OWN}overheads?${IS}()${PERCENT}`, 'gi')],
  [
    'hour',
    new RegExp(
      String.raw`\b(?:${OWN}(?:time|hours?|hourly rate|rate|labou?r|wage)${IS}|i (?:charge|pay myself) )${RATE}(?:${AN_HOUR})?`,
      'gi',
    ),
  ],
  ['hour', new RegExp(String.raw`\bi (?:want|ask|take) ${RATE}${AN_HOUR}`, 'gi')],
  [
    'packing',
    new RegExp(
      String.raw`\b${OWN}(?:packing|packaging|wrapping)${IS}${RATE}(?:\s(?:each|a piece|apiece|per piece))?`,
      'gi',
    ),
  ],
  [
    'fee',
    new RegExp(
      String.raw`\b${OWN}(?:(?:card|platform|shop|sales?|selling|listing|market) )?fees?${IS}${PERCENT}(?:\s(?:and|plus)\s(${MONEY})(?:\s(?:a|per|each) sale)?)?`,
      'gi',
    ),
  ],
  ['stall', new RegExp(String.raw`\b${OWN}(?:stall|stand|pitch|booth)(?: fee)?${IS}${RATE}`, 'gi')],
  ...NONE_FORMS,
];

/** Sewn on as they are: two digits behind the point tell a price, not a size. */
const UNSIZED = '(?:zips|zippers|buttons|snaps|poppers|labels|tags|hooks|buckles|toggles)';
const NOTION = new RegExp(
  String.raw`(?:^|[.;,\n]\s*|\band )(?:an? )?((?:\d+ in )?[a-z]+)(?: are| is| cost| costs|:|(?: at)?(?= \S+ (?:each|a piece|apiece|ea)\b)|(?<=\b${UNSIZED})(?= \d+[.,]\d\d\s*(?:$|[.;,\n]))) (${MONEY})(?: each| a piece| apiece| ea)?((?:,? (?:and |or )?(?:${NUMBER}) for ${MONEY})*)`,
  'gi',
);
const PACK = new RegExp(`(${NUMBER}) for (${MONEY})`, 'gi');

/** No text without one of these speaks of money. */
const OF_MONEY =
  /\b(?:zips|zippers|buttons|snaps|poppers|labels|tags|hooks|buckles|toggles) \d|[$€£¥₹%:]|\b(?:per|is|are|at|apiece|ea|each|a piece|overheads?|time|hours?|hourly|rates?|labou?r|wage|charge|want|ask|take|fees?|packing|packaging|wrapping|stall|stand|pitch|booth|costs?|pric\w+|sell\w*|earn|make|get|break|wholesale|retail|shops?|pay|pattern|margin|mark-?up|how (?:many|much))\b/i;

/** What is told of a rate card: `my time is 18 an hour`, `zips are 1.20 each, ten for 9`, `card fee 1.7%`. */
export function readRates(sheet: Sheet): Meaning[] {
  if (!OF_MONEY.test(sheet.text)) return [];
  const found = [
    ...RATE_FORMS.flatMap(([of, form]) => places(sheet, form).map((place) => ({ of, place }))),
    ...notions(sheet),
  ];
  const rates = found.flatMap(({ of, place }): RateAsk[] => {
    if (isInQuestion(sheet, place) || tokensOf(sheet, place).some((i) => !isFree(sheet, i))) return [];
    claim(sheet, 'rate card', ...tokensOf(sheet, place));
    return [rateOf(of, place.parts)];
  });
  if (rates.length === 0) return [];
  const team = /\bteam'?s?\b/i.test(sheet.text);
  return [{ kind: 'set_rates', rates, ...(team && { team }) }];
}

/** True behind words that ask: the stall of `how many pay for the stall at 35` is not told to cost 35. */
function isInQuestion({ text }: Sheet, { from }: Found): boolean {
  const clause = Math.max(...['.', ';', ',', '?', '!', '\n'].map((mark) => text.lastIndexOf(mark, from - 1)));
  return /\b(?:how|what|which|if|will|would)\b/i.test(text.slice(clause + 1, from));
}

function rateOf(of: RateAsk['of'], parts: readonly (string | undefined)[]): RateAsk {
  const [all = '', first = '', second, third] = parts;
  if (of === 'notion') {
    const packs = [...(third ?? '').matchAll(PACK)].map(([, count = '', money = '']) => ({
      ...moneyIn(money),
      count: figureIn(count),
    }));
    return { of, name: first.toLowerCase(), prices: [once(moneyIn(second ?? '')), ...packs] };
  }
  if (first === '' && second === undefined)
    return of === 'fee'
      ? { of, percent: 0, prices: [] }
      : { of, prices: [{ amount: 0, currencies: [], said: all, count: 1 }] };
  if (of === 'fee')
    return { of, percent: figureIn(first), prices: second === undefined ? [] : [once(moneyIn(second))] };
  if (second !== undefined) return { of, percent: figureIn(second), prices: [] };
  return { of, prices: [once(moneyIn(first))] };
}

/** `zips are 1.20 each`: a notion alone at the start of a clause, not one that is on hand or wanted. */
const notions = (sheet: Sheet) =>
  places(sheet, NOTION)
    .filter(({ parts }) => isNotion(parts[1]?.split(' ').at(-1)?.toLowerCase()))
    .map((place) => ({ of: 'notion' as const, place: { ...place, from: place.from + lead(place.parts) } }));

/** Characters before the name of the notion. */
const lead = ([all = '', name = '']: readonly (string | undefined)[]): number => all.indexOf(name);

/** What is wanted `for 12` is not sold for 12. */
const AT_PRICE =
  '(?<!\\b(?:long|time|hours|balls?|skeins?|yarn|enough) )(?:sell(?:ing)? (?:it |them |one )?(?:at|for)|priced?(?: (?:of|at))?|at|for)';
const SHOW =
  /^(?:show |what(?:'s| is| are) )?(?:me )?(?:my |our |the )?(?:rates|rate card|prices on my card)(?: please)?$/i;
const THIS = '(?:it|this|that|one|they|these|those|(?:a|the) piece)';
const COUNT = String.raw`(\d+|ten|twelve|twenty)`;
const ENDS = String.raw`(?=\s*(?:$|[.,?;!]|and\b|at\b))`;
/** A question of what a piece costs or may sell for. */
const QUESTION = [
  `(?:what|how much) (?:does|do|did|would|will) (?:making )?(?:${THIS}|${COUNT}(?: of (?:it|them|these))?) cost(?: me)?(?: to make)?`,
  `what['’]?s ${THIS} (?:going to )?cost(?: me)?(?: to make)?`,
  `how much (?:is|are|will|would) ${THIS}(?: (?:be|come to))?(?: to make)?${ENDS}`,
  `(?:what(?: price)?|how much) (?:should|do|can|could|would) i (?:charge|ask|sell)(?: ${THIS})?(?: for)?(?: ${THIS})?${ENDS}`,
  `what(?:['’]?s| is) the (?:cost|price)`,
].join('|');
/** Its groups are how many of them. */
const COST = new RegExp(
  String.raw`\b(?:${QUESTION}|(?:and )?(?:the |unit |my )?costs?(?: of (?:making )?${THIS}(?![a-z]))?|(?<=^\s*)price${ENDS})(?: (?:of|for) ${COUNT}(?= ?(?:$|[.,?;]|of (?:them|these)|at\b|on\b|and (?!\d)|please)))?(?: of (?:them|these))?`,
  'gi',
);

const STALL = '(?:stall|stand|pitch|booth)';
/** `break even`, `how many must I sell to pay for the stall`. */
const EVEN = new RegExp(
  String.raw`\bbreak[ -]?even\b|\bhow many (?:of (?:them|these) )?(?:do|must|should|would) i (?:need to |have to )?sell(?: to (?:break[ -]?even|(?:pay(?: for| off)?|cover) (?:the |my )?${STALL}))?`,
  'gi',
);
const EARNED = '(?:what|how much) (?:do|would|will) i (?:earn|make|get)';
const EARNS = new RegExp(`^${EARNED}\\b`, 'i');
/** Behind a cost, of how many it is asked next: `and 12 of them`, `and 12 at 40`. */
const COPIES_NEXT = new RegExp(`^(?:and |what about )(?:for |of )?${COUNT}(?: of (?:them|these))?(?= at |\\??$)`, 'gi');

/** What a piece costs and sells for: `what does it cost?`, `cost at 48`, `price at 40% margin`, `break even at 48`. */
export function readCosts(sheet: Sheet, context: Context): Meaning[] {
  const { onCost = false } = context;
  if (!onCost && !OF_MONEY.test(sheet.text)) return [];
  const text = sheet.text.trim().replace(/[?.!]+$/, '');
  if (SHOW.test(text)) return claimed(sheet, { kind: 'show_rates' });
  const shop = shopIn(sheet) ?? patternIn(sheet);
  if (shop !== undefined) return [shop];
  const cost: CostAsk = {};
  const share = first(
    sheet,
    new RegExp(
      String.raw`\b(?:price |ask )?(?:at |for |with )?(?:an? )?(?:${PERCENT} (margin|mark-?up)|(margin|mark ?-?up) (?:of |at )?(?:${PERCENT}|(\d{1,3})(?=\s*(?:$|[?.!,;]))))(?: (?:of|for) ${COUNT}(?= ?(?:$|[?.!,;]|of (?:them|these)|please))(?: of (?:them|these))?)?`,
      'gi',
    ),
  );
  if (share !== undefined) {
    const [, before, way1, way2, after, bare, copies] = share.parts;
    const way = (way1 ?? way2 ?? '').toLowerCase() === 'margin' ? 'margin' : 'markup';
    cost[way] = figureIn(before ?? after ?? bare ?? '');
    if (copies !== undefined) cost.copies = figureIn(copies);
    claim(sheet, 'price', ...tokensOf(sheet, share));
  }
  const even = first(sheet, EVEN);
  if (even !== undefined) {
    cost.breakEven = true;
    claim(sheet, 'cost', ...tokensOf(sheet, even));
  }
  const asked = isCostAsked(text) ? first(sheet, COST) : onCost ? first(sheet, COPIES_NEXT) : undefined;
  if (asked !== undefined) {
    const copies = asked.parts[1] ?? asked.parts[2];
    if (copies !== undefined) cost.copies = figureIn(copies);
    claim(sheet, 'cost', ...tokensOf(sheet, asked));
  }
  const isAsked = share !== undefined || even !== undefined || asked !== undefined;
  const form = isAsked
    ? new RegExp(String.raw`\b${AT_PRICE} (${MONEY})(?: each| a piece)?(?= ?(?:$|[?.!,;]|please))`, 'gi')
    : new RegExp(
        String.raw`^(?:and )?(?:${EARNED} )?(?:(?:(?:what )?if i |(?:can|could|should) i |i )?(?:sell|charge|ask|price)(?:ing)? (?:(?:it|them|one|these|those|this) )?(?:at |for )?|at (?=${onCost || EARNS.test(text) ? '' : '[a-z]{0,2}[$€£¥₹]'}))(${MONEY})(?: each)?(?:,? ${EARNED})?\??$`,
        'gi',
      );
  const price =
    share === undefined
      ? (first(sheet, form) ?? (isOfPieces(sheet, context) ? first(sheet, EACH) : undefined))
      : undefined;
  if (price !== undefined) {
    cost.price = moneyIn(price.parts[1] ?? '');
    claim(sheet, 'price', ...tokensOf(sheet, price));
  }
  return isAsked || price !== undefined ? [{ kind: 'cost', cost }] : [];
}

/** A question, or words that begin with the cost: `it costs 6.50 a ball` tells a price. */
const isCostAsked = (text: string): boolean =>
  /^(?:and |so |ok |please )*(?:what|how much|price$|(?:the |unit |my )?costs?\b(?! (?:me )?\d))/i.test(text) ||
  /(?:[,;.&+]\s*|\b(?:and|give me) )(?:the |unit |my )?costs?(?=\s*(?:$|[,;&+]|(?:and|at|of) ))/i.test(text) ||
  new RegExp(String.raw`\b(?:${QUESTION})`, 'i').test(text);

/** `two of them at 48 each`. */
const EACH = new RegExp(String.raw`\bat (${MONEY}) (?:each|apiece|a piece)\s*[?.!]*$`, 'gi');

/** True where a price for each is that of the plan in hand: of nothing bought or on hand. */
const isOfPieces = (sheet: Sheet, { subjectPiece }: Context): boolean =>
  subjectPiece !== undefined &&
  !sheet.tokens.some((_, i) => [isBall, isThing, isStockVerb].some((is) => is(wordAt(sheet, i) ?? '')));

function first(sheet: Sheet, form: RegExp) {
  return places(sheet, form)[0];
}

function claimed(sheet: Sheet, meaning: Meaning): Meaning[] {
  claim(sheet, 'rate card', ...sheet.tokens.keys());
  return [meaning];
}

/** `wholesale of 48`, `retail for 24 at 40%`. */
function shopIn(sheet: Sheet): Meaning | undefined {
  const found = first(
    sheet,
    new RegExp(
      String.raw`\b(wholesale|retail|what (?:does|do|would|will) (?:a |the )?shops? pay(?: me)?)(?: price)?(?:(?: (?:of|from|for|at|if it sells at))? (${MONEY})(?:,? (?:at |with |keeping )?${PERCENT}(?: margin)?)?)?`,
      'gi',
    ),
  );
  if (found === undefined) return undefined;
  const [, way = '', money, percent] = found.parts;
  claim(sheet, 'price', ...tokensOf(sheet, found));
  return {
    kind: 'shop_price',
    shop: {
      way: way.toLowerCase() === 'retail' ? 'retail' : 'wholesale',
      ...(money !== undefined && { price: moneyIn(money) }),
      ...(percent !== undefined && { percent: figureIn(percent) }),
    },
  };
}

/** `pattern at 6.00, 20 hours`, `price for the pattern, 12 hours, 40 copies`. */
function patternIn(sheet: Sheet): Meaning | undefined {
  const text = sheet.text;
  if (!/\bpattern\b/i.test(text)) return undefined;
  const hours = /(\d+(?:[.,]\d+)?)\s?(?:hours?|hrs?|h)\b/i.exec(text)?.[1];
  const copies = /(?:sell |for )?(\d+)(?: copies| sales| of them)\b|\bsell (\d+)\b/i.exec(text);
  const price = new RegExp(String.raw`\b(?:at|for|price)\s(${MONEY})(?!\s?(?:hours?|hrs?|h|copies|sales)\b)`, 'i').exec(
    text,
  )?.[1];
  const isAsked = hours !== undefined || copies !== null || /\b(?:price|sell|cost|earn|pay)\b/i.test(text);
  if (!isAsked) return undefined;
  claim(sheet, 'pattern', ...sheet.tokens.keys());
  const pattern: PatternAsk = {
    ...(hours !== undefined && { hours: figureIn(hours) }),
    ...(price !== undefined && { price: moneyIn(price) }),
    ...(copies !== null && { copies: Number(copies[1] ?? copies[2]) }),
  };
  return { kind: 'pattern_price', pattern };
}
