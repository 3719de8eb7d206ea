import { say, type Words } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import type { Request, StockAsk } from '../../request.js';
import type { Ball, Lot, Price } from '../../store/ports.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { putBack, takenBack } from '../effects.js';
import { priced } from '../money/prices.js';
import { UNDO } from '../offers.js';
import { ballMeant } from './balls.js';
import { amountWords, holdsWords, lotName } from './lots.js';
import { amountOf, amountProblems, changeOf } from './stock-amount.js';
import { type StockMeant, stockMeant } from './stock-meant.js';

/** What is on hand, came or went → the shelf. Never below nothing, nor below what work was promised. */
export const stockDesk: Desk<'stock'> = async (request, at) => {
  const { stock } = request;
  const problems = amountProblems(stock);
  if (problems.length > 0) return refusal(at, ...problems);
  const meant = await stockMeant(stock, at);
  if ('answer' in meant) return meant.answer;
  const prices = priced(stock.price === undefined ? [] : [stock.price], request, at);
  if ('answer' in prices) return prices.answer;
  const known = meant.lots[0]?.ball;
  const isAsked = stock.ball !== undefined || (stock.count !== undefined && known === undefined);
  const told = stock.kind === 'yarn' && isAsked ? await ballMeant(stock.ball, meant.of.name, request, at) : undefined;
  if (told !== undefined && 'answer' in told) return told.answer;

  const ball = told?.ball ?? known;
  const [price] = prices.prices;
  const each = price && { ...price, minor: Math.round(price.minor / (stock.price?.count ?? 1)) };
  const done = await moved(stock, meant, { ball, price: each }, at);
  if ('answer' in done) return done.answer;
  await putBack(prices.effects, at.store, at.now);

  const effects = [...prices.effects, ...done.effects];
  const lots = (await at.store.shelf.of(at.maker.id)).filter(({ id }) => done.ids.includes(id));
  const talk = { ...at.talk, pending: undefined };
  return {
    reply: {
      kind: 'stocked',
      lead: leadOf(stock, lots, done.by),
      notes: [...meant.notes, ...prices.notes, ...lots.flatMap(asideNote)],
      assumed: [...meant.assumed, ...(told?.assumed ?? []), ...prices.assumed],
      lots,
      offers: effects.length === 0 ? [] : [UNDO],
    },
    talk: effects.length === 0 ? talk : withStored(talk, stock.said, effects, settled(stock, meant)),
  };
};

type Moved = { ids: string[]; by: number; effects: Effect[] };

/** The lots changed, each held first, so that what is read of it stays so; all of them or none. */
async function moved(
  stock: StockAsk,
  { of, lots }: StockMeant,
  told: { ball: Ball | undefined; price: Price | undefined },
  at: At,
): Promise<Moved | { answer: DeskAnswer }> {
  const { shelf } = at.store;
  const done: Moved = { ids: [], by: 0, effects: [] };
  for (const one of lots.length > 0 ? lots : [of]) {
    const lot = await shelf.opened(one, at.now);
    const left = changeOf(stock, amountOf(stock, told.ball), lot);
    const move = { id: at.newId(), lotId: lot.id, workId: '', left: left ?? 0, aside: 0, said: stock.said, at: at.now };
    if (left === undefined || (left !== 0 && !(await shelf.move(move)))) {
      await takenBack(done.effects, at.store, at.now);
      return { answer: tooLow(lot, at) };
    }
    done.effects.push(...(await described(lot, told, at)));
    if (left !== 0) done.effects.push({ did: 'moved_stock', moveId: move.id, lotId: lot.id });
    done.ids.push(lot.id);
    done.by += Math.abs(left);
  }
  return done;
}

/** Keeps what was told of a lot's ball and price, where that is news. */
async function described(
  lot: Lot,
  { ball = lot.ball, price = lot.price }: { ball: Ball | undefined; price: Price | undefined },
  at: At,
): Promise<Effect[]> {
  const [before, after] = [
    { ball: lot.ball, price: lot.price },
    { ball, price },
  ];
  if (JSON.stringify(before) === JSON.stringify(after)) return [];
  await at.store.shelf.describe(lot.id, after);
  return [{ did: 'described_lot', lotId: lot.id, before, after }];
}

const tooLow = (lot: Lot, at: At): DeskAnswer =>
  refusal(at, {
    code: 'shelf_too_low',
    lot: lotName(lot),
    holds: lot.left === 0 ? say`nothing` : amountWords(lot.left, lot),
    aside: lot.aside === 0 ? undefined : amountWords(lot.aside, lot),
  });

/** The request as it came to be meant, to be done again the same way when a figure of it is put right. */
function settled(stock: StockAsk, { of, lots }: StockMeant): Request {
  const dyeLot = lots[0]?.dyeLot ?? of.dyeLot;
  return { kind: 'stock', stock: { ...stock, name: of.name, dyeLot, team: of.owner === '' } };
}

function leadOf({ way }: StockAsk, lots: readonly Lot[], by: number): Words {
  const [first, ...others] = lots;
  if (first === undefined) throw new Error('a lot that was changed is not there');
  const held = others.reduce((line, lot) => say`${line}; ${holdsWords(lot)}`, holdsWords(first));
  if (way === 'set') return say`On the shelf: ${held}`;
  return way === 'add'
    ? say`Added ${amountWords(by, first)}. Now ${held}`
    : say`Taken off: ${amountWords(by, first)}. Now ${held}`;
}

const asideNote = (lot: Lot): Words[] =>
  lot.aside === 0 ? [] : [say`${amountWords(lot.aside, lot)} of ${lotName(lot)} is set aside for work.`];
