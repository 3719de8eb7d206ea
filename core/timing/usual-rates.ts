import type { Step } from '../piece.js';

/** What a step takes its time from. */
export type Driver = NonNullable<Step['driver']>;

/** Work at the machine, or at the table afterwards. */
export type Stage = 'knit' | 'finish';

/** How long one of what a step counts takes before a maker has logged any: `each` is what it counts. */
type UsualRate = { seconds: number; each: string; stage: Stage };

const knit = (seconds: number, each: string): UsualRate => ({ seconds, each, stage: 'knit' });
const finish = (seconds: number, each: string): UsualRate => ({ seconds, each, stage: 'finish' });

/**
 * The usual rate of every driver. Common practice, no source, for a piece of 110 rows on 46 needles as a whole: about
 * 30 minutes at the machine and an hour at the table. Each single rate is from memory.
 */
export const USUAL_RATES: Readonly<Record<Driver, UsualRate>> = {
  set_up: knit(300, 'piece'),
  crank: knit(0.2, 'stitch'),
  change: knit(60, 'change'),
  measure: knit(90, 'reading'),
  run_off: knit(120, 'piece'),
  turn_for_graft: finish(180, 'graft'),
  graft: finish(18, 'pair'),
  take_out_waste: finish(9, 'row'),
  mattress: finish(12, 'bar'),
  cast_off: finish(6, 'stitch'),
  ring: finish(150, 'ring'),
  pin_closure: finish(120, 'closure'),
  sew_closure: finish(2, 'mm'),
  strap: finish(240, 'end'),
  gather: finish(4, 'stitch'),
  hem: finish(12, 'stitch'),
  stuff: finish(0.6, 'cubic centimetre'),
  fringe: finish(20, 'strand'),
  button: finish(150, 'button'),
  loop: finish(240, 'loop'),
  drawstring: finish(300, 'cord'),
  elastic: finish(300, 'edge'),
  pompom: finish(900, 'pompom'),
  lining: finish(1200, 'lining'),
  border: finish(6, 'stitch'),
  fold: finish(60, 'fold'),
  weave_in: finish(60, 'end'),
  check: finish(60, 'piece'),
};

/** Every driver, machine first. */
export const DRIVERS = Object.keys(USUAL_RATES) as readonly Driver[];
