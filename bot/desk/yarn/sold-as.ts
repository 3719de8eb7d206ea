import { withStored } from '../../conversation.js';
import type { Request } from '../../request.js';
import type { Ball } from '../../store/ports.js';
import { type Desk, refusal } from '../desk.js';
import { putBack } from '../effects.js';
import { TEX } from '../gauge/gauge-checks.js';
import { priced } from '../money/prices.js';
import { UNDO } from '../offers.js';
import { ballMeant } from './balls.js';
import { countTold, keepWays, packProblems, waysOf } from './put-ups.js';
import { nameMeant } from './thing-meant.js';

/** How a yarn is sold → its put-ups. One of the same ball and as many takes the place of the one before. */
export const soldAsDesk: Desk<'sold_as'> = async (request, at) => {
  const { yarn: name, ball: told, prices: asks, said } = request;
  const problems = packProblems(asks);
  if (problems.length > 0) return refusal(at, ...problems);
  const again = (yarn: string): Request => ({ ...request, yarn });
  const example = 'grey wool is 50 g / 105 m, 6.20 a ball';
  const thing = { kind: 'yarn' as const, way: 'add' as const, name, again, example };
  const meant = await nameMeant(thing, await at.store.shelf.of(at.maker.id), at);
  if ('answer' in meant) return meant.answer;
  const prices = priced(asks, request, at);
  if ('answer' in prices) return prices.answer;
  const held = await ballMeant(told, meant.name, request, at);
  if ('answer' in held) return held.answer;
  const tex = texOf(held.ball);
  if (tex < TEX.min || tex > TEX.max)
    return refusal(at, { code: 'count_outside', label: 'Tex', given: Math.round(tex), ...TEX });

  const ways = waysOf(held.ball, asks, prices.prices);
  const yarn = await at.store.yarns.opened(at.maker.id, meant.name);
  const effects = [
    ...(await keepWays(ways, yarn, said, at)),
    ...(told === undefined ? [] : countTold(yarn, tex)),
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

/** Grams to a kilometre. */
const texOf = ({ massG, lengthMm }: Ball): number => (massG * MM_PER_KM) / lengthMm;
const MM_PER_KM = 1_000_000;
