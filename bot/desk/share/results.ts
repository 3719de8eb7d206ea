import { say, type Words } from '../../../core/index.js';
import type { Effect } from '../../effect.js';
import type { Offered } from '../../reply.js';
import type { PlanAsk } from '../../request.js';
import type { Result } from '../../store/ports.js';
import type { At } from '../desk.js';
import { capital } from '../names.js';
import { isSameSize, ownerName, shownAsk } from './shares.js';

/** What a finished piece does for the plan it was shared from. */
type ForOwner = { effects: Effect[]; notes: Words[]; offers: Offered[] };

const NOTHING: ForOwner = { effects: [], notes: [], offers: [] };

type Came = Pick<Result, 'cameMm' | 'window' | 'rows' | 'needles'>;

/** Keeps the size of a finished piece of a shared plan. A holder's is theirs until they send it; an owner's is their own. */
export async function resultKept(ask: PlanAsk, planId: string, came: Came, at: At): Promise<ForOwner> {
  const { held } = ask.shared ?? {};
  const origin = ask.shared?.origin ?? planId;
  const share = held && (await at.store.shares.get(held.shareId));
  if (held === undefined || share === undefined) {
    const isShared = (await at.store.shares.of(at.maker.id, origin)).length > 0;
    return isShared ? { ...NOTHING, effects: [await kept(origin, came, at)] } : NOTHING;
  }
  const size = await at.store.shares.askOf(share.id, held.revision);
  // A piece made to another size is no answer to the plan.
  if (share.isWithdrawn || size === undefined || !isSameSize(size, shownAsk(ask))) return NOTHING;
  const owner = await ownerName(share, at);
  return {
    effects: [await kept(origin, came, at)],
    notes: [
      say`${capital(owner)} shared this plan. Say "send the size" or "send the size and rows" to tell how it came out.`,
    ],
    offers: [
      { button: 'Send the Size', say: 'send the size', request: { kind: 'send_result', rows: false } },
      { button: 'Send Size and Rows', say: 'send the size and rows', request: { kind: 'send_result', rows: true } },
    ],
  };
}

async function kept(origin: string, came: Came, at: At): Promise<Effect> {
  const id = at.newId();
  await at.store.results.add({ id, makerId: at.maker.id, origin, ...came, sent: '', at: at.now });
  return { did: 'resulted', resultId: id };
}
