import {
  type Ball,
  BILLED,
  type Bill,
  bill,
  breakEven,
  eachOf,
  earnedAnHour,
  type Item,
  itemsOf,
  leastBalls,
  type Money,
  NO_FEES,
  type Notion,
  type NotionPrice,
  type Plan,
  type Price,
  priceForMargin,
  priceForMarkup,
  saleAt,
  say,
  timing,
} from '../../core/index.js';
import type { CostReply } from '../replies/costing.js';
import type { CostAsk } from '../request.js';
import type { Lot, Profile, PutUp, Yarn } from '../store/ports.js';
import type { At, Desk } from './desk.js';
import { costRefusal, moneyMeant } from './money-questions.js';
import { sameName } from './names.js';
import { paceOf } from './pace.js';
import { planMeant } from './plan-meant.js';
import { type Costed, costed, isNotion, rateCardOf } from './rate-card.js';

/** What the plan in hand costs, and what a price leaves of it. Nothing is stored, and nothing without a price is made up. */
export const costDesk: Desk<'cost'> = async (request, at) => {
  const meant = await planMeant(at);
  if ('reply' in meant) return meant;
  const { plan, ask, profile } = meant;
  const typed = request.cost.price;
  const price = typed === undefined ? { money: undefined } : moneyMeant(typed, request, at);
  if ('answer' in price) return price.answer;
  const card = costed(await rateCardOf(at), at.maker.currency);
  const copies = request.cost.copies ?? 1;
  const made = await billed(plan, profile, copies, card, at);
  if (!made.bill.ok) return costRefusal(at, made.bill.problems);
  const answer = sold(made.bill.value, request.cost, price.money, card);
  if (!answer.ok) return costRefusal(at, answer.problems);
  const reply: CostReply = {
    kind: 'cost',
    label: plan.label.toLowerCase(),
    names: made.names,
    minutes: made.minutes,
    balls: made.balls,
    bill: made.bill.value,
    fees: card.fees,
    isBreakEven: request.cost.breakEven ?? false,
    assumed: made.assumed,
    ...answer.value,
  };
  return { reply: { ...reply, offers: [] }, talk: { ...at.talk, subject: ask } };
};

const MINUTE_S = 60;
const MINUTES_AN_HOUR = 60;

/** The bill of so many pieces; for several, yarn by whole balls where their size is known. */
async function billed(plan: Plan, profile: Profile, copies: number, card: Costed, at: At) {
  const rates = await paceOf(at);
  const minutes = Math.round(timing(plan.steps, rates).whole.medianS / MINUTE_S);
  const shelf = await at.store.shelf.of(at.maker.id);
  const priced = await yarnPriced(profile, at);
  const yarn = yarnPrice(await at.store.putUps.of(priced.id), ofYarn(shelf, priced), card);
  const notions = Object.fromEntries(
    plan.notions.flatMap((notion) => {
      const price = card.notion(notion) ?? shelfPrice(notion, shelf, card);
      return price === undefined ? [] : [[notion.id, price]];
    }),
  );
  const planned = { yarnM: plan.yarn?.lengthM ?? 0, notions: plan.notions, hours: minutes / MINUTES_AN_HOUR };
  const prices = { yarn: yarn?.byMetre, notions, packing: card.packing, hour: card.hour };
  const balls = copies > 1 && yarn !== undefined && plan.yarn !== undefined ? ballsFor(plan, copies, yarn) : undefined;
  const items = itemsOf(planned, prices)
    .map((item) => (item.id === BILLED.yarn && balls !== undefined ? balls : item))
    .filter((item) => item.id !== BILLED.packing || item.price !== undefined);
  const names = Object.fromEntries(plan.notions.map((notion) => [notion.id, notionName(notion, copies)]));
  const assumed = [
    ...(rates.sessions === 0 ? [say`the usual pace, until you log your own`] : []),
    ...(card.overhead === undefined ? [say`no overhead`] : []),
    ...(priced.id === profile.yarn.id || yarn === undefined
      ? []
      : [say`yarn at the price of ${priced.name}, the only one known`]),
  ];
  return {
    bill: bill(items, card.overhead ?? { is: 'none' }, copies),
    names,
    minutes,
    balls: balls?.quantity,
    assumed,
  };
}

type YarnPrice = {
  byMetre: Price;
  ball: Ball & { lengthM: number };
  packs: { count: number; minor: number }[];
  currency: string;
};

/** The yarn of the plan; while that has no name, the only one that has. */
async function yarnPriced({ yarn }: Profile, at: At): Promise<Yarn> {
  const [only, ...others] = yarn.name === '' ? await at.store.yarns.of(at.maker.id) : [];
  return only !== undefined && others.length === 0 ? only : yarn;
}

const ofYarn = (shelf: readonly Lot[], yarn: Yarn): Lot[] =>
  shelf.filter(({ kind, name }) => kind === 'yarn' && sameName(name, yarn.name));

/** The price of a metre: of a ball as it is sold alone, else of the dearest pack by the ball, else of what is on the shelf. */
function yarnPrice(putUps: readonly PutUp[], lots: readonly Lot[], card: Costed): YarnPrice | undefined {
  const sold = putUps.flatMap(({ ball, balls, price }) => (price === undefined ? [] : [{ ball, balls, price }]));
  const held = lots.flatMap(({ ball, price }) => (ball && price ? [{ ball, balls: 1, price }] : []));
  const [first, ...others] = [...sold, ...held].sort((a, b) => a.balls - b.balls);
  if (first === undefined) return undefined;
  const currency = card.currencyOf(first.price.currency);
  const lengthM = first.ball.lengthMm / 1000;
  const alike = [first, ...others].filter(({ ball }) => ball.lengthMm === first.ball.lengthMm);
  return {
    currency,
    ball: { massG: first.ball.massG, lengthM },
    byMetre: { is: 'rate', currency, minor: first.price.minor, per: lengthM * first.balls },
    packs: alike.map(({ balls, price }) => ({ count: balls, minor: price.minor })),
  };
}

/** Whole balls for all of them together, enough 95 times in 100. */
function ballsFor({ yarn }: Plan, copies: number, { ball, packs, currency }: YarnPrice): Item {
  const need = { lengthM: (yarn?.lengthM ?? 0) * copies, cv: yarn?.cv ?? 0 };
  const price: Price = { is: 'packs', currency, packs };
  return { id: BILLED.yarn, is: 'material', quantity: leastBalls(need, ball.lengthM).balls, once: true, price };
}

/** What a notion on the shelf cost. */
function shelfPrice(notion: Notion, shelf: readonly Lot[], card: Costed): NotionPrice | undefined {
  const lot = shelf.find(({ kind, name, price }) => kind === 'notion' && price !== undefined && isNotion(notion, name));
  const { price } = lot ?? {};
  return (
    price && {
      is: 'packs',
      by: 'piece',
      currency: card.currencyOf(price.currency),
      packs: [{ count: 1, minor: price.minor }],
    }
  );
}

function notionName(notion: Notion, copies: number): string {
  if ('massG' in notion) return notion.of;
  const { one, many = `${one}s`, count: each } = notion;
  return each * copies === 1 ? one : `${each * copies} ${many}`;
}

type Sold = Pick<CostReply, 'eachMinor' | 'sale' | 'wanted' | 'stall'>;

/** What a price leaves, or what price leaves what was wanted; and how many sales pay for the stall. */
function sold(made: Bill, ask: CostAsk, at: Money | undefined, { fees = NO_FEES, stall }: Costed) {
  const eachMinor = eachOf(made)[0] ?? made.costMinor;
  const cost = { currency: made.currency, minor: eachMinor };
  const wanted =
    ask.margin !== undefined
      ? { way: 'margin' as const, percent: ask.margin, price: priceForMargin(cost, ask.margin, fees) }
      : ask.markup !== undefined
        ? { way: 'markup' as const, percent: ask.markup, price: priceForMarkup(cost, ask.markup, fees) }
        : undefined;
  if (wanted?.price.ok === false) return wanted.price;
  const price = wanted?.price.value ?? at;
  const none: Sold = { eachMinor, sale: undefined, wanted: undefined, stall: undefined };
  if (price === undefined) return { ok: true as const, value: none };
  const sale = saleAt(cost, price, fees);
  if (!sale.ok) return sale;
  const earned = earnedAnHour(made, price, fees);
  const paid = stall && breakEven(stall, cost, price, fees);
  if (paid?.ok === false) return paid;
  const value: Sold = {
    eachMinor,
    sale: {
      ...sale.value,
      anHour: earned.ok ? { currency: earned.value.currency, minor: earned.value.anHourMinor } : undefined,
    },
    wanted: wanted && { way: wanted.way, percent: wanted.percent, price },
    stall: stall && paid && { minor: stall.minor, pieces: paid.value.pieces },
  };
  return { ok: true as const, value };
}
