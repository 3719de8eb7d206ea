import { say, weighed } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import { inUnits } from '../../language/lengths.js';
import type { Offered } from '../../reply.js';
import { type Desk, refusal } from '../desk.js';
import { lengthProblems, rowProblems } from '../gauge/gauge-checks.js';
import { mmOfValue } from '../gauge/measured.js';
import { formOffer } from '../offers.js';
import { asked, unitsQuestion } from '../question.js';
import { atRow, plannedWith, workMeant, workShown } from './work-meant.js';

/**
 * Two counters that disagree: both are kept, the work goes on from the smaller, since rows too many can be pulled back
 * and rows too few cannot be added, and a length weighs them against each other.
 */
export const lostCountDesk: Desk<'lost_count'> = async (wanted, at) => {
  const meant = await workMeant(wanted, at);
  if (meant === undefined) return refusal(at, { code: 'no_work' });
  const request = { ...wanted, workId: meant.work.id };
  const { work, readings } = meant;
  const [first, second] = request.counts;
  const typed = request.length && inUnits(request.length, at.maker.units);
  const problems = [
    ...request.counts.flatMap(({ rows }) => rowProblems('Row', rows)),
    ...lengthProblems('Length', typed),
  ];
  if (problems.length > 0) return refusal(at, ...problems);
  if (typed?.is === 'bare') return unitsQuestion({ ...request, length: typed }, typed.said ?? '', at);
  if (first === undefined && typed === undefined) {
    return asked(at, request, ['length'], {
      asks: say`What do your counters show, or how long is the work?`,
      because: say`Two counts, or a length, tell me about where you are.`,
      examples: [
        'the machine says 64, my hand counter 62',
        at.maker.units === 'cm' ? 'it hangs 31 cm' : 'it hangs 12 1/4 in',
        'never mind',
      ],
      offers: [formOffer('lost_count')],
    });
  }

  const outcome = await plannedWith(meant, at);
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  const counts = [first?.rows ?? work.rows, second?.rows ?? first?.rows ?? work.rows] as const;
  const state = request.state ?? readings.at(-1)?.state ?? 'hanging';
  const agreed = readings.filter(({ row }) => row <= Math.min(...counts));
  const verdict = typed && weighed(outcome.value.onMachine, counts, { lengthMm: mmOfValue(typed), state }, agreed);

  const working =
    verdict?.trust === 'first' ? counts[0] : verdict?.trust === 'second' ? counts[1] : Math.min(...counts);
  const rows = first === undefined ? work.rows : working;
  const said = request.counts.map((one) => `${one.name} ${one.rows}`).join(', ');
  const stored = rows !== work.rows || second !== undefined;
  const seq = stored && (await at.store.works.count(work.id, { kind: 'lost', rows, said, at: at.now }));
  const shown = await workShown(atRow(meant, rows), at);
  const offers: Offered[] = [...new Set(counts.filter((count) => count > 0))].map((count) => ({
    button: `Keep ${count}`,
    say: `keep ${count}`,
    request: { kind: 'tally', workId: work.id, to: count, settles: true },
  }));
  const talk = { ...at.talk, workId: work.id };
  // Until one of them is kept the counts stay open: for a length, then for the choice.
  const settled = second === undefined || verdict?.trust !== undefined;
  const waits = { request, holes: [typed === undefined ? 'length' : 'count'], until: at.openUntil };
  const open = { ...talk, pending: settled && typed !== undefined ? undefined : waits };
  return {
    reply: { kind: 'counts', work: shown, counts: request.counts, state, length: typed, verdict, offers },
    talk: seq === false ? open : withStored(open, `the counts ${said}`, [{ did: 'counted', workId: work.id, seq }]),
  };
};
