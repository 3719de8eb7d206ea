import { say } from '../../../core/index.js';
import { inUnits } from '../../language/lengths.js';
import type { Value } from '../../request.js';
import { type Desk, refusal } from '../desk.js';
import { unitsQuestion } from '../question.js';
import { readAs } from '../typed.js';
import { planDesk } from './plan.js';
import { planMeant } from './plan-meant.js';
import { whatHelpsDesk } from './what-helps.js';

/** More than this share of a size is no give and take of it, either way. */
const MOST_SHARE = 0.25;

/** How far off a size may be → the plan in hand again with that, round the same middle. */
export const allowDesk: Desk<'allow'> = async ({ value: typed }, at) => {
  const meant = await planMeant(at);
  if ('reply' in meant) return meant;
  const { plan, ask } = meant;
  if (typed === undefined) {
    const { reply } = await whatHelpsDesk({ kind: 'what_helps' }, at);
    const wider = reply.offers.flatMap(({ request }) => (request.kind === 'plan' ? [request] : []))[0];
    return wider === undefined ? { reply, talk: at.talk } : planDesk(wider, at);
  }
  const value = inUnits(typed, at.maker.units);
  if (value.is === 'bare') return unitsQuestion({ kind: 'allow', value }, value.said ?? '', at);
  const { dimension, loMm, hiMm } = plan.landing;
  const label = plan.sizes.find(({ id }) => id === dimension)?.label ?? 'Size';
  const [middleMm, halfMm] = [(loMm + hiMm) / 2, value.is === 'length' ? value.mm : 0];
  if (value.is !== 'window' && (halfMm <= 0 || halfMm > MOST_SHARE * middleMm))
    return refusal(at, {
      code: 'length_out_of_range',
      field: { id: dimension, label: `${label}, give or take` },
      givenMm: halfMm,
      minMm: 0,
      maxMm: MOST_SHARE * middleMm,
      why: say`that is how far off it may be, either way`,
      offers: [],
    });
  const window: Value =
    value.is === 'window' ? value : { is: 'window', loMm: middleMm - halfMm, hiMm: middleMm + halfMm };
  const values = { ...ask.values, [dimension]: window };
  const { reply, ...answer } = await planDesk({ kind: 'plan', follows: true, ask: { ...ask, values } }, at);
  if (reply.kind !== 'plan' || value.is === 'window') return { reply, ...answer };
  return { reply: { ...reply, assumed: [...reply.assumed, ...readAs([value])] }, ...answer };
};
