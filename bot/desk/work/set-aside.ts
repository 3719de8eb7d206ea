import { mass, type Plan, say, type Words, type YarnNeed } from '../../../core/index.js';
import type { Effect } from '../../effect.js';
import type { Lot, LotMove, Profile } from '../../store/ports.js';
import type { At } from '../desk.js';
import { capital, sameName } from '../names.js';
import { freeOf, lotName, milligrams } from '../yarn/lots.js';
import { isSameThing } from '../yarn/thing-meant.js';

/** What work did on the shelf, and what to say of it. */
export type OnShelf = { effects: Effect[]; notes: Words[] };

/** A lot that the yarn of a plan can come from, and how much of it that is, in mg. */
type Source = { lot: Lot; need: number };

/** How often another maker may be quicker. */
const TRIES = 3;

/**
 * Sets the yarn of one piece aside: from the smallest lot that holds it all, the maker's own before the team's, so that
 * large lots stay whole; else from the largest, and says that it will not do. Says whether there are notions enough.
 */
export async function setAside(workId: string, plan: Plan, { yarn }: Profile, at: At): Promise<OnShelf> {
  const notes = await notionNotes(plan, at);
  const nothing = (why: Words): OnShelf => ({ effects: [], notes: [...notes, say`Nothing set aside: ${why}`] });
  for (let tries = 0; tries < TRIES; tries++) {
    const lots = (await at.store.shelf.of(at.maker.id)).filter(
      (lot) => lot.kind === 'yarn' && lot.left > 0 && sameName(lot.name, yarn.name),
    );
    if (lots.length === 0 || plan.yarn === undefined) return { effects: [], notes };
    const free = lots.filter((lot) => freeOf(lot) > 0);
    if (free.length === 0) return nothing(say`all ${yarn.name} on the shelf is promised to other work.`);
    const source = bestOf(sourcesOf(free, lots, yarn.tex, plan.yarn));
    if (source === undefined) return nothing(say`tell me what a ball of ${yarn.name} weighs and holds.`);
    const { lot, need } = source;
    const aside = Math.min(need, freeOf(lot));
    const move: LotMove = { id: at.newId(), lotId: lot.id, workId, left: 0, aside, said: 'set aside', at: at.now };
    if (await at.store.shelf.move(move))
      return {
        effects: [{ did: 'moved_stock', moveId: move.id, lotId: lot.id }],
        notes: [asideNote(lot, need, aside), ...notes],
      };
  }
  return nothing(say`others were quicker. Say "team shelf" for what is left.`);
}

/**
 * Each lot with what it would give, where the mass of so much yarn is known: as the plan tells it, else by its ball, one
 * like it, or the yarn's count.
 */
function sourcesOf(
  free: readonly Lot[],
  lots: readonly Lot[],
  tex: number | undefined,
  { massG, lengthM }: YarnNeed,
): Source[] {
  if (massG !== undefined) return free.map((lot) => ({ lot, need: milligrams(massG) }));
  const like = lots.find(({ ball }) => ball !== undefined)?.ball;
  return free.flatMap((lot) => {
    const ball = lot.ball ?? like;
    const perM = ball === undefined ? tex && tex / 1000 : (1000 * ball.massG) / ball.lengthMm;
    return perM === undefined ? [] : [{ lot, need: milligrams(lengthM * perM) }];
  });
}

function bestOf(sources: readonly Source[]): Source | undefined {
  const enough = sources.filter(({ lot, need }) => freeOf(lot) >= need);
  const isTeam = ({ lot }: Source): number => Number(lot.owner === '');
  const [smallest] = enough.sort((a, b) => isTeam(a) - isTeam(b) || freeOf(a.lot) - freeOf(b.lot));
  const [largest] = [...sources].sort((a, b) => freeOf(b.lot) - freeOf(a.lot) || isTeam(a) - isTeam(b));
  return smallest ?? largest;
}

function asideNote(lot: Lot, need: number, aside: number): Words {
  const left = mass((freeOf(lot) - aside) / 1000);
  if (aside === need) return say`Set aside: ${mass(aside / 1000)} of ${lotName(lot)} (${left} left).`;
  return say`Set aside: ${mass(aside / 1000)} of ${lotName(lot)}, all it has free. This takes about ${mass(need / 1000)}: it will not be from one lot.`;
}

/** Notions of a plan by the piece that the shelf holds under the same plain name, and in which lots. */
export const notionsHeld = ({ notions }: Plan, lots: readonly Lot[]) =>
  notions.flatMap((notion) => {
    if ('massG' in notion || notion.cutMm !== undefined) return [];
    const { one, many = `${one}s`, count } = notion;
    const held = lots.filter((lot) => lot.kind === 'notion' && isSameThing(lot.name, one, 'notion'));
    return held.length === 0 ? [] : [{ name: many, count, held }];
  });

async function notionNotes(plan: Plan, at: At): Promise<Words[]> {
  return notionsHeld(plan, await at.store.shelf.of(at.maker.id)).map(({ name, count, held }) => {
    const there = held.reduce((sum, { left }) => sum + left, 0);
    const short = there < count ? say`, so ${count - there} short` : say``;
    return say`${capital(name)} on the shelf: ${there}; this takes ${count}${short}.`;
  });
}
