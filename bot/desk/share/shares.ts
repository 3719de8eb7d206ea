import { inOthers, length, type Plan, pieceById, range, SIDES, say, type Words } from '../../../core/index.js';
import type { PlanAsk, SharedCounts, Value } from '../../request.js';
import type { ShareProblem } from '../../share-problem.js';
import type { Share } from '../../store/ports.js';
import { makerMeant, shownName } from '../batch/makers-meant.js';
import { askInWords } from '../changes.js';
import { type At, type DeskAnswer, refusal } from '../desk.js';
import { capital } from '../names.js';
import { inUse } from '../plan/in-use.js';

export const shareRefusal = (at: At, problem: ShareProblem): DeskAnswer => refusal(at, { code: 'of_share', problem });

/** A plan as others see it: its size alone, without what was typed, the machine, the yarn, the number or the day. */
export const shownAsk = (ask: PlanAsk): PlanAsk => ({
  piece: ask.piece,
  copies: 1,
  values: Object.fromEntries(Object.entries(inUse(ask)).map(([id, value]) => [id, untyped(value)])),
  on: {},
  focus: [],
});

/**
 * What a maker's own shares of a plan are known by: the plan that was shared first, and for one who was shown it the
 * share it came by, since what they pass on is theirs and not its owner's.
 */
export const ownOrigin = ({ shared }: PlanAsk, { maker }: At): string | undefined =>
  shared?.held === undefined ? shared?.origin : `${shared.held.shareId}:${maker.id}`;

/** A plan that was shared in another talk than this, known as shared in this one too. */
export async function knownAsShared(ask: PlanAsk, { maker, store, talk }: At): Promise<PlanAsk> {
  const { planId } = talk;
  if (ask.shared !== undefined || planId === undefined) return ask;
  const isShared = (await store.shares.of(maker.id, planId)).length > 0;
  return isShared ? { ...ask, shared: { origin: planId } } : ask;
}

/** In the reader's units; what goes in is told by its sides as they were typed. */
function untyped(value: Value): Value {
  const { said, assumed, given, ...rest } = value;
  return value.is === 'contents' ? value : (rest as Value);
}

export const isSameSize = (a: PlanAsk, b: PlanAsk): boolean => JSON.stringify(a.values) === JSON.stringify(b.values);

const adjectives: Readonly<Record<string, { adjective: string }>> = SIDES;

/** Each size of a shown plan in the reader's units and the others: `60 to 64 cm round (23 5/8 to 25 1/4 in)`. */
const sizesOf = (ask: PlanAsk): Words[] =>
  Object.entries(ask.values).flatMap(([id, value]) => {
    const side = adjectives[id]?.adjective;
    if (side === undefined || (value.is !== 'length' && value.is !== 'window'))
      return askInWords({ ...ask, values: { [id]: value } });
    const size = value.is === 'length' ? say`${length(value.mm)}` : say`${range(value.loMm, value.hiMm)}`;
    return [say`${size} ${side} (${inOthers(size)})`];
  });

/** The sizes of a shown plan, by their sides where they have one. */
export const sizeInWords = (ask: PlanAsk): Words => sizesOf(ask).reduce((line, words) => say`${line}, ${words}`);

/** `pouch, 11 in wide (28 cm)`: a piece by its sizes, where it has any. */
export const inLine = (ask: PlanAsk): Words =>
  Object.keys(ask.values).length === 0 ? say`${labelOf(ask)}` : say`${labelOf(ask)}, ${sizeInWords(ask)}`;

/** A line of all sizes, for a card whose lead has room for one alone. */
export const ofSeveral = (ask: PlanAsk): Words[] =>
  sizesOf(ask).length > 1 ? [say`${capital(labelOf(ask))}: ${sizeInWords(ask)}.`] : [];

/** `pouch, 28 cm wide (11 in)`: with its size where it has one alone. */
export const inLead = (ask: PlanAsk, joint = ','): Words =>
  sizesOf(ask).length > 1 ? say`${labelOf(ask)}` : say`${labelOf(ask)}${joint} ${sizeInWords(ask)}`;

/** Two names, or how many there are. */
export const inOneLine = (names: readonly string[], one: string): string =>
  names.length > 2 ? `${names.length} ${one}s` : names.join(' and ');

export const labelOf = ({ piece }: PlanAsk): string => pieceById(piece ?? '')?.label.toLowerCase() ?? 'piece';

/** The owner's rows and spacings as they stand. */
export function countsOf(plan: Plan): SharedCounts {
  const { rows, needles, onMachine, tube, sizes } = plan;
  const across = sizes.find(({ axis, expectedMm }) => axis === 'needles' && expectedMm !== undefined);
  return {
    rows,
    ...(needles !== undefined && { needles }),
    rowMm: Math.exp(onMachine.row.mu),
    ...(needles !== undefined && tube?.flatWidthMm && { stitchMm: (2 * tube.flatWidthMm) / needles }),
    ...(across?.expectedMm !== undefined && { across: { adjective: across.adjective, mm: across.expectedMm } }),
  };
}

/** The channel a talk stands in; undefined in a direct message. */
export function channelOf({ place }: At): { channel: string; threadTs: string | undefined } | undefined {
  const [door, channel = '', threadTs] = place.split(':');
  return (door === 'thread' || door === 'command') && !channel.startsWith('D') ? { channel, threadTs } : undefined;
}

type ShownBy = { by?: string | undefined; piece?: string | undefined };

/** More shares than these are not looked through. */
const MOST_SHOWN = 100;

/** What others show the maker, in this channel first, the last first; of one owner or piece where that is said. */
export async function sharesShown({ by, piece }: ShownBy, at: At): Promise<Share[] | ShareProblem> {
  const owner = by === undefined ? undefined : await makerMeant(by, at);
  if (owner !== undefined && 'code' in owner) return owner;
  const channel = channelOf(at);
  const shares = [
    ...(channel === undefined ? [] : await at.store.shares.shownTo({ channel: channel.channel }, MOST_SHOWN)),
    ...(await at.store.shares.shownTo({ makerId: at.maker.id }, MOST_SHOWN)),
  ];
  return shares.filter(
    ({ ownerId, ask }) => (owner === undefined || ownerId === owner.id) && (piece === undefined || ask.piece === piece),
  );
}

/** The share a request is about, as long as it is for the one who asks: to them, or in a channel. */
export async function shareFor(
  meant: ShownBy & { shareId?: string | undefined },
  at: At,
): Promise<Share | ShareProblem> {
  const { by, piece } = meant;
  const inHand = by === undefined && piece === undefined ? at.talk.subject?.shared?.held?.shareId : undefined;
  const shareId = meant.shareId ?? inHand;
  const shown = shareId === undefined ? await sharesShown(meant, at) : [];
  if ('code' in shown) return shown;
  const share = shareId === undefined ? shown[0] : await at.store.shares.get(shareId);
  if (share === undefined || ('makerId' in share.to && share.to.makerId !== at.maker.id))
    return { code: 'nothing_shown', by };
  return share.isWithdrawn ? { code: 'share_withdrawn', owner: await ownerName(share, at) } : share;
}

export const ownerName = ({ ownerId }: Share, at: At): Promise<string> => nameOf(ownerId, at);

/** What others call a maker of this workspace. */
export async function nameOf(makerId: string, at: At): Promise<string> {
  const maker = await at.store.makers.get(makerId);
  if (maker === undefined) throw new Error('a maker of a share who is not there');
  return shownName(maker);
}

/** The name of the maker whose plan has this origin; undefined for one's own. */
export async function ownerOf(origin: string, at: At): Promise<string | undefined> {
  const ownerId = await at.store.shares.ownerOf(origin);
  return ownerId === undefined || ownerId === at.maker.id ? undefined : nameOf(ownerId, at);
}

/** The share that the plan in hand came by, withdrawn or not; undefined for a plan of one's own. */
export async function shareInHand({ maker, store, talk }: At): Promise<Share | undefined> {
  const ask = talk.subject ?? (await store.plans.latest(maker.id))?.ask;
  const { held } = ask?.shared ?? {};
  return held && store.shares.get(held.shareId);
}

/** Who a share is shown to, in words. */
export const shownTo = async ({ to }: Share, at: At): Promise<string> =>
  'makerId' in to ? nameOf(to.makerId, at) : 'the channel';

/** The revision of a share that the maker holds. */
export const takenBy = async (share: Share, makerId: string, at: At) =>
  (await at.store.shares.takenBy(share.id)).find((taken) => taken.makerId === makerId);
