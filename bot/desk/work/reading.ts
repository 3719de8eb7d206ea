import { type Doubt, doubtOf, length, type Plan, type Reading, say } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import { inUnits } from '../../language/lengths.js';
import type { Offered } from '../../reply.js';
import type { Request } from '../../request.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { lengthProblems, rowProblems } from '../gauge/gauge-checks.js';
import { mmOfValue } from '../gauge/measured.js';
import { UNDO } from '../offers.js';
import { asked, unitsQuestion } from '../question.js';
import { readAs, typedSize } from '../typed.js';
import { plannedWith, type WorkMeant, workMeant } from './work-meant.js';

type ReadingRequest = Request & { kind: 'reading' };

/** A length of the work in hand, at a row → where to stop. A reading that cannot be true is asked about first. */
export const readingDesk: Desk<'reading'> = async (wanted, at) => {
  const meant = await workMeant(wanted, at);
  if (meant === undefined) return refusal(at, { code: 'no_work' });
  // A question is about this work, whatever is on the machines when it is answered.
  const request = { ...wanted, workId: meant.work.id };
  const typed = inUnits(request.length, at.maker.units);
  const row = request.row ?? meant.work.rows;
  const problems = [...lengthProblems('Length', typed), ...rowProblems('Row', row, 0)];
  if (problems.length > 0) return refusal(at, ...problems);
  if (typed.is === 'bare') return unitsQuestion({ ...request, length: typed }, typed.said ?? '', at);
  if (row === 0) return rowQuestion(request, at);

  const state = request.state ?? lastRead(meant.readings)?.state ?? 'hanging';
  const reading: Reading = { row, lengthMm: mmOfValue(typed), state };
  const asItStands = await plannedWith(meant, at);
  if (!asItStands.ok) return refusal(at, ...asItStands.problems);
  const doubt = request.confirmed ? undefined : doubtOf(asItStands.value.onMachine, reading, meant.readings);
  if (doubt !== undefined) return doubtQuestion(request, reading, doubt, at);
  return kept(meant, reading, { ...request, length: typed }, at);
};

/** The reading taken last, whatever its row. */
const lastRead = (readings: WorkMeant['readings']) => [...readings].sort((a, b) => a.at - b.at).at(-1);

async function kept(meant: WorkMeant, reading: Reading, request: ReadingRequest, at: At): Promise<DeskAnswer> {
  const { work } = meant;
  const readings = [...meant.readings, reading].sort((a, b) => a.row - b.row);
  const knitted = Math.max(work.rows, reading.row);
  const outcome = await plannedWith(meant, at, { readings, knitted });
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  const stopAt = outcome.value.rows;

  const id = at.newId();
  const stateAssumed = request.state === undefined;
  const said = `row ${reading.row}, ${typedSize(request.length)}, ${reading.state}`;
  await at.store.readings.add({ ...reading, id, workId: work.id, said, at: at.now });
  const effects: Effect[] = [{ did: 'read', id }];
  if (knitted !== work.rows) {
    const entry = { kind: 'to' as const, rows: knitted, said: `row ${knitted}`, at: at.now };
    effects.push({ did: 'counted', workId: work.id, seq: await at.store.works.count(work.id, entry) });
  }
  if (stopAt !== work.stopAt) {
    await at.store.works.stopAt(work.id, stopAt);
    effects.push({ did: 'moved_stop', workId: work.id, from: work.stopAt, to: stopAt });
  }
  const talk = withStored({ ...at.talk, workId: work.id, pending: undefined }, said, effects, {
    ...request,
    workId: work.id,
    row: reading.row,
    state: reading.state,
  });
  const reply = correction(meant, outcome.value, { said, stateAssumed, reading });
  return { reply: { ...reply, assumed: readAs([request.length]) }, talk };
}

function correction(
  { work, ask, profile }: WorkMeant,
  plan: Plan,
  read: { said: string; stateAssumed: boolean; reading: Reading },
) {
  const stopped: Offered = {
    button: `Stay With ${work.stopAt}`,
    say: `stay with ${work.stopAt}`,
    request: { kind: 'set_stop', workId: work.id, rows: work.stopAt },
  };
  return {
    kind: 'correction' as const,
    plan,
    ask,
    machine: profile.machine,
    stopBefore: work.stopAt,
    read,
    offers: [...(plan.rows === work.stopAt ? [] : [stopped]), UNDO],
  };
}

const rowQuestion = (request: ReadingRequest, at: At): DeskAnswer =>
  asked(at, request, ['row'], {
    asks: say`Which row are you at?`,
    because: say`A length tells the tension only with the rows it holds. Your tally stands at 0.`,
    examples: ['row 60', 'never mind'],
  });

/** The likeliest slips as buttons; nothing is stored yet. */
function doubtQuestion(request: ReadingRequest, reading: Reading, doubt: Doubt, at: At): DeskAnswer {
  const right: Offered = { button: 'It Is Right', say: 'it is right', request: { ...request, confirmed: true } };
  if (doubt.is === 'shorter_than_before') {
    const { row, lengthMm } = doubt.before;
    return asked(at, { ...request, confirmed: true }, ['confirm'], {
      asks: say`Is ${length(reading.lengthMm)} at row ${reading.row} right?`,
      because: say`Row ${row} read ${length(lengthMm)}: a piece that grows cannot get shorter. Nothing is stored yet.`,
      examples: ['it is right', 'never mind'],
      offers: [right],
    });
  }
  return asked(at, { ...request, confirmed: true }, ['confirm'], {
    asks: say`Is it row ${doubt.likelyRow}, or ${length(doubt.expectedMm)}?`,
    because: say`At row ${reading.row} I expect about ${length(doubt.expectedMm)}; ${length(reading.lengthMm)} is far more than pieces usually differ. Nothing is stored yet.`,
    examples: [`row ${doubt.likelyRow}`, 'it is right', 'never mind'],
    offers: [right, { button: `Row ${doubt.likelyRow}`, request: { ...request, row: doubt.likelyRow } }],
  });
}
