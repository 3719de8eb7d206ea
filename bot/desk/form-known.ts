import { pieceById, printed } from '../../core/index.js';
import { type Conversation, subjectOf } from '../conversation.js';
import { type FormId, isOfPiece, type Request } from '../request.js';
import type { Bound, Maker } from '../store/ports.js';
import { rateCardOf } from './money/rate-card.js';
import { machineName } from './names.js';
import { inLine, shownAsk } from './share/shares.js';

/** What the forms of a maker draw from: their own machines and yarns, what is on the machines, and their rate card. */
export async function formKnown(bound: Bound, maker: Maker, talk: Conversation) {
  const profiles = await bound.profiles.of(maker.id);
  const open = await bound.works.open(maker.id);
  const works = await Promise.all(
    [...open]
      .sort((a, b) => Number(b.id === talk.workId) - Number(a.id === talk.workId))
      .map(async (work) => {
        const plan = await bound.plans.get(work.planId, maker.id);
        const machine = profiles.find(({ id }) => id === work.profileId)?.machine ?? { name: '' };
        const label = `${pieceById(plan?.piece ?? '')?.label ?? 'Piece'} on ${machineName(machine)}`;
        return { id: work.id, label: `${label}, row ${work.rows} of ${work.stopAt}`, rows: work.rows };
      }),
  );
  const benches = profiles.map(({ id, machine, yarn, tension }) => ({
    id,
    machine: machine.name,
    needles: machine.needles,
    yarn: yarn.name,
    tension,
  }));
  const rates = (await rateCardOf({ store: bound, maker })).map(({ of, value }) => ({ of, ...value }));
  const ask = talk.subject ?? (await bound.plans.latest(maker.id))?.ask;
  const inHand = ask && printed(inLine(shownAsk(ask)), { units: maker.units ?? 'in' });
  return { units: maker.units, currency: maker.currency, benches, works, rates, inHand };
}

/** The form that the talk calls for: that of what waits, of the piece on the machine, or else of a plan. */
export function formMeant({ pending, subject }: Conversation, hasWork: boolean): FormId {
  if (pending?.holes[0] === 'gauge' || pending?.request.kind === 'record_gauge') return 'gauge';
  if (pending?.request.kind === 'set_rates') return 'rates';
  if (pending?.request.kind === 'lost_count' || pending?.request.kind === 'reading') return pending.request.kind;
  return hasWork && !isOfPiece(pending?.request) && subject === undefined ? 'reading' : 'plan';
}

/** What was said of what a form asks: the request that waits, or the plan in hand. */
export function saidFor(form: FormId, talk: Conversation): Request | undefined {
  const ask = subjectOf(talk);
  if (form === 'plan') return ask && { kind: 'plan', ask };
  return talk.pending?.request;
}
