import { chance, count, pieceById, rowsGiven, say, type Words } from '../../../core/index.js';
import type { Reply } from '../../reply.js';
import type { PlanAsk } from '../../request.js';
import { offersOfShare, turnOfShare } from '../../shared-offers.js';
import type { Address, Maker, Share } from '../../store/ports.js';
import type { At, Letter } from '../desk.js';
import { capital } from '../names.js';
import { tried } from '../plan/planning.js';
import { workMeant } from '../work/work-meant.js';
import { inLead, ofSeveral, sizeInWords, takenBy } from './shares.js';

type Answer = Reply & { kind: 'answer' };

/** A person's id in place of a channel opens the direct message with them. */
const addressOf = (share: Share, reader: Maker | undefined): Address =>
  'channel' in share.to
    ? { to: 'post', channel: share.to.channel, threadTs: share.to.threadTs }
    : { to: 'post', channel: reader?.slackUserId ?? '' };

const readerOf = async ({ to }: Share, at: At): Promise<Maker | undefined> =>
  'makerId' in to ? at.store.makers.get(to.makerId) : undefined;

/** The card that shows a plan to a co-maker, or in a channel. */
export async function shownLetter(share: Share, owner: string, note: string, at: At): Promise<Letter> {
  const reader = await readerOf(share, at);
  const reply = shownCard(share, owner, note);
  const turn = turnOfShare('share', share.id);
  return { to: addressOf(share, reader), turn, reply, units: reader?.units ?? at.maker.units };
}

/** What of a shared plan its readers see, with the words that its owner sent along. */
export function shownCard(share: Share, owner: string, note: string): Answer {
  const isChannel = 'channel' in share.to;
  return {
    kind: 'answer',
    lead: say`${capital(owner)} shared a plan${isChannel ? '' : ' with you'}: ${inLead(share.ask)}`,
    lines: [
      ...ofSeveral(share.ask),
      say`The size is the plan. Your rows come from your own gauge.`,
      ...(share.counts === undefined ? [] : [say`${capital(owner)}'s own: ${countsInWords(share.counts)}.`]),
      ...(note === '' ? [] : [say`${capital(owner)} says: "${note}"`]),
      ...(isChannel
        ? [say`Sizing it answers you alone; ${owner} sees that you took it.`]
        : [say`${capital(owner)} sees that you took it. Your rows and gauge stay yours unless you share them.`]),
    ],
    examples: [],
    offers: offersOfShare(turnOfShare('share', share.id)).slice(0, isChannel ? 1 : undefined),
  };
}

export const countsInWords = ({ rows, needles }: { rows: number; needles?: number | undefined }): Words =>
  needles === undefined ? say`${count(rows, 'row')}` : say`${count(rows, 'row')} on ${count(needles, 'needle')}`;

/** The card that tells a holder what changed, on their own gauge; those who never sized it see the plan anew. */
export async function changedLetter(share: Share, was: PlanAsk, owner: string, at: At): Promise<Letter> {
  const reader = await readerOf(share, at);
  const taken = reader && (await takenBy(share, reader.id, at));
  const turn = turnOfShare(taken === undefined ? 'share' : 'change', share.id);
  const own =
    reader === undefined || taken === undefined
      ? []
      : await onOwnGauge(share, (await at.store.shares.askOf(share.id, taken.revision)) ?? was, {
          ...at,
          maker: reader,
        });
  const reply: Answer = {
    kind: 'answer',
    lead: say`${capital(owner)} changed the ${inLead(share.ask, ': now')}`,
    lines: [...ofSeveral(share.ask), say`It was ${sizeInWords(was)}.`, ...own],
    examples: [],
    offers: offersOfShare(turn).slice(0, reader === undefined ? 1 : undefined),
  };
  return { to: addressOf(share, reader), turn, reply, units: reader?.units ?? at.maker.units };
}

/** The holder's rows then and now, and how far their work is: for the holder alone. */
async function onOwnGauge(share: Share, held: PlanAsk, at: At): Promise<Words[]> {
  const piece = pieceById(share.ask.piece ?? '');
  const now = piece && (await tried(share.ask, piece, at)).outcome;
  const then = piece && (await tried(held, piece, at)).outcome;
  if (!now?.ok || !then?.ok) return [say`Yours is ${sizeInWords(held)}.`];
  const { rows, landing, onMachine } = now.value;
  const isSameSide = then.value.landing.dimension === landing.dimension;
  const kept =
    isSameSide && then.value.rows !== rows && rowsGiven(then.value.rows, landing, landing.measure, onMachine.row);
  const open = await at.store.works.open(at.maker.id);
  const meants = await Promise.all(open.map(({ id }) => workMeant({ workId: id }, at)));
  const work = meants.find((meant) => meant?.ask.shared?.held?.shareId === share.id)?.work;
  return [
    say`On your gauge that is ${count(rows, 'row')}, ${chance(landing.chance)}. Yours is ${sizeInWords(held)}, ${count(then.value.rows, 'row')}.`,
    ...(kept ? [say`Your ${then.value.rows} for the new size: ${chance(kept.chance)}.`] : []),
    ...(work === undefined
      ? []
      : [say`You are at row ${work.rows}${work.rows < rows ? ', so nothing is lost either way' : ''}.`]),
  ];
}
