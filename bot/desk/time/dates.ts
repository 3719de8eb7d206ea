import { type Day, pieceById, say } from '../../../core/index.js';
import { longDay } from '../../day-words.js';
import type { NextUp } from '../../replies/home.js';
import type { Offered } from '../../reply.js';
import type { PlanAsk } from '../../request.js';
import { inHand } from '../batch/batch.js';
import { doneOf } from '../batch/batch-parts.js';
import type { At } from '../desk.js';
import { dayNumber } from './days.js';
import { zonedFor } from './zoned.js';

const OPEN: Offered = {
  button: 'Open the Batch',
  say: 'how is the batch going',
  request: { kind: 'batch', act: 'show' },
};

/** The days that come: of the batch in hand, then of pieces that are for a day, soonest first. */
export async function datesComing(asks: readonly PlanAsk[], at: At): Promise<NextUp[]> {
  const batch = await inHand(at);
  const dated = asks.flatMap(({ piece, due }) => (due === undefined ? [] : [{ piece, day: dayNumber(due.day) }]));
  if (batch === undefined && dated.length === 0) return [];
  const { day: today } = await zonedFor(at);
  const ready = (day: Day): string => `${day < today ? 'was to be' : 'to be'} ready by ${longDay(day, today)}`;
  const label = (piece = ''): string => pieceById(piece)?.label.toLowerCase() ?? 'piece';
  return [
    ...(batch === undefined
      ? []
      : [
          {
            say: say`Batch of ${batch.pieces}, ${label(batch.ask.piece)}: ${doneOf(batch)} done, ${ready(batch.dueDay)}.`,
            offer: OPEN,
          },
        ]),
    ...dated.sort((a, b) => a.day - b.day).map(({ piece, day }) => ({ say: say`The ${label(piece)}: ${ready(day)}.` })),
  ];
}
