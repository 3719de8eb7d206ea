import { closureWindow, longestStockClosureMm } from '../../core/finishing/closing.js';
import { evidence, gauge, spacingMm } from '../../core/gauge/gauge.js';
import { plainTube } from '../../core/pieces/plain-tube.js';
import { pouch } from '../../core/pieces/pouch.js';
import type { Plan } from '../../core/plan.js';
import { printedRate } from '../../core/units/print.js';
import { mm, planOf, read, tube } from '../core/samples.js';
import { exactly, type PublishedRow, publishedRows } from './rows.js';

const TRADE = 'common practice, no source';
const IN = 25.4;
const roughly = { within: 0.25, unit: 'in', because: 'the trade says "about", to a quarter of an inch' };
const rounding = { within: 1e-9, unit: 'in', because: 'floating point only' };

const tubeOf22In = planOf(plainTube, { length: mm(22 * IN) });
const pouchOf11In = planOf(pouch, { width: mm(11 * IN) });
const pouchFor = (closureIn: number, needles = 46): Plan => planOf(pouch, { closure: mm(closureIn * IN) }, { needles });
const sizeIn = (plan: Plan, id: string): number => (plan.sizes.find((s) => s.id === id)?.expectedMm ?? Number.NaN) / IN;
const flatIn = (plan: Plan): number => (plan.tube?.flatWidthMm ?? Number.NaN) / IN;
const wasteRows = (plan: Plan, id: string): number => (plan.steps.find((s) => s.id === id)?.count ?? Number.NaN) / 46;

/** Rows or stitches of a swatch counted over a length, as a rate over another. */
const rateOver = (count: number, overMm: number, rateMm: number): number => {
  const { row } = gauge(evidence([tube('counted', 1, 1, { rows: read(count, overMm) })]));
  return row === undefined ? Number.NaN : rateMm / spacingMm(row);
};

const rows: PublishedRow[] = [
  {
    claim: '110 rows in medium yarn are a tube about 22 in long',
    inputs: { needles: 46, rows: 110 },
    got: () => tubeOf22In.rows,
    expected: 110,
    tolerance: exactly('rows', 'a count'),
    source: TRADE,
  },
  {
    claim: 'that tube lies about 6 3/4 in wide',
    inputs: { needles: 46, rows: 110 },
    got: () => flatIn(tubeOf22In),
    expected: 6.75,
    tolerance: roughly,
    source: TRADE,
  },
  {
    claim: 'grafted and folded it is about 11 in wide',
    inputs: { needles: 46, rowsWithGraft: 110 },
    got: () => (pouchOf11In.landing.rowsInPiece === 110 ? sizeIn(pouchOf11In, 'width') : Number.NaN),
    expected: 11,
    tolerance: roughly,
    source: TRADE,
  },
  {
    claim: 'grafted and folded it is about 6 3/4 in tall',
    inputs: { needles: 46, rowsWithGraft: 110 },
    got: () => sizeIn(pouchOf11In, 'height'),
    expected: 6.75,
    tolerance: roughly,
    source: TRADE,
  },
  {
    claim: 'grafting makes one row more than is cranked',
    inputs: { widthIn: 11 },
    got: () => pouchOf11In.landing.rowsInPiece - pouchOf11In.rows,
    expected: 1,
    tolerance: exactly('rows', 'a count'),
    source: TRADE,
  },
  {
    claim: 'an 8 in closure with two 1 in rings suits a width from 10 1/2 in',
    inputs: { closureIn: 8, ringIn: 1 },
    got: () => closureWindow(8 * IN, IN).loMm / IN,
    expected: 10.5,
    tolerance: rounding,
    source: TRADE,
  },
  {
    claim: 'an 8 in closure with two 1 in rings suits a width to 11 in',
    inputs: { closureIn: 8, ringIn: 1 },
    got: () => closureWindow(8 * IN, IN).hiMm / IN,
    expected: 11,
    tolerance: rounding,
    source: TRADE,
  },
  {
    claim: 'a width of 10 1/2 in takes an 8 in closure and no longer',
    inputs: { widthIn: 10.5, ringIn: 1 },
    got: () => (longestStockClosureMm(10.5 * IN, IN) ?? Number.NaN) / IN,
    expected: 8,
    tolerance: rounding,
    source: TRADE,
  },
  {
    claim: 'two more needles do not make it wider: the rows stay',
    inputs: { closureIn: 8, needles: [46, 48] },
    got: () => pouchFor(8, 48).rows - pouchFor(8).rows,
    expected: 0,
    tolerance: exactly('rows', 'a count'),
    source: TRADE,
  },
  {
    claim: 'two more needles make it taller: the tube lies 6 3/4 · 48/46 in wide',
    inputs: { closureIn: 8, needles: 48 },
    got: () => flatIn(pouchFor(8, 48)),
    expected: (6.75 * 48) / 46,
    tolerance: rounding,
    source: TRADE,
  },
  {
    claim: 'a closure one inch longer means ten rows more, 25.4 mm of 2.54 mm each',
    inputs: { closureIn: [8, 9] },
    got: () => pouchFor(9).rows - pouchFor(8).rows,
    expected: 10,
    tolerance: exactly('rows', 'a count'),
    source: `${TRADE}; the number worked by hand`,
  },
  {
    claim: 'about five rows of waste yarn come before the piece',
    inputs: { needles: 46 },
    got: () => wasteRows(pouchOf11In, 'waste_on'),
    expected: 5,
    tolerance: exactly('rows', 'a count'),
    source: TRADE,
  },
  {
    claim: 'about five rows of waste yarn come after the piece',
    inputs: { needles: 46 },
    got: () => wasteRows(pouchOf11In, 'waste_off'),
    expected: 5,
    tolerance: exactly('rows', 'a count'),
    source: TRADE,
  },
  {
    claim: '20 rows in 10 cm are 20.32 in 4 in, not 20',
    inputs: { rows: 20, overCm: 10 },
    got: () => rateOver(20, 100, 101.6),
    expected: 20.32,
    tolerance: { within: 1e-9, unit: 'rows in 4 in', because: 'floating point only' },
    source: 'by arithmetic from the exact inch',
  },
  {
    claim: 'a rate of 20 in 10 cm prints as 20.3 in 4 in',
    inputs: { rows: 20, overCm: 10, pieces: 3 },
    got: () => Number(printedRate(5, 3, 'in')),
    expected: 20.3,
    tolerance: exactly('rows in 4 in', 'one decimal is printed'),
    source: 'by arithmetic from the exact inch',
  },
];

publishedRows('facts of the trade', 15, rows);
