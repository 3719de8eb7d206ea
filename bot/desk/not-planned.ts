import type { Problem } from '../../core/index.js';
import { ORDINALS } from '../language/readers/picks.js';
import type { Offered } from '../reply.js';
import type { PlanAsk, Request, Value } from '../request.js';
import { ofSize } from '../sizes.js';
import type { At, DeskAnswer } from './desk.js';
import { inUse } from './in-use.js';
import { gaugeQuestion, sizeQuestion, widthQuestion } from './question.js';
import { readAs } from './typed.js';

/** Why a plan cannot be: the one question that would make it one, or the problems with every way out that works. */
export function notPlanned(request: Request & { kind: 'plan' }, problems: readonly Problem[], at: At): DeskAnswer {
  const { ask } = request;
  const missing = problems.find((problem) => problem.code === 'missing');
  const others = problems.filter((problem) => problem.code !== 'missing');
  const [first] = others;
  if (first === undefined && missing !== undefined) return sizeQuestion(request, missing, at);
  if (others.length === 1 && first?.code === 'no_row_gauge')
    return gaugeQuestion(request, at, ask.on.yarn || undefined);
  if (others.length === 1 && first?.code === 'no_stitch_gauge') return widthQuestion(request, at);
  const ways = others.flatMap((problem) => ('offers' in problem ? problem.offers : []));
  const offers: Offered[] = ways.map((way, i) => ({
    button: `Way ${i + 1}`,
    say: `the ${ORDINALS[i]}`,
    request: { ...request, ask: byWay(ask, way.edit) },
  }));
  return {
    reply: { kind: 'problem', problems: others, ways, offers, assumed: readAs(Object.values(inUse(ofFirst(ask)))) },
    talk: at.talk,
  };
}

/** One level deep: a value is replaced whole, null removes it. */
function edited(values: Record<string, Value>, edit: Record<string, Value | null>): Record<string, Value> {
  const kept = Object.entries({ ...values, ...edit });
  return Object.fromEntries(kept.flatMap(([id, value]) => (value === null ? [] : [[id, value]])));
}

/** The first of several sizes alone. */
const ofFirst = (ask: PlanAsk): PlanAsk => (ask.sizes?.[0] === undefined ? ask : ofSize(ask, ask.sizes[0]));

/** All sizes go that way, unless it changes what they differ in: then it is one for the first of them. */
function byWay(ask: PlanAsk, edit: Record<string, Value | null>): PlanAsk {
  const isOfOne = Object.keys(ask.sizes?.[0]?.values ?? {}).some((id) => id in edit);
  const to = isOfOne ? ofFirst(ask) : ask;
  return { ...to, values: edited(to.values, edit) };
}
