import { v7 } from 'uuid';
import { PlanAsk } from '../../bot/request.js';
import type { Bound, Store, StoredMeasurement, StoredPlan } from '../../bot/store/ports.js';

/** `heard` is told the text of every statement that is not part of opening, beginning or ending. */
export type Open = (heard?: (statement: string) => void) => Promise<Store>;

export const AT = 1_764_000_000_000;
export const HERE = { to: 'post', channel: 'C1' } as const;
export const CARD = { text: 'Knit 108 rows', blocks: [{ type: 'divider' }] };

/** The maker U1 of the workspace at hand, with a profile to hang things on. */
export async function openedProfile(s: Bound) {
  const maker = await s.makers.held('U1', 'Nadia', AT);
  return { maker, profile: await s.profiles.opened(maker.id, { name: 'red', needles: 46 }, 'grey', '', AT) };
}

export function reading(profileId: string): StoredMeasurement {
  return {
    id: v7(),
    profileId,
    swatch: 's1',
    state: 'rested',
    form: 'tube',
    rows: { count: 80, overMm: 378, how: 'read' },
    stitches: { count: 23, overMm: 196, how: 'counted' },
    needles: 46,
    massG: 52.5,
    unravelled: { stitches: 46, lengthMm: 1240 },
    said: '80 rows, 37.8 cm, 19.6 flat',
    note: 'after oiling',
    day: 20_416,
    workId: '',
    replaces: '',
    at: AT,
  };
}

export function plan(makerId: string, profileId: string): StoredPlan {
  return {
    id: v7(),
    makerId,
    piece: 'any',
    profileId,
    ask: PlanAsk.parse({ piece: 'any', values: { width: { is: 'length', mm: 279.4, said: '11 in' } } }),
    numbers: { needles: 46, rows: [108, 1.5], landing: null },
    engine: '1',
    at: AT,
  };
}
