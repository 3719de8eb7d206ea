import type { Conversation } from '../../conversation.js';
import { inUnits } from '../../language/lengths.js';
import type { Request } from '../../request.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { putBack, takenBack } from '../effects.js';
import { recordGaugeDesk } from '../gauge/record-gauge.js';
import { unitsQuestion } from '../question.js';
import { amended } from '../slips.js';
import { stockDesk } from '../yarn/stock.js';
import { finishDesk } from './finish.js';
import { hasMovedOn } from './moved-on.js';
import { readingDesk } from './reading.js';

/**
 * A slip in what was said last put right: what it stored is taken back and the request done again with the figure that
 * was meant. The two are never averaged, and undo goes back to the first.
 */
export const correctDesk: Desk<'correct'> = async (request, at) => {
  const value = inUnits(request.value, at.maker.units);
  if (value.is === 'bare' && at.maker.units === undefined)
    return unitsQuestion({ ...request, value }, value.said ?? '', at);
  const last = at.talk.changes.findLast((change) => !change.undone && change.kind === 'stored' && change.request);
  const slip = last?.kind === 'stored' ? last.request : undefined;
  const again = slip && (amended(slip, request.value, request.was) ?? amended(slip, value, request.was));
  if (last?.kind !== 'stored' || again === undefined)
    return refusal(at, { code: 'nothing_to_correct', said: value.said ?? '' });

  if (await hasMovedOn(last.effects, false, at)) return refusal(at, { code: 'moved_on', said: last.said });
  await takenBack(last.effects, at.store, at.now);
  const answered = await doneAgain(again, at);
  if (answered.reply.kind === 'problem' || answered.reply.kind === 'question') {
    await putBack(last.effects, at.store, at.now);
    return answered;
  }
  const talk = replacing(answered.talk, last.effects);
  const { reply } = answered;
  return { reply: reply.kind === 'gauge' ? { ...reply, insteadOf: last.said } : reply, talk };
};

function doneAgain(request: Request, at: At): Promise<DeskAnswer> {
  switch (request.kind) {
    case 'record_gauge':
      return recordGaugeDesk(request, at);
    case 'reading':
      return readingDesk(request, at);
    case 'finish':
      return finishDesk(request, at);
    case 'stock':
      return stockDesk(request, at);
    default:
      throw new Error(`a ${request.kind} cannot be put right`);
  }
}

/** The talk whose last change stands in place of one that was taken back. */
function replacing(
  talk: Conversation,
  replaced: Extract<Conversation['changes'][number], { kind: 'stored' }>['effects'],
) {
  const last = talk.changes.at(-1);
  if (last?.kind !== 'stored') throw new Error('a correction that stored nothing');
  return { ...talk, changes: talk.changes.with(-1, { ...last, replaced, said: `the correction of ${last.said}` }) };
}
