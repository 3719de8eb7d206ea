import { createHash } from 'node:crypto';
import { homeBlocks } from './cards/home.js';
import { Conversation } from './conversation.js';
import { benchShown } from './desk/home.js';
import type { Request } from './request.js';
import type { Bound, Maker } from './store/ports.js';
import type { Surroundings } from './surroundings.js';

/** A maker who opened the Home tab. */
export type Visit = { key: string; slackTeamId: string; slackUserId: string; channel: string; at: number };

/** A page is of no use after a day: the next visit makes it anew. */
const KEPT_MS = 24 * 3_600_000;
/** Presses that follow each other so fast make one page. */
const BREATH_MS = 400;

/** Queues the page for a maker who opens Home, and remembers that they did. Rejects only when the store is down. */
export function visited(visit: Visit, { store, newId }: Surroundings): Promise<void> {
  return store.within(visit.slackTeamId, async (bound) => {
    if (!(await bound.deliveries.claim(visit.key, visit.at))) return;
    const maker = await bound.makers.held(visit.slackUserId, '', visit.at);
    await bound.homes.opened(maker.id, visit.channel, visit.at);
    await queued(bound, maker, visit.at, newId, 'always');
  });
}

/** Queues the page anew after a turn, where the maker has opened Home and it now shows something else. */
export const refreshed = (bound: Bound, maker: Maker, now: number, newId: () => string): Promise<void> =>
  queued(bound, maker, now, newId, 'if_changed');

/** The same for all who make a batch with them: what one has done stands on the pages of the others too. */
export async function refreshedTogether(bound: Bound, maker: Maker, now: number, newId: () => string): Promise<void> {
  const batch = await bound.batches.openOf(maker.id);
  const others = new Set(batch?.parts.map(({ makerId }) => makerId).filter((id) => id !== maker.id));
  for (const id of others) {
    const other = await bound.makers.get(id);
    if (other !== undefined) await refreshed(bound, other, now, newId);
  }
}

/** Requests that leave all that a page shows as it was. */
const LOOKS: readonly Request['kind'][] = [
  ...(['deleted', 'drop', 'explain_chance', 'form', 'help', 'how_to', 'meaning', 'own_count', 'steps'] as const),
  ...(['show_gauge', 'show_hours', 'show_log', 'show_pieces', 'show_rates', 'show_results', 'show_shares'] as const),
  ...(['show_shelf', 'show_time', 'tell_gauge', 'thanks', 'unread', 'what_helps', 'where', 'which_machine'] as const),
  ...(['which_size', 'why', 'why_apart'] as const),
];

/** True for a request after which no page need be made anew. */
export const isLook = ({ kind }: Request): boolean => LOOKS.includes(kind);

async function queued(bound: Bound, maker: Maker, now: number, newId: () => string, when: 'always' | 'if_changed') {
  const home = await bound.homes.of(maker.id);
  if (home === undefined) return;
  const at = { maker, talk: Conversation.parse({}), store: bound, now, newId, openUntil: now, place: '' };
  const blocks = homeBlocks(await benchShown(at), maker);
  const page = createHash('sha256').update(JSON.stringify(blocks)).digest('base64');
  if (when === 'if_changed' && page === home.page) return;
  await bound.homes.shows(maker.id, page);
  const address = { to: 'home' as const, user: maker.slackUserId, channel: home.channel };
  const waits = when === 'always' ? 0 : BREATH_MS;
  await bound.outbox.add(newId(), address, { text: '', blocks }, now + waits, now + KEPT_MS);
}
