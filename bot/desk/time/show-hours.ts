import type { Words } from '../../../core/index.js';
import type { BenchReply } from '../../replies/bench.js';
import type { Reply } from '../../reply.js';
import type { At, Desk } from '../desk.js';
import { UNDO } from '../offers.js';
import { zonedFor } from './zoned.js';

/** The maker's hours, days off and time zone. */
export const showHoursDesk: Desk<'show_hours'> = async (_, at) => ({
  reply: await hoursReply('shown', at),
  talk: at.talk,
});

/** The hours, days off and time zone of a maker, and what became of them. */
export async function hoursReply(
  became: (BenchReply & { kind: 'hours' })['became'],
  at: Pick<At, 'maker' | 'now'>,
  assumed: readonly Words[] = [],
): Promise<Reply> {
  const { hours, timeZone } = at.maker;
  const { clock } = await zonedFor(at);
  return { kind: 'hours', became, hours, timeZone, clock, assumed, offers: became === 'shown' ? [] : [UNDO] };
}
