import { dimensionalChange } from '../../core/gauge/factors.js';
import { type PublishedRow, publishedRows } from './rows.js';

const ISO_5077 = 'ISO 5077, change in size 100·(xt − x0)/x0, shrinkage below 0; the example is arithmetic of our own';

/** Core keeps a change as ln(after/before). */
const row = (beforeCm: number, afterCm: number, percent: number): PublishedRow => ({
  claim: `a length that goes from ${beforeCm} to ${afterCm} cm changes by ${percent} %`,
  inputs: { beforeCm, afterCm },
  got: () => dimensionalChange(Math.log(afterCm / beforeCm)),
  expected: percent,
  tolerance: { within: 1e-12, unit: '%', because: 'floating point only' },
  source: ISO_5077,
});

publishedRows('dimensional change', 3, [row(40, 38.2, -4.5), row(40, 41, 2.5), row(40, 40, 0)]);
