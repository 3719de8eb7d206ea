import type { Notion } from '../piece.js';
import type { Item, Price } from './item.js';

/** What a notion is sold by: closures by the piece, cord by the metre, stuffing by the gram. */
export type NotionPrice = Price & { by: 'piece' | 'metre' | 'gram' };

/** The prices a maker has said; a notion is priced by its id. Yarn by the metre: a ball is 105 m for 620. */
export type Prices = {
  yarn: Price | undefined;
  notions: Readonly<Record<string, NotionPrice>>;
  packing: Price | undefined;
  hour: Price | undefined;
};

/** Ids of what every bill of a piece has beside its notions. */
export const BILLED = { yarn: 'yarn', packing: 'packing', time: 'time' } as const;

/** Notions that are cut from the main yarn, and on the bill with it. */
const OF_YARN: readonly string[] = ['fringe'];

/**
 * The items of one piece: the yarn in it, its notions, packing and time. A notion has no price where it is sold by what
 * is not known of it: a cord by the metre before its length is.
 * @param planned metres of yarn used, 0 or more; hours the piece takes
 */
export const itemsOf = (
  planned: { yarnM: number; notions: readonly Notion[]; hours: number },
  prices: Prices,
): Item[] => [
  { id: BILLED.yarn, is: 'material', quantity: planned.yarnM, price: prices.yarn },
  ...planned.notions
    .filter(({ id }) => !OF_YARN.includes(id))
    .map((notion) => notionItem(notion, prices.notions[notion.id])),
  { id: BILLED.packing, is: 'material', quantity: 1, price: prices.packing },
  { id: BILLED.time, is: 'time', quantity: planned.hours, price: prices.hour },
];

function notionItem(notion: Notion, price: NotionPrice | undefined): Item {
  const quantity = price && amountOf(notion, price.by);
  return quantity === undefined
    ? { id: notion.id, is: 'material', quantity: 1, price: undefined }
    : { id: notion.id, is: 'material', quantity, price };
}

function amountOf(notion: Notion, by: NotionPrice['by']): number | undefined {
  if ('massG' in notion) return by === 'gram' ? notion.massG : undefined;
  if (by === 'metre') return notion.cutMm === undefined ? undefined : (notion.count * notion.cutMm) / 1000;
  return by === 'piece' ? notion.count : undefined;
}
