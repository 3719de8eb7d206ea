import { remedies } from '../../../core/index.js';
import type { Offered } from '../../reply.js';
import type { Desk } from '../desk.js';
import { planMeant } from './plan-meant.js';

/** What would raise the landing chance of the plan in hand, worked out and best first. Nothing is stored. */
export const whatHelpsDesk: Desk<'what_helps'> = async (_, at) => {
  const meant = await planMeant(at);
  if ('reply' in meant) return meant;
  const { plan, ask, work } = meant;
  const found = remedies(plan, work?.readings, work?.work.rows);
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
    work === undefined
      ? [{ button: 'Start Knitting', say: 'start', request: { kind: 'start', planId: at.talk.planId } }]
      : [];
  return {
    reply: { kind: 'helps', plan, ask, remedies: found, offers: [...start, ...wider] },
    talk: { ...at.talk, subject: ask },
  };
};
