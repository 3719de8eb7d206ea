import { withStored } from '../conversation.js';
import type { Effect } from '../effect.js';
import type { BotProblem } from '../problems.js';
import type { Request } from '../request.js';
import type { Ball, PutUp, Yarn } from '../store/ports.js';
import { ballMeant } from './balls.js';
import { type At, type Desk, refusal } from './desk.js';
import { putBack } from './effects.js';
import { TEX } from './gauge-checks.js';
import { priced } from './prices.js';
import { nameMeant } from './thing-meant.js';
import { UNDO } from './work-offers.js';

type SoldAs = Request & { kind: 'sold_as' };
/** So many balls for a price; a put-up alone is one ball of no price. */
type Way = Pick<PutUp, 'ball' | 'balls' | 'price'>;

/** How a yarn is sold → its put-ups. One of the same ball and as many takes the place of the one before. */
export const soldAsDesk: Desk<'sold_as'> = async (request, at) => {
  const { yarn: name, ball: told, prices: asks, said } = request;
  const problems = packProblems(request);
  if (problems.length > 0) return refusal(at, ...problems);
  const again = (yarn: string): Request => ({ ...request, yarn });
  const meant = await nameMeant({ kind: 'yarn', way: 'add', name, again }, await at.store.shelf.of(at.maker.id), at);
  if ('answer' in meant) return meant.answer;
  const prices = priced(asks, request, at);
  if ('answer' in prices) return prices.answer;
  const held = await ballMeant(told, meant.name, request, at);
  if ('answer' in held) return held.answer;
  const tex = texOf(held.ball);
  if (tex < TEX.min || tex > TEX.max)
    return refusal(at, { code: 'count_outside', label: 'Tex', given: Math.round(tex), ...TEX });

  const ofPrice = prices.prices.map((price, i): Way => ({ ball: held.ball, balls: asks[i]?.count ?? 1, price }));
  const ways = ofPrice.length > 0 ? ofPrice : [{ ball: held.ball, balls: 1, price: undefined }];
  const yarn = await at.store.yarns.opened(at.maker.id, meant.name);
  const effects = [
    ...(await kept(ways, yarn, said, at)),
    ...(told === undefined ? [] : described(yarn, tex)),
    ...prices.effects,
  ];
  await putBack(
    effects.filter(({ did }) => did === 'described' || did === 'set_currency'),
    at.store,
    at.now,
  );
  const talk = { ...at.talk, pending: undefined };
  return {
    reply: {
      kind: 'sold',
      yarn: yarn.name,
      putUps: ways,
      notes: prices.notes,
      assumed: [...meant.assumed, ...held.assumed, ...prices.assumed],
      offers: effects.length === 0 ? [] : [UNDO],
    },
    talk: effects.length === 0 ? talk : withStored(talk, said, effects, { ...request, yarn: yarn.name }),
  };
};

/** Half a ball is sold nowhere. */
const packProblems = ({ prices }: SoldAs): BotProblem[] =>
  prices.flatMap(({ count }): BotProblem[] =>
    Number.isInteger(count) && count >= 1 ? [] : [{ code: 'count_not_whole', label: 'Balls', given: count }],
  );

/** Grams to a kilometre. */
const texOf = ({ massG, lengthMm }: Ball): number => (massG * MM_PER_KM) / lengthMm;
const MM_PER_KM = 1_000_000;

/** Puts in what is new, in place of what was told before of the same ball and as many. */
async function kept(ways: readonly Way[], yarn: Yarn, said: string, at: At): Promise<Effect[]> {
  const known = await at.store.putUps.of(yarn.id);
  const effects: Effect[] = [];
  for (const way of ways) {
    const before = known.find((one) => one.balls === way.balls && isSame(one.ball, way.ball));
    if (before !== undefined && (way.price === undefined || isSame(before.price, way.price))) continue;
    if (before !== undefined) {
      await at.store.putUps.withdraw(before.id, at.now);
      effects.push({ did: 'dropped_put_up', putUpId: before.id });
    }
    const id = at.newId();
    await at.store.putUps.add({ ...way, id, yarnId: yarn.id, said, at: at.now });
    effects.push({ did: 'sold_as', putUpId: id });
  }
  return effects;
}

const isSame = (a: object | undefined, b: object | undefined): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What the ball tells of the yarn's count. */
function described(yarn: Yarn, tex: number): Effect[] {
  const { category = null, tex: known = null, since = null } = yarn;
  const before = { category, tex: known, since };
  return known === tex ? [] : [{ did: 'described', yarnId: yarn.id, before, after: { ...before, tex } }];
}
