import { pouch } from '../../../core/pieces/pouch.js';
import type { Rates, TimeLog } from '../../../core/timing/rates.js';
import { rates } from '../../../core/timing/rates.js';
import { DRIVERS, type Driver, USUAL_RATES } from '../../../core/timing/usual-rates.js';
import { mm, planOf } from '../samples.js';

/** 110 rows on 46 needles, folded, with two rings and an 8 in closure. */
export const POUCH = planOf(pouch, { width: mm(281.94), closure: mm(203.2) });

type Counted = { driver: Driver; count: number };
const counted = (counts: Partial<Record<Driver, number>>): Counted[] =>
  DRIVERS.flatMap((driver) => (counts[driver] === undefined ? [] : [{ driver, count: counts[driver] }]));

/** The same piece as it is worked by hand: at the machine 1734 s, at the table 3411 s at the usual rates. */
export const AT_MACHINE = counted({ set_up: 1, crank: 120 * 46, change: 2, measure: 1, run_off: 1 });
export const AT_TABLE = counted({
  take_out_waste: 10,
  mattress: 55,
  ring: 2,
  pin_closure: 1,
  turn_for_graft: 1,
  graft: 46,
  sew_closure: 406.4,
  weave_in: 6,
  check: 1,
});

export const graftTimes = (...seconds: number[]): TimeLog[] =>
  seconds.map((s, i) => ({ session: `${i}`, driver: 'graft', count: 46, seconds: 46 * s }));

/** A maker who needs exactly the usual time for everything, as far as so many sessions can show. */
export const practised = (sessions: number): Rates =>
  rates(
    Array.from({ length: sessions }, (_, i) =>
      DRIVERS.map((driver) => ({ session: `${i}`, driver, count: 1, seconds: USUAL_RATES[driver].seconds })),
    ).flat(),
  );
