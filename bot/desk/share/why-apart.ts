import { count, length, type Plan, say, type Words } from '../../../core/index.js';
import type { PlanAsk, Request, SharedCounts } from '../../request.js';
import type { Desk } from '../desk.js';
import { capital } from '../names.js';
import { planMeant } from '../plan/plan-meant.js';
import { besideOwner, inWords } from './apart.js';
import { countsOf, ownerName, shareRefusal } from './shares.js';

type Of = (Request & { kind: 'why_apart' })['of'];

/** Why a plan sized from another's share differs from theirs: by numbers where they showed their rows, else from one's own side. */
export const whyApartDesk: Desk<'why_apart'> = async ({ of }, at) => {
  const meant = await planMeant(at);
  if ('reply' in meant) return meant;
  const { held } = meant.ask.shared ?? {};
  const share = held && (await at.store.shares.get(held.shareId));
  if (share === undefined) return shareRefusal(at, { code: 'nothing_beside' });
  const owner = capital(await ownerName(share, at));
  const mine = countsOf(meant.plan);
  const told =
    share.counts === undefined || share.isWithdrawn
      ? ownSide(of, mine, owner)
      : bothSides(of, mine, share.counts, owner);
  const lines = of === 'rows' ? told.lines : [...told.lines, ...leftOpen(meant.plan, meant.ask)];
  return { reply: { kind: 'answer', isOwn: true, lead: told.lead, lines, examples: [], offers: [] }, talk: at.talk };
};

type Told = { lead: Words; lines: Words[] };

const ROWS_SIDE = say`The closer the rows, the more of them the same size takes.`;
const NEEDLES_SIDE = say`Needles and the width of a stitch set that side; rows cannot change it.`;

/** Nothing of the owner but that they show no rows. */
const ownSide = (of: Of, mine: SharedCounts, owner: string): Told => ({
  lead: say`${owner} shows no rows, so I tell your side only`,
  lines: [
    say`Yours: ${inWords(mine)}.`,
    ...(of === 'across' ? [] : [ROWS_SIDE]),
    ...(of === 'rows' ? [] : [NEEDLES_SIDE]),
    say`Should ${owner} share rows and needles as well, both stand side by side.`,
  ],
});

const bothSides = (of: Of, mine: SharedCounts, theirs: SharedCounts, owner: string): Told => ({
  lead: leadOf(of, mine, theirs, owner),
  lines: [...besideOwner(mine, theirs, owner), of === 'rows' ? ROWS_SIDE : NEEDLES_SIDE],
});

function leadOf(of: Of, mine: SharedCounts, theirs: SharedCounts, owner: string): Words {
  if (of === 'rows') return say`You knit ${count(mine.rows, 'row')}, ${owner} ${theirs.rows}`;
  if (of === 'both' || mine.across === undefined || theirs.across === undefined) return say`Yours beside ${owner}'s`;
  return say`Yours is ${length(mine.across.mm)} ${mine.across.adjective}, ${owner}'s ${length(theirs.across.mm)}`;
}

/** That the plan asks nothing of a side that the needles set. */
const leftOpen = ({ sizes }: Plan, { values }: PlanAsk): Words[] =>
  sizes.flatMap(({ id, axis, expectedMm, adjective }) =>
    axis === 'needles' && expectedMm !== undefined && values[id] === undefined
      ? [say`The plan leaves that side open, so ${length(expectedMm)} ${adjective} is within it.`]
      : [],
  );
