import { tQuantile } from '../../core/stats/student-t.js';
import { type PublishedRow, publishedRows } from './rows.js';

const NIST_T = 'NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.2, critical values of Student’s t';

const UPPER_POINTS: readonly (readonly [nu: number, t90: number, t95: number, t975: number, t995: number])[] = [
  [1, 3.078, 6.314, 12.706, 63.657],
  [2, 1.886, 2.92, 4.303, 9.925],
  [3, 1.638, 2.353, 3.182, 5.841],
  [4, 1.533, 2.132, 2.776, 4.604],
  [5, 1.476, 2.015, 2.571, 4.032],
  [6, 1.44, 1.943, 2.447, 3.707],
  [9, 1.383, 1.833, 2.262, 3.25],
  [11, 1.363, 1.796, 2.201, 3.106],
  [14, 1.345, 1.761, 2.145, 2.977],
  [29, 1.311, 1.699, 2.045, 2.756],
];

const quantile = (degreesOfFreedom: number, p: number, t: number): PublishedRow => ({
  claim: `t of ${p} is ${t}`,
  inputs: { degreesOfFreedom },
  got: () => tQuantile(p, degreesOfFreedom),
  expected: t,
  // A hair over half the last digit: the third decimal is itself rounded.
  tolerance: { within: 0.0005001, unit: 'standard deviations', because: 'the table prints three decimals' },
  source: NIST_T,
});

const quantiles = UPPER_POINTS.flatMap(([nu, t90, t95, t975, t995]) => [
  quantile(nu, 0.9, t90),
  quantile(nu, 0.95, t95),
  quantile(nu, 0.975, t975),
  quantile(nu, 0.995, t995),
]);

publishedRows('Student t quantiles', 40, quantiles);
