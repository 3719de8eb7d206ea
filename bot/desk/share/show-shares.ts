import { count, say, type Words } from '../../../core/index.js';
import { isSlackUserId } from '../../mention.js';
import type { Offered } from '../../reply.js';
import type { Request } from '../../request.js';
import type { Share } from '../../store/ports.js';
import type { At, Desk, DeskAnswer } from '../desk.js';
import { capital } from '../names.js';
import { shownCard } from './share-letters.js';
import { labelOf, nameOf, ownerName, shareRefusal, sharesShown, shownTo, sizeInWords, takenBy } from './shares.js';

type ShowShares = Request & { kind: 'show_shares' };

/** So many plans are listed, and so many of them have a button. */
const MOST_LISTED = 10;
const MOST_BUTTONS = 4;

/** The plans that others show a maker, or that the maker shows others: to that maker alone, each with a way on. */
export const showSharesDesk: Desk<'show_shares'> = async (request, at) =>
  request.of === 'theirs' ? shownByOthers(request, at) : shownToOthers(request, at);

const answer = (at: At, lead: Words, all: readonly Words[], offers: readonly Offered[]): DeskAnswer => {
  const more = all.length - MOST_LISTED;
  const lines = [...all.slice(0, MOST_LISTED), ...(more > 0 ? [say`${more} more before these.`] : [])];
  return { reply: { kind: 'answer', isOwn: true, lead, lines, examples: [], offers }, talk: at.talk };
};

async function shownByOthers(request: ShowShares, at: At): Promise<DeskAnswer> {
  const shown = await sharesShown(request, at);
  if ('code' in shown) return shareRefusal(at, shown);
  const theirs = shown.filter(({ ownerId }) => ownerId !== at.maker.id);
  const [last] = theirs;
  if (last === undefined) return shareRefusal(at, { code: 'nothing_shown', by: request.by });
  if (request.one) return { reply: { ...shownCard(last, await ownerName(last, at), ''), isOwn: true }, talk: at.talk };
  const owners = await Promise.all(theirs.map((share) => ownerName(share, at)));
  const lines = await Promise.all(
    theirs.map(async (share, i) => {
      const isSized = (await takenBy(share, at.maker.id, at)) !== undefined;
      const where = 'channel' in share.to ? ', in this channel' : '';
      return say`${capital(labelOf(share.ask))} by ${owners[i] ?? ''}${where}: ${sizeInWords(share.ask)}${isSized ? '. You sized it.' : '.'}`;
    }),
  );
  const offers = theirs.slice(0, MOST_BUTTONS).map((share, i) => sizing(share, owners[i] ?? ''));
  return answer(at, say`${count(theirs.length, 'plan')} shared with you`, lines, offers);
}

/** With words only where they can be typed. */
function sizing({ id, ask }: Share, owner: string): Offered {
  const label = labelOf(ask);
  const request = { kind: 'size_share' as const, shareId: id };
  if (!/^[\p{L}\d'-]+$/u.test(owner) || isSlackUserId(owner)) return { button: `Size the ${capital(label)}`, request };
  return { button: `Size ${owner}'s ${capital(label)}`, say: `size the ${label} ${owner} shared`, request };
}

async function shownToOthers({ by }: ShowShares, at: At): Promise<DeskAnswer> {
  const own = (await at.store.shares.of(at.maker.id)).toReversed();
  if (own.length === 0) return shareRefusal(at, { code: 'nothing_shared', said: by ?? '' });
  const origins = [...new Set(own.map(({ origin }) => origin))];
  const plans = origins.map((origin) => own.filter((share) => share.origin === origin));
  const lines = await Promise.all(plans.map((shares) => readersLine(shares, at)));
  const labels = plans.map(([first]) => (first === undefined ? '' : labelOf(first.ask)));
  const offers = origins.slice(0, MOST_BUTTONS).map(
    (origin, i): Offered => ({
      button: `Withdraw the ${capital(labels[i] ?? '')}`,
      say: `withdraw the ${labels[i]}`,
      request: { kind: 'withdraw_share', origin },
    }),
  );
  const every: Offered = {
    button: 'Withdraw All',
    say: 'withdraw everything',
    request: { kind: 'withdraw_share', every: true },
  };
  const lead = say`You share ${count(origins.length, 'plan')}`;
  return answer(at, lead, lines, own.length > 1 ? [...offers, every] : offers);
}

/** `Cowl, 60 to 64 cm round: Owen sized it; Lotte has not sized it yet.` */
async function readersLine(shares: readonly Share[], at: At): Promise<Words> {
  const each = await Promise.all(
    shares.map(async (share) => {
      const to = await shownTo(share, at);
      const makers = await Promise.all(
        (await at.store.shares.takenBy(share.id)).map(({ makerId }) => nameOf(makerId, at)),
      );
      const who = share.counts === undefined ? to : `${to} (with your rows)`;
      if ('channel' in share.to) return makers.length === 0 ? who : `${who}, sized by ${makers.join(' and ')}`;
      return `${who} ${makers.length === 0 ? 'has not sized it yet' : 'has sized it'}`;
    }),
  );
  const [first] = shares;
  if (first === undefined) throw new Error('a plan shared with nobody');
  return say`${capital(labelOf(first.ask))}, ${sizeInWords(first.ask)}: ${each.join('; ')}.`;
}
