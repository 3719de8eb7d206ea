import { type Plan, pieceById, say } from '../../core/index.js';
import { GLOSSARY } from '../glossary.js';
import { type At, type Desk, refusal } from './desk.js';
import { capital } from './names.js';
import { tried } from './plan/planning.js';
import { workMeant } from './work/work-meant.js';

/** The plan in hand, else that of the work in hand, made again; undefined where there is none. */
async function planInHand(at: At): Promise<Plan | undefined> {
  const { subject } = at.talk;
  const ask = subject?.sizes === undefined && subject !== undefined ? subject : (await workMeant({}, at))?.ask;
  const piece = pieceById(ask?.piece ?? '');
  const outcome = ask === undefined || piece === undefined ? undefined : (await tried(ask, piece, at)).outcome;
  return outcome?.ok ? outcome.value : undefined;
}

const stepsOf = (plan: Plan | undefined, ids: readonly string[]): Plan['steps'][number][] =>
  (plan?.steps ?? []).filter(({ id }) => ids.includes(id));

/** What a term means, and the step of the maker's own plan in which it matters. Stores nothing. */
export const meaningDesk: Desk<'meaning'> = async ({ term }, at) => {
  const found = GLOSSARY.find(({ words }) => words.includes(term));
  if (found === undefined) return refusal(at, { code: 'unread', why: 'nothing', words: term });
  const plan = found.steps && (await planInHand(at));
  const [step] = stepsOf(plan, found.steps ?? []);
  const where = plan && step ? [say`In your ${plan.label.toLowerCase()}: ${step.say}`] : [];
  const lead = say`${capital(term)}`;
  const examples = step === undefined ? ['help'] : ['steps'];
  return {
    reply: { kind: 'answer', lead, lines: [say`${found.means}`, ...where], examples, offers: [] },
    talk: at.talk,
  };
};

/** The steps of the maker's own plan that do a part of it. Stores nothing. */
export const howToDesk: Desk<'how_to'> = async ({ said, steps: ids }, at) => {
  const plan = await planInHand(at);
  if (plan === undefined) return refusal(at, { code: 'no_plan_yet' });
  const steps = stepsOf(plan, ids);
  const label = plan.label.toLowerCase();
  const lead = steps.length === 0 ? say`Your ${label} has no such step` : say`How to ${said}: your ${label}`;
  const lines = steps.length === 0 ? [say`I looked for how to ${said}.`] : steps.map((step) => step.say);
  return { reply: { kind: 'answer', lead, lines, examples: ['steps'], offers: [] }, talk: at.talk };
};
