import { count, pieceById, say } from '../../core/index.js';
import type { BenchShown, Few, NextUp } from '../replies/home.js';
import type { Lot, StoredPlan } from '../store/ports.js';
import type { At } from './desk.js';
import { measuredGauges } from './gauge/show-gauge.js';
import { machineName } from './names.js';
import { tried } from './plan/planning.js';
import { datesComing } from './time/dates.js';
import { withPlan, workShown } from './work/work-meant.js';
import { countOffers } from './work/work-offers.js';
import { freeOf, milligrams } from './yarn/lots.js';

const MOST = 5;

const few = <T>(all: readonly T[]): Few<T> => ({ few: all.slice(0, MOST), all: all.length });

/** The bench of a maker as Home shows it. Writes nothing. */
export async function benchShown(at: At): Promise<BenchShown> {
  const profiles = await at.store.profiles.of(at.maker.id);
  const open = few(await at.store.works.open(at.maker.id));
  const works = [];
  const asks = [];
  for (const work of open.few) {
    const meant = await withPlan(work, profiles, at);
    const shown = await workShown(meant, at);
    works.push({ ...shown, offers: countOffers(shown) });
    asks.push(meant.ask);
  }
  const waiting = await at.store.plans.unstarted(at.maker.id);
  const dates = await datesComing([...asks, ...(waiting === undefined ? [] : [waiting.ask])], at);
  return {
    works: { few: works, all: open.all },
    next: [...(await unmeasured(at)), ...(await unstarted(waiting, at)), ...dates],
    gauges: few(await measuredGauges(at)),
    low: few((await at.store.shelf.of(at.maker.id)).filter(isLow)),
  };
}

async function unmeasured(at: At): Promise<NextUp[]> {
  const done = await at.store.works.unmeasured(at.maker.id);
  const plan = done && (await at.store.plans.get(done.planId, at.maker.id));
  const label = pieceById(plan?.piece ?? '')?.label.toLowerCase();
  return label === undefined ? [] : [{ say: say`Measure the ${label} that is done, and tell me how it came out.` }];
}

async function unstarted(stored: StoredPlan | undefined, at: At): Promise<NextUp[]> {
  const piece = pieceById(stored?.piece ?? '');
  if (stored === undefined || piece === undefined) return [];
  const { outcome, profile, ask } = await tried(stored.ask, piece, at);
  if (!outcome.ok || profile === undefined) return [];
  const machine = machineName({ name: ask.on.machine ?? profile.machine.name });
  return [
    {
      say: say`Start the ${piece.label.toLowerCase()}: ${count(outcome.value.rows, 'row')} on ${machine}.`,
      offer: { button: 'Start Knitting', say: 'start', request: { kind: 'start', planId: stored.id } },
    },
  ];
}

/** Where no ball is known: common practice, no source. */
const LOW_G = 50;

/** Yarn of which less than a ball is free, but not used up. */
const isLow = (lot: Lot): boolean =>
  lot.kind === 'yarn' && lot.left > 0 && freeOf(lot) < milligrams(lot.ball?.massG ?? LOW_G);
