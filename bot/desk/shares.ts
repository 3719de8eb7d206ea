import { type Plan, pieceById, say, type Words } from '../../core/index.js';
import type { PlanAsk, SharedCounts, Value } from '../request.js';
import type { ShareProblem } from '../share-problem.js';
import type { Share } from '../store/ports.js';
import { askInWords } from './changes.js';
import { type At, type DeskAnswer, refusal } from './desk.js';
import { inUse } from './in-use.js';
import { shownName } from './makers-meant.js';
import { capital } from './names.js';

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

/** In the reader's units; what goes in is told by its sides as they were typed. */
function untyped(value: Value): Value {
  const { said, assumed, given, ...rest } = value;
  return value.is === 'contents' ? value : (rest as Value);
}

export const isSameSize = (a: PlanAsk, b: PlanAsk): boolean => JSON.stringify(a.values) === JSON.stringify(b.values);

/** The sizes of a plan: `width 10 3/4 to 11 1/4 in`. */
export const sizeInWords = (ask: PlanAsk): Words => askInWords(ask).reduce((line, words) => say`${line}, ${words}`);

/** A line of all sizes, for a card whose lead has room for one alone. */
export const ofSeveral = (ask: PlanAsk): Words[] =>
  askInWords(ask).length > 1 ? [say`${capital(labelOf(ask))}: ${sizeInWords(ask)}.`] : [];

/** `pouch, width 11 in`: with its size where it has one alone. */
export const inLead = (ask: PlanAsk): Words =>
  askInWords(ask).length > 1 ? say`${labelOf(ask)}` : say`${labelOf(ask)}, ${sizeInWords(ask)}`;

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

/** The share a request is about, as long as it is for the one who asks: to them, or in a channel. */
export async function shareFor(shareId: string | undefined, at: At): Promise<Share | ShareProblem> {
  const channel = channelOf(at);
  const held = shareId ?? at.talk.subject?.shared?.held?.shareId;
  const share =
    held === undefined
      ? ((channel && (await at.store.shares.latest({ channel: channel.channel }))) ??
        (await at.store.shares.latest({ makerId: at.maker.id })))
      : await at.store.shares.get(held);
  if (share === undefined || ('makerId' in share.to && share.to.makerId !== at.maker.id))
    return { code: 'nothing_shown' };
  return share.isWithdrawn ? { code: 'share_withdrawn', owner: await ownerName(share, at) } : share;
}

export const ownerName = ({ ownerId }: Share, at: At): Promise<string> => nameOf(ownerId, at);

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

/** Who a share is shown to, in words. */
export const shownTo = async ({ to }: Share, at: At): Promise<string> =>
  'makerId' in to ? nameOf(to.makerId, at) : 'the channel';

/** The revision of a share that the maker holds. */
export const takenBy = async (share: Share, makerId: string, at: At) =>
  (await at.store.shares.takenBy(share.id)).find((taken) => taken.makerId === makerId);
