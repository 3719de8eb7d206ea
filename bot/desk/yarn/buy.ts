import {
  ballTex,
  ENOUGH,
  percentOf,
  say,
  sureEnough,
  WEIGH_AT_LEAST_G,
  type Words,
  weighedCv,
  withReserve,
  type YarnOutcome,
} from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import type { BotProblem, OfYarn } from '../../problems.js';
import type { BuyReply } from '../../replies/buy.js';
import type { BuyAsk, Request, WayAsk } from '../../request.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { putBack } from '../effects.js';
import { priced } from '../money/prices.js';
import { sameName } from '../names.js';
import { UNDO } from '../offers.js';
import { basisOf } from '../plan/planning.js';
import { ballMeant } from './balls.js';
import { best, waysLike } from './buy-best.js';
import { needOfAll } from './buy-plan.js';
import { ballsIn, heldFor, lotsFree } from './buy-shelf.js';
import { countTold, keepWays, packProblems, type Way, waysOf } from './put-ups.js';
import { nameMeant } from './thing-meant.js';

type Buy = Request & { kind: 'buy' };

/** What to buy for the plan in hand → whole balls, of one dye lot, beside what the shelf holds. Keeps the put-ups told. */
export const buyDesk: Desk<'buy'> = async (wanted, at) => {
  const buy = withLast(wanted.buy, at);
  const request: Buy = { kind: 'buy', buy };
  const { subject } = at.talk;
  if (subject?.piece === undefined) return refusal(at, { code: 'no_plan_yet' });
  const surely = sureEnough(buy.sure ?? ENOUGH);
  const problems = packProblems(buy.ways.flatMap(({ prices }) => prices));
  if (!surely.ok || problems.length > 0) return refusal(at, ...(surely.ok ? [] : ofYarn(surely.problems)), ...problems);

  const named = await nameOf(request, at);
  if ('answer' in named) return named.answer;
  const basis = await basisOf({ ...subject.on, ...(named.name !== undefined && { yarn: named.name }) }, at);
  const yarn = basis.profile?.yarn.name ?? '';
  const told = await waysTold(request, yarn, at);
  if ('answer' in told) return told.answer;
  const [like] = told.ways;
  if (like === undefined) throw new Error('a ball is told, known or asked for');
  const tex = ballTex({ massG: like.ball.massG, lengthM: like.ball.lengthMm / 1000 });
  if (!tex.ok) return refusal(at, ...ofYarn(tex.problems));

  const known = { ...basis.yarn, tex: told.isTold ? tex.value : (basis.yarn?.tex ?? tex.value) };
  const needed = needOfAll({ ...basis, yarn: known }, { ...subject, copies: buy.copies ?? subject.copies });
  if (!needed.ok) return refusal(at, ...needed.problems);
  const { reserve = 0 } = buy;
  const { massG } = needed.value.need;
  const need = { ...withReserve(needed.value.need, reserve), massG: massG && massG * (1 + reserve) };
  const lots = yarn === '' ? [] : await lotsFree(yarn, at);
  const matching = lots.filter(({ dyeLot }) => buy.dyeLot === undefined || sameName(dyeLot, buy.dyeLot));
  if (buy.dyeLot !== undefined && matching.length === 0)
    return refusal(at, {
      code: 'of_yarn',
      problem: { code: 'unknown_lot', given: buy.dyeLot, lots: lots.map(({ dyeLot }) => dyeLot) },
    });

  const sure = surely.value;
  const held = heldFor(need, sure, matching, like.ball);
  const isEnough = held !== undefined && held.chance >= sure;
  const have = held === undefined || isEnough ? [] : [ballsIn(held.lot, like.ball)];
  const anew = best({ need, sure, have: [] }, told.ways);
  const joining = held === undefined ? told.ways : waysLike(held.lot.ball, told.ways);
  const more = isEnough ? undefined : best({ need, sure, have }, joining);
  const weighed = isEnough ? undefined : best({ need: { ...need, cv: WEIGHED_CV }, sure, have }, joining);
  if (!anew.ok) return refusal(at, ...ofYarn(anew.problems));
  if (more?.ok === false) return refusal(at, ...ofYarn(more.problems));

  const effects = await kept(told, yarn, tex.value, buy, at);
  const isFewer =
    needed.value.one.source === 'gauge' && weighed?.ok && more && weighed.value.one.balls < more.value.one.balls;
  const reply: BuyReply & { offers: DeskAnswer['reply']['offers'] } = {
    kind: 'buy',
    ...needed.value,
    yarn,
    need,
    sure,
    reserve,
    held,
    others: lots.filter(({ id }) => id !== held?.lot.id),
    more: more?.value.one,
    anew: anew.value.one,
    mixed: more === undefined ? undefined : more.value.mixed,
    weighed: isFewer ? weighed.value.one : undefined,
    notes: told.notes,
    assumed: [
      ...named.assumed,
      ...told.assumed,
      ...(subject.stripes === undefined ? [] : [IN_ONE_COLOUR]),
      ...(buy.sure === undefined ? [sureAssumed(sure)] : []),
    ],
    offers: effects.length === 0 ? [] : [UNDO],
  };
  const talk = {
    ...at.talk,
    pending: undefined,
    buying: { planId: at.talk.planId, ask: { ...buy, ways: yarn === '' ? buy.ways : [] } },
  };
  return { reply, talk: effects.length === 0 ? talk : withStored(talk, buy.said, effects, request) };
};

/** What a swatch weighed as advised would leave unsure. */
const WEIGHED_CV = weighedCv(WEIGH_AT_LEAST_G);

/** Balls are counted for the piece as a whole. */
const IN_ONE_COLOUR = say`all in one colour; for stripes count whole balls of each colour, by its length with its ends`;

const sureAssumed = (sure: number): Words => say`enough ${percentOf(sure)} of the time; say "be 90% sure" for less`;

const ofYarn = (problems: (YarnOutcome<never> & { ok: false })['problems']): BotProblem[] =>
  problems.map((problem) => ({ code: 'of_yarn', problem: problem as OfYarn }));

/** What was asked of the same plan before stays, so that "be 90% sure" is of the same pieces. */
function withLast(buy: BuyAsk, { talk }: At): BuyAsk {
  const { buying } = talk;
  if (buying === undefined || buying.planId !== talk.planId) return buy;
  const { ways, dyeLot: _, ...last } = buying.ask;
  const told = Object.fromEntries(Object.entries(buy).filter(([, value]) => value !== undefined));
  return { ...last, ...(told as BuyAsk), ways: buy.ways.length > 0 ? buy.ways : ways };
}

async function nameOf(request: Buy, at: At) {
  const { yarn } = request.buy;
  if (yarn === undefined) return { name: undefined, assumed: [] as Words[] };
  const again = (name: string): Request => ({ kind: 'buy', buy: { ...request.buy, yarn: name } });
  return nameMeant({ kind: 'yarn', way: 'add', name: yarn, again }, await at.store.shelf.of(at.maker.id), at);
}

/** `isNews`: told in this request, and so to be kept; `isTold`: its ball too. */
type Told = { ways: Way[]; isNews: boolean; isTold: boolean; effects: Effect[]; notes: Words[]; assumed: Words[] };

/** How the yarn is sold: as told, else as known of it; or the question what a ball holds. */
async function waysTold(request: Buy, yarn: string, at: At): Promise<Told | { answer: DeskAnswer }> {
  const { ways: asks } = request.buy;
  const known = asks.length === 0 ? await waysKnown(yarn, at) : [];
  if (known.length > 0) return { ways: known, isNews: false, isTold: false, effects: [], notes: [], assumed: [] };
  const prices = priced(
    asks.flatMap((way) => way.prices),
    request,
    at,
  );
  if ('answer' in prices) return prices;
  const told: Told = {
    ...prices,
    ways: [],
    isNews: asks.length > 0,
    isTold: asks.some(({ ball }) => ball !== undefined),
  };
  const left = [...prices.prices];
  const untold: WayAsk[] = [{ prices: [] }];
  for (const way of asks.length === 0 ? untold : asks) {
    const held = await ballMeant(way.ball, yarn || 'this yarn', request, at);
    if ('answer' in held) return held;
    told.ways.push(...waysOf(held.ball, way.prices, left.splice(0, way.prices.length)));
    told.assumed.push(...held.assumed);
  }
  return told;
}

/** Put-ups of a yarn, those told last first, and what its lots on the shelf cost where none has a price. */
async function waysKnown(name: string, at: At): Promise<Way[]> {
  const yarn = name === '' ? undefined : (await at.store.yarns.of(at.maker.id)).find((one) => sameName(one.name, name));
  const sold = yarn === undefined ? [] : (await at.store.putUps.of(yarn.id)).reverse();
  if (sold.some(({ price }) => price !== undefined)) return sold;
  const lots = (await at.store.shelf.of(at.maker.id)).filter((lot) => lot.kind === 'yarn' && sameName(lot.name, name));
  return [...sold, ...lots.flatMap(({ ball, price }) => (ball === undefined ? [] : [{ ball, balls: 1, price }]))];
}

/** Keeps put-ups that were told of a yarn with a name. */
async function kept(told: Told, name: string, tex: number, { said }: BuyAsk, at: At): Promise<Effect[]> {
  const yarn = told.isNews && name !== '' ? await at.store.yarns.opened(at.maker.id, name) : undefined;
  const stored = yarn === undefined ? [] : await keepWays(told.ways, yarn, said, at);
  const changes = [...(yarn !== undefined && told.isTold ? countTold(yarn, tex) : []), ...told.effects];
  await putBack(changes, at.store, at.now);
  return [...stored, ...changes];
}
