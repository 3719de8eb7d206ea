import { pieceById, pieces } from '../core/index.js';
import type { Visit } from './home.js';
import type { Bound, Maker } from './store/ports.js';
import type { Surroundings } from './surroundings.js';

/** Words that a maker can send with one press, and what is shown for them. */
export type Prompt = { title: string; message: string };

const MOST = 4;

/** Up to four prompts, of what this maker has in hand; none of them stores anything that is not true of it. */
export const promptsFor = ({ slackTeamId, slackUserId, at }: Visit, { store }: Surroundings): Promise<Prompt[]> =>
  store.within(slackTeamId, async (bound) => promptsOf(bound, await bound.makers.held(slackUserId, '', at)));

async function promptsOf(bound: Bound, maker: Maker): Promise<Prompt[]> {
  const [work] = await bound.works.open(maker.id);
  const unstarted = await bound.plans.unstarted(maker.id);
  const last = await bound.plans.latest(maker.id);
  const hasProfile = (await bound.profiles.of(maker.id)).length > 0;
  const piece = pieceById(last?.piece ?? '') ?? pieces[0];
  const label = piece?.label.toLowerCase() ?? 'piece';
  return [
    ...(work === undefined ? [] : [{ title: 'Where am I?', message: 'where am i' }]),
    ...(unstarted === undefined ? [] : [{ title: `Start the ${label}`, message: 'start' }]),
    ...(last === undefined ? [] : [{ title: 'What would help?', message: 'what would help' }]),
    hasProfile ? { title: 'My gauge', message: 'my gauge' } : { title: 'Record a gauge', message: 'record a gauge' },
    { title: `Rows for a ${label}`, message: piece?.example ?? 'plan a piece' },
    { title: 'What can I say?', message: 'help' },
  ].slice(0, MOST);
}
