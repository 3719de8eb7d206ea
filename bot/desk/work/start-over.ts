import { say } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import { type Desk, refusal } from '../desk.js';
import { giveUpDesk } from './give-up.js';
import { startDesk } from './start.js';
import { workMeant } from './work-meant.js';

/** The work given up and its plan started once more, at row 0: one change, which undo takes back whole. */
export const startOverDesk: Desk<'start_over'> = async (which, at) => {
  const meant = await workMeant(which, at);
  if (meant === undefined) return refusal(at, { code: 'no_work' });
  const { work, piece } = meant;
  const given = await giveUpDesk({ kind: 'give_up', workId: work.id }, at);
  const begun = await startDesk({ kind: 'start', planId: work.planId }, { ...at, talk: given.talk });
  const effects = [given, begun].flatMap(({ talk }) => {
    const last = talk.changes.at(-1);
    return last?.kind === 'stored' ? last.effects : [];
  });
  if (begun.reply.kind !== 'work') throw new Error('a plan that was begun once can be begun again');
  const talk = withStored(
    { ...begun.talk, changes: at.talk.changes },
    `starting the ${piece.label.toLowerCase()} again`,
    effects,
  );
  const notes = [say`The one at row ${work.rows} is given up; it teaches nothing.`, ...begun.reply.notes];
  return { reply: { ...begun.reply, notes }, talk };
};
