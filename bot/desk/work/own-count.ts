import { outcomeOf, say } from '../../../core/index.js';
import type { Offered } from '../../reply.js';
import { type At, type Desk, refusal } from '../desk.js';
import { rowProblems } from '../gauge/gauge-checks.js';
import { type PlanMeant, planMeant } from '../plan/plan-meant.js';

/** A count of the maker's own beside that of the plan, with what each would come to. Nothing moves until they choose. */
export const ownCountDesk: Desk<'own_count'> = async ({ rows: told, by = 0 }, at) => {
  const meant = await planMeant(at);
  if ('reply' in meant) return meant;
  const { plan } = meant;
  const mine = meant.work?.work.stopAt ?? plan.rows;
  const rows = told ?? mine + by;
  const problems = rowProblems('Rows', rows);
  if (problems.length > 0) return refusal(at, ...problems);
  if (rows === mine) {
    const lead = say`${rows} rows is my count too`;
    return {
      reply: { kind: 'answer', lead, lines: [], examples: [`why ${rows}`], isOwn: true, offers: [] },
      talk: at.talk,
    };
  }
  return {
    reply: {
      kind: 'answer',
      lead: say`Your ${rows} rows or ${mine}: you choose`,
      lines: [
        say`Your ${outcomeOf(plan, rows)}`,
        outcomeOf(plan, mine),
        say`What did one of yours with ${rows} rows measure? A finished piece outranks any argument.`,
      ],
      examples: [`why ${rows}`],
      isOwn: true,
      offers: choices(rows, mine, meant, at),
    },
    talk: at.talk,
  };
};

/** On the machine a stop row is chosen; else the row to start for. */
function choices(rows: number, mine: number, { work }: PlanMeant, { talk: { planId } }: At): Offered[] {
  if (work !== undefined) {
    const workId = work.work.id;
    return [
      { button: `Use ${rows}`, say: `stop at ${rows}`, request: { kind: 'set_stop', rows, workId } },
      { button: `Stay With ${mine}`, say: `stay with ${mine}`, request: { kind: 'set_stop', rows: mine, workId } },
    ];
  }
  return [
    { button: `Start With ${rows}`, say: `start with ${rows} rows`, request: { kind: 'start', planId, rows } },
    { button: `Start With ${mine}`, say: 'start', request: { kind: 'start', planId } },
  ];
}
