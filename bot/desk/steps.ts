import { z } from 'zod';
import { pieceById } from '../../core/index.js';
import { type Desk, refusal } from './desk.js';
import { tried } from './planning.js';
import { whichSize } from './which-size.js';

const Numbers = z.object({ rows: z.number() });

/** The steps of a plan, made again from its ask and the gauge as it is now. */
export const stepsDesk: Desk<'steps'> = async (request, at) => {
  const which = request.planId === undefined ? whichSize(at) : undefined;
  if (which !== undefined) return which;
  const id = request.planId ?? at.talk.planId;
  const stored = id === undefined ? undefined : await at.store.plans.get(id, at.maker.id);
  const piece = stored && pieceById(stored.piece);
  if (stored === undefined || piece === undefined) return refusal(at, { code: 'no_plan_yet' });
  const { outcome } = await tried(stored.ask, piece, at);
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  const { rows } = Numbers.parse(stored.numbers);
  const rowsBefore = rows === outcome.value.rows ? undefined : rows;
  const talk = { ...at.talk, planId: stored.id, subject: stored.ask, rowsMake: outcome.value.landing.dimension };
  return { reply: { kind: 'steps', plan: outcome.value, rowsBefore, offers: [] }, talk };
};
