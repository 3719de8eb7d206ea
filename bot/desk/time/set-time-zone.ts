import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import { type Desk, refusal } from '../desk.js';
import { putBack } from '../effects.js';
import { hoursReply } from './show-hours.js';
import { zoned } from './zoned.js';

/** The zone in which the maker's days begin and end. */
export const setTimeZoneDesk: Desk<'set_time_zone'> = async ({ zone }, at) => {
  const there = await zoned(at.now, zone);
  if (there === undefined) return refusal(at, { code: 'no_such_zone', said: zone });
  const effect: Effect = {
    did: 'set_time_zone',
    makerId: at.maker.id,
    before: at.maker.timeZone,
    after: there.zone,
  };
  await putBack([effect], at.store, at.now);
  return {
    reply: await hoursReply('zone', { ...at, maker: { ...at.maker, timeZone: there.zone } }),
    talk: withStored(at.talk, `time zone ${there.zone}`, [effect]),
  };
};
