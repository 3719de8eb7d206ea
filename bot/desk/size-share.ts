import { count, length, type Plan, say, type Words } from '../../core/index.js';
import type { SharedCounts } from '../request.js';
import { changesBetween } from './changes.js';
import type { Desk, DeskAnswer } from './desk.js';
import { planDesk } from './plan.js';
import { countsInWords } from './share-letters.js';
import { countsOf, ownerName, shareFor, shareRefusal, takenBy } from './shares.js';

/** A plan shared by another, in the asker's own rows; without gauge it asks for one, and waits. */
export const sizeShareDesk: Desk<'size_share'> = async ({ shareId, change }, at) => {
  const share = await shareFor(shareId, at);
  if ('code' in share) return shareRefusal(at, share);
  const isOwner = share.ownerId === at.maker.id;
  const { revision, origin } = share;
  const shared = isOwner ? { origin } : { origin, held: { shareId: share.id, revision } };
  const answer = await planDesk({ kind: 'plan', ask: { ...share.ask, shared } }, at);
  const { reply, talk } = answer;
  if (reply.kind === 'question') return resumable(answer, share.id);
  if (reply.kind !== 'plan') return answer;
  const before = await takenBy(share, at.maker.id, at);
  const was = before && (await at.store.shares.askOf(share.id, before.revision));
  if (!isOwner) await at.store.shares.take({ shareId: share.id, makerId: at.maker.id, revision, answered: revision });
  const owner = await ownerName(share, at);
  const beside = share.counts === undefined || isOwner ? [] : besideOwner(reply.plan, share.counts, owner);
  return {
    reply: {
      ...reply,
      shared: beside,
      changed: change === true && was !== undefined ? changesBetween(was, share.ask) : [],
    },
    talk,
  };
};

/** What waits for the answer is the share, so that it counts as taken once it is sized. */
function resumable({ reply, talk }: DeskAnswer, shareId: string): DeskAnswer {
  const { pending } = talk;
  return { reply, talk: { ...talk, pending: pending && { ...pending, request: { kind: 'size_share', shareId } } } };
}

/** A difference below this share is none that a maker can tell. */
const ALIKE = 0.005;

/** Both makers' counts side by side, and which spacing parts them by how much. */
function besideOwner(plan: Plan, theirs: SharedCounts, owner: string): Words[] {
  const mine = countsOf(plan);
  const across = (counts: SharedCounts): Words =>
    counts.across === undefined ? say`` : say`, ${length(counts.across.mm)} ${counts.across.adjective}`;
  const beside = say`Beside ${owner}'s: ${countsInWords(theirs)}${across(theirs)}. Yours: ${countsInWords(mine)}${across(mine)}.`;
  const why = [...rowsApart(mine, theirs), ...stitchesApart(mine, theirs)];
  if (why.length === 0) return [beside, say`Your spacings are as good as the same.`];
  return [beside, say`Why they differ: ${why.reduce((line, words) => say`${line}; ${words}`)}.`];
}

const percent = (change: number): string => `${Math.max(1, Math.round(Math.abs(change) * 100))}%`;
const mm = (value: number): string => `${value.toFixed(1)} mm`;

function rowsApart(mine: SharedCounts, theirs: SharedCounts): Words[] {
  const change = mine.rowMm / theirs.rowMm - 1;
  if (Math.abs(change) < ALIKE) return [];
  const [way, need] = change < 0 ? ['closer', 'more'] : ['wider apart', 'fewer'];
  return [
    say`your rows are ${percent(change)} ${way} (${mm(mine.rowMm)} against ${mm(theirs.rowMm)}), so you need ${need}`,
  ];
}

function stitchesApart(mine: SharedCounts, theirs: SharedCounts): Words[] {
  const { needles, stitchMm } = mine;
  const change = stitchMm === undefined || theirs.stitchMm === undefined ? 0 : stitchMm / theirs.stitchMm - 1;
  const isOther = needles !== undefined && theirs.needles !== undefined && needles !== theirs.needles;
  return [
    ...(isOther
      ? [say`your tube has ${count(needles, 'needle')} against ${theirs.needles ?? 0}, which no rows can change`]
      : []),
    ...(Math.abs(change) < ALIKE
      ? []
      : [
          say`your stitches are ${percent(change)} ${change < 0 ? 'narrower' : 'wider'} (${mm(stitchMm ?? 0)} against ${mm(theirs.stitchMm ?? 0)})`,
        ]),
  ];
}
