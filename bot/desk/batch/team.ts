import type { BotProblem } from '../../problems.js';
import type { Team } from '../../request.js';
import type { BatchPart, Maker } from '../../store/ports.js';
import type { At } from '../desk.js';

/** The maker a name means: by what Slack calls them, by their name, or by its first word where only one has it. */
export function makerCalled(said: string, makers: readonly Maker[], me: Maker): Maker | undefined {
  const key = said.toLowerCase();
  if (key === 'me') return me;
  const byId = makers.find(({ slackUserId }) => slackUserId.toLowerCase() === key);
  const byName = makers.filter(({ name }) => name.toLowerCase() === key);
  const byFirst = makers.filter(({ name }) => name.toLowerCase().split(' ')[0] === key);
  const found = byName.length > 0 ? byName : byFirst;
  return byId ?? (found.length === 1 ? found[0] : undefined);
}

/** Those of a team as the parts of a batch, nothing dealt yet; or who is not known. */
export async function partsFor({ names, knit, finish }: Team, at: At): Promise<BatchPart[] | BotProblem> {
  const makers = await at.store.makers.all();
  const parts: BatchPart[] = [];
  for (const said of names) {
    const maker = makerCalled(said, makers, at.maker);
    if (maker === undefined) {
      const others = makers.flatMap(({ id, name }) => (id === at.maker.id || name === '' ? [] : [name]));
      return { code: 'not_in_team', said, makers: others };
    }
    const stages = knit === undefined ? (['whole'] as const) : stagesOf(said, knit, finish);
    for (const stage of stages) {
      if (parts.some((part) => part.makerId === maker.id && part.stage === stage)) continue;
      parts.push({ makerId: maker.id, stage, share: 0, done: 0, away: [], isOut: false });
    }
  }
  return parts;
}

const stagesOf = (said: string, knit: string, finish: string | undefined) => [
  ...(said === knit ? (['knit'] as const) : []),
  ...(said === finish ? (['finish'] as const) : []),
];
