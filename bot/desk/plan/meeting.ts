import { pieceById } from '../../../core/index.js';
import type { StripesShown } from '../../replies/stripes.js';
import type { Offered } from '../../reply.js';
import type { PlanAsk } from '../../request.js';
import type { At } from '../desk.js';
import { tried } from './planning.js';

/** Stripes with the way to make them meet. */
export type InStripes = { shown: StripesShown; offer: Offered | undefined };

/** Stripes that do not meet across the graft, with the plan whose rows are held to the repeat; others as they are. */
export async function withMeeting(ask: PlanAsk, shown: StripesShown, at: At): Promise<InStripes> {
  const { where, isWhole } = shown.meeting;
  const piece = pieceById(ask.piece ?? '');
  if (piece === undefined || ask.stripes === undefined || where !== 'across_graft' || isWhole)
    return { shown, offer: undefined };
  const held: PlanAsk = { ...ask, stripes: { ...ask.stripes, meets: true } };
  const { outcome } = await tried(held, piece, at);
  if (!outcome.ok) return { shown, offer: undefined };
  const { rows, landing } = outcome.value;
  const offer: Offered = {
    button: 'Make It Meet',
    say: 'make it meet',
    spoken: 'Hold the rows to the stripes, so that they meet across the graft',
    request: { kind: 'plan', ask: held, follows: true },
  };
  return { shown: { ...shown, met: { rows, chance: landing.chance } }, offer };
}
