import { evidence, gauge } from '../../../core/index.js';
import { type Desk, refusal } from '../desk.js';
import { isOn } from './show-gauge.js';

/** The measurements behind a gauge, the newest first: that named, else the one used last. */
export const showPiecesDesk: Desk<'show_pieces'> = async ({ on }, at) => {
  for (const profile of (await at.store.profiles.of(at.maker.id)).filter((one) => isOn(one, on))) {
    const measurements = await at.store.measurements.of(profile.id);
    if (measurements.length === 0) continue;
    const used = { ...profile, gauge: gauge(evidence(measurements)) };
    return {
      reply: { kind: 'pieces', gauge: used, measurements: [...measurements].reverse(), offers: [] },
      talk: at.talk,
    };
  }
  return refusal(at, { code: 'no_such_piece', said: '', pieces: [] });
};
