import { type Driver, plainNumber, USUAL_RATES } from '../../core/index.js';

/** What each step is called on a card about time. */
export const DRIVER_NAMES: Readonly<Record<Driver, string>> = {
  set_up: 'setting up',
  crank: 'cranking',
  change: 'changing yarn',
  measure: 'measuring',
  run_off: 'taking off',
  turn_for_graft: 'pinning for the graft',
  graft: 'grafting',
  take_out_waste: 'taking out waste',
  mattress: 'seaming',
  cast_off: 'casting off',
  ring: 'rings',
  pin_closure: 'pinning the closure',
  sew_closure: 'sewing the closure',
  strap: 'straps',
  gather: 'gathering',
  hem: 'hemming',
  stuff: 'stuffing',
  fringe: 'fringe',
  button: 'buttons',
  loop: 'button loops',
  drawstring: 'cords',
  elastic: 'elastic',
  pompom: 'pompoms',
  lining: 'lining',
  border: 'border',
  fold: 'folding',
  weave_in: 'weaving in ends',
  check: 'checking',
};

/** How many of what a step counts: `5520 stitches`. */
export function driverCount(driver: Driver, count: number): string {
  const { each } = USUAL_RATES[driver];
  const n = Math.round(count);
  const many = each === 'mm' ? each : each.endsWith('ch') ? `${each}es` : `${each}s`;
  return `${plainNumber(n)} ${n === 1 ? each : many}`;
}
