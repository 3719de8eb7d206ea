import { pieceById, remedies } from '../../core/index.js';
import type { Offered } from '../reply.js';
import { type Desk, refusal } from './desk.js';
import { tried } from './planning.js';
import { whichSize } from './which-size.js';
import { plannedWith, workMeant } from './work-meant.js';

/** What would raise the landing chance of the plan in hand, worked out and best first. Nothing is stored. */
export const whatHelpsDesk: Desk<'what_helps'> = async (_, at) => {
  const inHand = at.talk.workId === undefined ? undefined : await workMeant({ workId: at.talk.workId }, at);
  // A plan made since the work began is what the maker asks about.
  const meant = at.talk.planId === undefined || at.talk.planId === inHand?.work.planId ? inHand : undefined;
  const ask = meant?.ask ?? at.talk.subject ?? (await at.store.plans.latest(at.maker.id))?.ask;
  const which = meant === undefined ? whichSize(at) : undefined;
  if (which !== undefined) return which;
  const piece = pieceById(ask?.piece ?? '');
  if (ask === undefined || piece === undefined) return refusal(at, { code: 'no_plan_yet' });
  const outcome = meant === undefined ? (await tried(ask, piece, at)).outcome : await plannedWith(meant, at);
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  const plan = outcome.value;
  const found = remedies(plan, meant?.readings, meant?.work.rows);
  const wider = found.flatMap((remedy): Offered[] =>
    remedy.is === 'wider'
      ? [
          {
            button: 'Allow More',
            say: 'allow more',
            request: {
              kind: 'plan',
              follows: true,
              ask: { ...ask, values: { ...ask.values, [plan.landing.dimension]: { is: 'window', ...remedy.window } } },
            },
          },
        ]
      : [],
  );
  const start: Offered[] =
    meant === undefined
      ? [{ button: 'Start Knitting', say: 'start', request: { kind: 'start', planId: at.talk.planId } }]
      : [];
  return {
    reply: { kind: 'helps', plan, ask, remedies: found, offers: [...start, ...wider] },
    talk: { ...at.talk, subject: ask },
  };
};
