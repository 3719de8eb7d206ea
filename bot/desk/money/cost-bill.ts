import {
  BILLED,
  bill,
  type CostProblem,
  type Item,
  itemsOf,
  type Notion,
  type NotionPrice,
  type Outcome,
  type Plan,
  say,
} from '../../../core/index.js';
import type { CostReply } from '../../replies/costing.js';
import type { Lot, Profile } from '../../store/ports.js';
import type { At } from '../desk.js';
import { took } from '../time/show-time.js';
import { ballsFor, yarnPriced } from './cost-yarn.js';
import { type Costed, isNotion, packsOf } from './rate-card.js';

/** Three minutes are a twentieth of an hour, which a decimal holds exactly: no half of a cent is lost in sixtieths. */
const TOLD_MINUTES = 3;
const MINUTE_S = 60;
const MINUTES_AN_HOUR = 60;

type Billed = Pick<CostReply, 'bill' | 'names' | 'minutes' | 'balls' | 'assumed'>;

/** The bill of so many pieces; for several, yarn by whole balls where their size is known. */
export async function billed(
  plan: Plan,
  profile: Profile,
  copies: number,
  card: Costed,
  at: At,
): Promise<Outcome<Billed, CostProblem>> {
  const { timing, sessions } = await took({ ...plan, pieces: copies }, at);
  const minutes = TOLD_MINUTES * Math.round(timing.whole.medianS / (TOLD_MINUTES * MINUTE_S));
  const shelf = await at.store.shelf.of(at.maker.id);
  const yarn = await yarnPriced(profile, shelf, at);
  if (!yarn.ok) return yarn;
  const { price, of } = yarn.value;
  const notions = Object.fromEntries(
    plan.notions.flatMap((notion) => {
      const found = card.notion(notion) ?? shelfPrice(notion, shelf, at.maker.currency);
      return found === undefined ? [] : [[notion.id, found]];
    }),
  );
  const hours = minutes / MINUTES_AN_HOUR;
  const planned = { yarnM: plan.yarn?.lengthM ?? 0, notions: plan.notions, hours };
  const prices = { yarn: price?.byMetre, notions, packing: card.packing, hour: card.hour };
  const balls =
    copies > 1 && price !== undefined && plan.yarn !== undefined ? ballsFor(plan.yarn, copies, price) : undefined;
  const items = itemsOf(planned, prices).map((item): Item => {
    if (item.id === BILLED.yarn && balls !== undefined) return balls;
    return item.id === BILLED.time ? { ...item, once: true } : item;
  });
  const made = bill(items, card.overhead, copies);
  if (!made.ok) return made;
  const names = Object.fromEntries(plan.notions.map((notion) => [notion.id, notionName(notion, copies)]));
  const assumed = [
    ...(sessions === 0 ? [say`the usual pace, until you log your own`] : []),
    ...(of === undefined ? [] : [say`yarn at the price of ${of}, the only one known`]),
  ];
  return { ok: true, value: { bill: made.value, names, minutes, balls: balls?.quantity, assumed } };
}

/** What a notion on the shelf cost. */
function shelfPrice(notion: Notion, shelf: readonly Lot[], own: string | undefined): NotionPrice | undefined {
  const lot = shelf.find(({ kind, name, price }) => kind === 'notion' && price !== undefined && isNotion(notion, name));
  return lot?.price && packsOf([{ ...lot.price, count: 1 }], own);
}

function notionName(notion: Notion, copies: number): string {
  if ('massG' in notion) return notion.of;
  const { one, many = `${one}s`, count: each } = notion;
  return each * copies === 1 ? one : `${each * copies} ${many}`;
}
