import { count, pieceById, say, type Words } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Reply, WorkShown } from '../../reply.js';
import type { StoredPlan, Work } from '../../store/ports.js';
import { counting, turnOfWork } from '../../work-card.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { rowProblems } from '../gauge/gauge-checks.js';
import { machineName } from '../names.js';
import { UNDO } from '../offers.js';
import { tried } from '../plan/planning.js';
import { whichSize } from '../plan/which-size.js';
import { setAside } from './set-aside.js';
import { workMeant, workShown } from './work-meant.js';
import { countOffers } from './work-offers.js';

/** A plan → a piece on the machine, its tally at 0. One machine holds one piece. */
export const startDesk: Desk<'start'> = async ({ planId, rows }, at) => {
  const problems = rows === undefined ? [] : rowProblems('Rows', rows);
  if (problems.length > 0) return refusal(at, ...problems);
  const which = planId === undefined ? whichSize(at) : undefined;
  if (which !== undefined) return which;
  const stored = await planToStart(planId, at);
  const piece = pieceById(stored?.piece ?? '');
  if (stored === undefined || piece === undefined) return refusal(at, { code: 'no_plan_yet' });
  const { outcome, profile, ask } = await tried(stored.ask, piece, at);
  if (!outcome.ok || profile === undefined) return refusal(at, ...(outcome.ok ? [] : outcome.problems));

  const machine = { name: ask.on.machine ?? profile.machine.name, needles: ask.on.needles };
  const busy = await workMeant({ on: { machine: machine.name } }, at);
  if (busy !== undefined) return busy.work.planId === stored.id ? standing(busy.work, at) : busyQuestion(busy.work, at);

  // On a machine whose gauge is borrowed it is that machine's profile that the piece will teach.
  const profileOfMachine = await at.store.profiles.opened(
    at.maker.id,
    machine,
    profile.yarn.name,
    profile.tension,
    at.now,
  );
  const work: Work = {
    id: at.newId(),
    makerId: at.maker.id,
    planId: stored.id,
    profileId: profileOfMachine.id,
    stopAt: rows ?? outcome.value.rows,
    rows: 0,
    startedAt: at.now,
    endedAt: undefined,
  };
  await at.store.works.start({ ...work, at: at.now });
  const aside = await setAside(work.id, outcome.value, profileOfMachine, at);
  const said = `start of the ${piece.label.toLowerCase()}`;
  const effects = [{ did: 'started' as const, workId: work.id }, ...aside.effects];
  const talk = withStored({ ...at.talk, workId: work.id }, said, effects);
  const mine = outcome.value.rows;
  const owned = rows === undefined || rows === mine ? [] : [say`Your count. Mine is ${mine}.`];
  return standing(work, { ...at, talk }, [...owned, ...aside.notes]);
};

/** The plan a button names, else the last of this talk, else the last made anywhere. */
const planToStart = async (planId: string | undefined, at: At): Promise<StoredPlan | undefined> => {
  const id = planId ?? at.talk.planId;
  return id === undefined ? at.store.plans.latest(at.maker.id) : at.store.plans.get(id, at.maker.id);
};

async function standing(work: Work, at: At, notes: readonly Words[] = []): Promise<DeskAnswer> {
  const meant = await workMeant({ workId: work.id }, at);
  if (meant === undefined) throw new Error('work that was started is not there');
  const shown = await workShown(meant, at);
  const talk = { ...at.talk, workId: work.id };
  const reply: Reply = { kind: 'work', became: 'started', work: shown, notes, offers: countOffers(shown) };
  return at.place.startsWith('command:') ? inDirect(shown, reply, { ...at, talk }) : { reply, talk };
}

/** The answer to a command is gone after a reload: what lasts goes to the direct message, and the answer says so. */
function inDirect(work: WorkShown, counter: Reply, { maker, talk }: At): DeskAnswer {
  // A person's id in place of a channel opens the direct message with them.
  const to = { to: 'post' as const, channel: maker.slackUserId };
  const offers = counting(work.id, work.rows);
  const told = say`${work.label} on ${machineName(work.machine)}: ${count(work.stopAt, 'row')}`;
  return {
    reply: {
      kind: 'answer',
      lead: say`Started, and counted in our direct message`,
      lines: [say`${told}. Its row counter is there, where it stays; this answer will be gone when you reload.`],
      examples: [],
      offers: [UNDO],
    },
    talk,
    letters: [{ to, turn: turnOfWork(work.id), reply: { ...counter, offers }, units: maker.units }],
  };
}

async function busyQuestion(busy: Work, at: At): Promise<DeskAnswer> {
  const meant = await workMeant({ workId: busy.id }, at);
  const label = meant?.piece.label.toLowerCase() ?? 'piece';
  const machine = meant === undefined ? 'your machine' : machineName(meant.profile.machine);
  return {
    reply: {
      kind: 'question',
      asks: say`Is the ${label} at row ${busy.rows} off ${machine}?`,
      because: say`A machine holds one piece at a time. Then say start again.`,
      examples: ['done', 'give it up', 'never mind'],
      offers: [
        { button: 'It Is Done', request: { kind: 'finish', workId: busy.id, sizes: [] } },
        { button: 'Give It Up', request: { kind: 'give_up', workId: busy.id } },
      ],
    },
    talk: { ...at.talk, workId: busy.id },
  };
}
