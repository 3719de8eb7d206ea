import { pieceById, pieces, say } from '../../core/index.js';
import { withChange } from '../conversation.js';
import type { BotProblem } from '../problems.js';
import type { Offered } from '../reply.js';
import { type Desk, refusal } from './desk.js';
import { MY_GAUGE, PLAN, RECORD, UNDO } from './offers.js';
import { oldCard } from './old-card.js';
import { saidAgain } from './plan/plan.js';
import { standing } from './standing.js';

const TALLY: Offered = { button: 'Open the Tally', say: 'tally', request: { kind: 'where', on: {} } };

/** Requests about the talk itself rather than about knitting. */
export const helpDesk: Desk<'help'> = async (_request, { maker, store, talk }) => {
  const profiles = await store.profiles.of(maker.id);
  const last = pieceById((await store.plans.latest(maker.id))?.piece ?? '');
  const examples = [...new Set([...(last === undefined ? [] : [last]), ...pieces])].map((piece) => piece.example);
  const [next] = await store.works.open(maker.id);
  const others = profiles.filter(({ machine }) => machine.id !== profiles[0]?.machine.id);
  const yarns = (await store.shelf.of(maker.id)).filter(({ kind, left }) => kind === 'yarn' && left > 0);
  const first = profiles.length === 0;
  return {
    reply: {
      kind: 'help',
      first,
      examples,
      next,
      machine: others.map(({ machine }) => machine.name).find(isSayable),
      yarn: yarns.map(({ name }) => name).find(isSayable),
      offers: first ? [{ ...RECORD, primary: true }, PLAN] : [...(next === undefined ? [] : [TALLY]), PLAN, MY_GAUGE],
    },
    talk,
  };
};

/** True for a name that stands in an example as it is typed. */
const isSayable = (name: string): boolean => /^[\p{L}\d ]{1,30}$/u.test(name);

export const dropDesk: Desk<'drop'> = async (_request, at) => {
  const lead = at.talk.pending === undefined ? say`Nothing was waiting` : say`Dropped`;
  const lines =
    at.talk.planId === undefined ? [] : [say`Your last plan is still here: say "steps" or change its size.`];
  return { reply: { kind: 'answer', lead, lines, examples: [], offers: [] }, talk: { ...at.talk, pending: undefined } };
};

export const thanksDesk: Desk<'thanks'> = async (_request, { talk }) => {
  const put = talk.pending?.put;
  const lead = say`I'm here for the next one.`;
  const lines = put === undefined ? [] : [say`I am still asking: ${put.asks}`];
  return { reply: { kind: 'answer', lead, lines, examples: put?.examples ?? [], offers: [] }, talk };
};

/** To delete a message takes nothing back: what it stored is named, and how to. */
export const deletedDesk: Desk<'deleted'> = async (_request, at) => {
  const last = at.talk.changes.findLast(({ undone }) => !undone);
  if (last === undefined) return refusal(at, { code: 'nothing_to_undo', redo: false });
  const lead = say`Still here: ${last.said}`;
  const lines = [say`To delete a message takes nothing back. "Undo" does.`];
  return { reply: { kind: 'answer', lead, lines, examples: [], offers: [UNDO] }, talk: at.talk };
};

/** The maker's units; a plan in hand is said again in them. */
export const setUnitsDesk: Desk<'set_units'> = async ({ units }, at) => {
  await at.store.makers.setUnits(at.maker.id, units);
  const said = `bare numbers in ${units === 'cm' ? 'centimetres' : 'inches'}`;
  const change = { kind: 'units' as const, id: units, said, before: at.maker.units };
  const lead = say`From now on I read ${said}`;
  const reply = (await saidAgain([say`${said} from now on`], at)) ?? {
    kind: 'answer' as const,
    lead,
    lines: [],
    examples: ['undo'],
    offers: [],
  };
  return { reply, talk: withChange({ ...at.talk, leadsIn: units }, change) };
};

/** `words` of a button that has expired are the turn of its card. */
export const unreadDesk: Desk<'unread'> = async ({ why, words }, at) => {
  const unmade = why === 'not_made' ? notMade(words) : undefined;
  if (unmade !== undefined) return refusal(at, unmade);
  if (why === 'expired') return oldCard(words, at);
  return refusal(at, { code: 'unread', why, words, ...(LEADS_ON.includes(why) && { standing: await standing(at) }) });
};

/** The kind that comes nearest to a thing that none makes. */
function notMade(said: string): BotProblem | undefined {
  for (const { label, example, nearestTo = [] } of pieces) {
    const near = nearestTo.find(({ words }) => words.includes(said.toLowerCase()));
    if (near !== undefined) return { code: 'not_made', said, nearest: label, lacks: near.lacks, example };
  }
  return undefined;
}

/** Words of which nothing could be made: what can be said now leads on from there. */
const LEADS_ON: readonly string[] = ['nothing', 'no_plan', 'no_work', 'words', 'colour_alone', 'whom_with'];
