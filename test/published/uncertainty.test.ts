import type { Count } from '../../core/gauge/measurement.js';
import { rulerVariance } from '../../core/gauge/swatches.js';
import { rowsIn, tube } from '../core/samples.js';
import { type PublishedRow, publishedRows } from './rows.js';
import { meanDeviation, textbook } from './textbook.js';

/** The relative standard uncertainty of the row height that a swatch shows. */
const ofPitch = (rows: Count) => (): number => {
  const [reading] = rowsIn([tube('swatch', 1, 1, { rows })]).flat();
  return reading === undefined ? Number.NaN : Math.sqrt(rulerVariance(reading));
};

const GUM = 'JCGM 100:2008 (GUM)';
const QUADRATURE = `${GUM} 5.1.6, relative uncertainties of a quotient in quadrature; the figure worked by hand`;
const worked = { within: 5e-7, unit: 'share', because: 'six decimals were worked' };

// Five simultaneous readings.
const VOLTS = [5.007, 4.994, 5.005, 4.99, 4.999];
const MILLIAMPERES = [19.663, 19.639, 19.64, 19.685, 19.678];
const impedance = textbook(VOLTS.map((volts, i) => (1000 * volts) / (MILLIAMPERES[i] ?? Number.NaN)));
const H2 = `${GUM} Annex H.2: a ratio taken of each pair of readings keeps their correlation, independent means would give 0.204`;
const ohms = { within: 0.0005, unit: 'ohm', because: 'three decimals are printed' };

const rows: PublishedRow[] = [
  {
    // 1.6/101.6 = .015748.
    claim: 'a row height from 20 rows known and 101.6 mm read is uncertain by 1.5748 %',
    inputs: { rows: 20, lengthMm: 101.6, rulerMm: 1.6 },
    got: ofPitch({ count: 20, overMm: 101.6, how: 'read' }),
    expected: 0.015748,
    tolerance: worked,
    source: QUADRATURE,
  },
  {
    // (1/√12)/20 = .014434; √(.015748² + .014434²) = .021362.
    claim: 'counted to half a row either way, a rectangular error of 1/√12 of a row, it is uncertain by 2.1362 %',
    inputs: { rows: 20, lengthMm: 101.6, rulerMm: 1.6 },
    got: ofPitch({ count: 20, overMm: 101.6, how: 'counted' }),
    expected: 0.021362,
    tolerance: worked,
    source: `${QUADRATURE}, and 4.3.7, a rectangular distribution`,
  },
  {
    claim: 'the impedance is 254.260',
    inputs: { volts: VOLTS, milliamperes: MILLIAMPERES },
    got: () => impedance.mu,
    expected: 254.26,
    tolerance: ohms,
    source: H2,
  },
  {
    claim: 'its standard uncertainty is 0.236',
    inputs: { volts: VOLTS, milliamperes: MILLIAMPERES },
    got: () => meanDeviation(impedance),
    expected: 0.236,
    tolerance: ohms,
    source: H2,
  },
];

publishedRows('combined uncertainty', 4, rows);
