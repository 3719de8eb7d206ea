import { gPer, MM_PER, mmPer, yarnWeightNamed } from '../../../core/index.js';
import type { GaugeAsk } from '../../request.js';
import { bareAt } from '../clauses.js';
import {
  claim,
  freeQuantities,
  indexesBetween,
  isFree,
  markAt,
  quantityAtIndex,
  type Sheet,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { COLOURS, FIBRES } from '../vocabulary.js';
import { countAt, wrapsAt } from './yarn-counts.js';

/** What is known of the yarn: `category 4`, `medium weight`, `500 tex`, `200 m per 100 g`. */
export function readYarnWeight(sheet: Sheet): GaugeAsk['weight'] {
  const spun = texAt(sheet) ?? countAt(sheet) ?? putUp(sheet);
  const wraps = wrapsAt(sheet);
  const category = wraps ?? categoryAt(sheet);
  if (spun === undefined && category === undefined) return undefined;
  const words = [spun, category].flatMap((one) => (one === undefined ? [] : [one]));
  for (const { from, to } of words) claim(sheet, 'yarn weight', ...indexesBetween(from, to));
  const first = words.reduce((a, b) => (a.from < b.from ? a : b));
  return {
    ...(category && { category: category.number }),
    ...(spun && { tex: spun.tex }),
    said: `${bracketed(sheet, saidBetween(sheet, first.from, first.to))}${wraps === undefined ? '' : `, about category ${wraps.number} by a rule of thumb`}`,
  };
}

/** Words with the bracket that closes behind them: `medium weight (4)`. */
const bracketed = (sheet: Sheet, words: string): string =>
  words.includes('(') && sheet.text.includes(`${words})`) ? `${words})` : words;

type Words = { from: number; to: number };

function texAt(sheet: Sheet): (Words & { tex: number }) | undefined {
  for (const i of sheet.tokens.keys()) {
    if (wordAt(sheet, i) !== 'tex') continue;
    const at = [i - 1, i + 1].find((k) => bareAt(sheet, k) !== undefined);
    const tex = at === undefined ? undefined : bareAt(sheet, at);
    if (at !== undefined && tex !== undefined) return { from: Math.min(at, i), to: Math.max(at, i), tex };
  }
  return undefined;
}

const PER = ['per', 'a', 'an', 'to', 'the', 'each', 'for', 'in', 'is', 'has'];
/** A mass with no number of its own is one of it: `60 yards per ounce`. */
const ONE_G: Record<string, number> = { ounce: gPer('oz') ?? 0, gram: 1, gramme: 1, kilo: 1000 };

/** Length for a mass as yarn is sold: `200 m per 100 g`, `50 g = 105 m`. Tex is grams to 1,000 m. */
function putUp(sheet: Sheet): (Words & { tex: number }) | undefined {
  for (const from of freeQuantities(sheet)) {
    let to = from + 1;
    while (PER.includes(wordAt(sheet, to) ?? '') || ['slash', 'equals'].includes(markAt(sheet, to) ?? '')) to++;
    if (to === from + 1) continue;
    const one = ONE_G[wordAt(sheet, to) ?? ''];
    const [first, second] = [amount(sheet, from), one === undefined ? amount(sheet, to) : { g: one }];
    const [m, g] = [first?.m ?? second?.m, first?.g ?? second?.g];
    if (m !== undefined && g !== undefined && m > 0 && g > 0) return { from, to, tex: (1000 * g) / m };
  }
  return undefined;
}

function amount(sheet: Sheet, i: number): { m?: number; g?: number } | undefined {
  const quantity = quantityAtIndex(sheet, i);
  if (quantity === undefined || quantity.lo !== quantity.hi) return undefined;
  const perG = gPer(quantity.unit);
  if (perG !== undefined) return { g: quantity.lo * perG };
  const perMm = mmPer(quantity.unit);
  return perMm !== undefined && perMm >= MM_PER.yd ? { m: (quantity.lo * perMm) / 1000 } : undefined;
}

const MOST_CATEGORY = 7;

/** `category 4`, `weight 4`, `4 weight yarn`, `medium weight (4)`, `super bulky weight`. */
function categoryAt(sheet: Sheet): (Words & { number: number }) | undefined {
  for (const i of sheet.tokens.keys()) {
    const word = wordAt(sheet, i);
    if (word !== 'category' && word !== 'weight') continue;
    const isWeight = word === 'weight';
    const next =
      ['category', 'is'].includes(wordAt(sheet, i + 1) ?? '') || markAt(sheet, i + 1) === 'equals' ? i + 2 : i + 1;
    const named = isWeight ? nameBefore(sheet, i) : undefined;
    const fits = (at: number): boolean =>
      Number.isInteger(bareAt(sheet, at)) &&
      (!isWeight || ((bareAt(sheet, at) ?? -1) >= 0 && (bareAt(sheet, at) ?? 9) <= MOST_CATEGORY));
    if (named !== undefined)
      return { from: named.from, to: bareAt(sheet, i + 1) === named.number ? i + 1 : i, number: named.number };
    if (fits(next)) return { from: i, to: next, number: bareAt(sheet, next) ?? 0 };
    if (isWeight && fits(i - 1) && wordAt(sheet, i + 1) === 'yarn')
      return { from: i - 1, to: i, number: bareAt(sheet, i - 1) ?? 0 };
  }
  return undefined;
}

/** A name of the published system before `weight`, two words before one; none that belongs to a longer name of a yarn. */
function nameBefore(sheet: Sheet, i: number): { from: number; number: number } | undefined {
  for (const from of [i - 2, i - 1]) {
    const weight = indexesBetween(from, i - 1).every((k) => isFree(sheet, k) && wordAt(sheet, k) !== undefined)
      ? yarnWeightNamed(saidBetween(sheet, from, i - 1))
      : undefined;
    const before = wordAt(sheet, from - 1) ?? '';
    if (weight !== undefined)
      return { from: COLOURS.has(before) || FIBRES.has(before) ? i : from, number: weight.number };
  }
  return undefined;
}
