import { type Rates, rates } from '../../../core/index.js';
import type { At } from '../desk.js';

/** How long each step takes this maker, as their bench log teaches it: the usual rate where nothing is logged. */
export const paceOf = async ({ store, maker }: Pick<At, 'store' | 'maker'>): Promise<Rates> =>
  rates(await store.benchLog.of(maker.id));
