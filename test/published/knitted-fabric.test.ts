import { dimensionMm } from '../../core/sizing/rows.js';
import { G_PER, MM_PER } from '../../core/units/units.js';
import { texOf } from '../../core/yarn/count.js';
import { massPerM2 } from '../../core/yarn/fabric.js';
import { FIBRE_DENSITY, loopLengthMm, peirceLoopMm, yarnDiameterMm } from '../../core/yarn/loop.js';
import { yarnNeed } from '../../core/yarn/need.js';
import { loopOf, step } from '../core/yarn/samples.js';
import { type PublishedRow, publishedRows } from './rows.js';

const GATE = 'GATE (TF) 2015, question 54';
const BANK = 'examination question bank, textile engineering';
const STUDY = 'study text on circular knitting, worked example';
const HANDBOOK = 'textile handbook, areal density of plain knits';
const OWN = 'worked by hand for a hand-cranked size';

const asPrinted = (within: number, unit: string) => ({ within, unit, because: 'as many digits as are printed' });
const arithmetic = (unit: string) => ({ within: 1e-6, unit, because: 'exact arithmetic' });

/** The yarn of so many loops, in m and in kg. */
const yarn = (loops: number, loopMm: number, tex: number) => {
  const { lengthM, massG = Number.NaN } = yarnNeed([step([{ role: 'main', stitches: loops }])], loopOf(loopMm), tex);
  return { lengthM, massKg: massG / 1000 };
};
/** The length of so many rows, or the width of so many stitches, in m. */
const metres = (count: number, perCm: number, share = 1): number =>
  dimensionMm({ share, extra: 0, fixedMm: 0 }, count, 10 / perCm) / 1000;
const needles = (diameterIn: number, perIn: number): number => Math.PI * diameterIn * perIn;
const texOfCotton = (count: number): number => {
  const tex = texOf(count, 'cotton');
  return tex.ok ? tex.value : Number.NaN;
};

const rows: PublishedRow[] = [
  {
    claim: 'fully relaxed fabric of 11.0 courses and 8.4 wales to the cm has loops of 0.5 cm (Kc 5.5, Kw 4.2)',
    inputs: { coursesPerCm: 11, walesPerCm: 8.4 },
    got: () => loopLengthMm(10 / 8.4, 10 / 11, 'fully_relaxed'),
    expected: 5,
    tolerance: arithmetic('mm'),
    source: GATE,
  },
  {
    claim: 'it has 92 loops to the cm²',
    inputs: { loopCm: 0.5 },
    got: () => (100 * loopLengthMm(1, 1, 'fully_relaxed') ** 2) / 5 ** 2,
    expected: 92,
    tolerance: asPrinted(0.5, 'loops to the cm²'),
    source: GATE,
  },
  {
    claim: 'a cylinder of 26 in, 20 needles to the inch and 120 feeds takes 31.8 kg an hour at 30 rpm',
    inputs: { loopMm: 3, tex: 30 },
    got: () => yarn(needles(26, 20) * 120 * 30 * 60, 3, 30).massKg,
    expected: 31.8,
    tolerance: asPrinted(0.05, 'kg'),
    source: BANK,
  },
  {
    claim: 'a cylinder of 2260 needles and 90 feeds takes 1 269 216 m an hour at 26 rpm',
    inputs: { loopMm: 4, cottonCount: 24 },
    got: () => yarn(2260 * 90 * 26 * 60, 4, texOfCotton(24)).lengthM,
    expected: 1_269_216,
    tolerance: arithmetic('m'),
    source: STUDY,
  },
  {
    claim: 'at 85 % that is 26.55 kg',
    inputs: { loopMm: 4, cottonCount: 24, efficiency: 0.85 },
    got: () => 0.85 * yarn(2260 * 90 * 26 * 60, 4, texOfCotton(24)).massKg,
    expected: 26.55,
    tolerance: asPrinted(0.005, 'kg'),
    source: STUDY,
  },
  {
    claim: 'a cylinder of 30 in, 18 needles to the inch and 80 feeds takes 329.07 kg in 8 hours at 38 rpm and 95 %',
    inputs: { loopMm: 2, tex: 70 },
    got: () => 0.95 * yarn(needles(30, 18) * 80 * 38 * 60 * 8, 2, 70).massKg,
    expected: 329.07,
    tolerance: { within: 0.18, unit: 'kg', because: 'worked with 3.14 for π' },
    source: STUDY,
  },
  {
    claim: '96 feeds at 35 rpm and 85 %, 18 courses to the cm, make 95.2 m an hour',
    inputs: { coursesPerCm: 18 },
    got: () => metres(0.85 * 96 * 35 * 60, 18),
    expected: 95.2,
    tolerance: arithmetic('m'),
    source: STUDY,
  },
  {
    claim: 'the fabric of a cylinder of 30 in, 28 needles to the inch, is 2.03 m wide, open, at 13 wales to the cm',
    inputs: { walesPerCm: 13 },
    got: () => metres(needles(30, 28), 13),
    expected: 2.03,
    tolerance: asPrinted(0.005, 'm'),
    source: STUDY,
  },
  {
    claim: 'it weighs 125 g/m² in loops of 2.671 mm of Nm 50',
    inputs: { loopMm: 2.671, tex: 20, coursesPerCm: 18, walesPerCm: 13 },
    got: () => massPerM2({ tex: 20, loopMm: 2.671 }, 10 / 13, 10 / 18),
    expected: 125,
    tolerance: asPrinted(0.05, 'g/m²'),
    source: STUDY,
  },
  {
    claim: 'by Peirce’s loop its fabric would hold 2.84 mm a stitch, 6 % more than it does',
    inputs: { tex: 20, fibre: 'cotton', coursesPerCm: 18, walesPerCm: 13 },
    got: () => peirceLoopMm(10 / 13, 10 / 18, 20, FIBRE_DENSITY.cotton),
    expected: 2.84,
    tolerance: asPrinted(0.005, 'mm'),
    source:
      '“The geometry of plain and rib knit cotton fabrics”, Text. Res. J. 1952, with the diameter of a study text',
  },
  {
    claim: '108 feeds at 36 rpm and 87 %, 20 courses to the cm, make 811.82 m in 8 hours',
    inputs: { coursesPerCm: 20 },
    got: () => metres(0.87 * 108 * 36 * 60 * 8, 20),
    expected: 811.82,
    tolerance: { within: 0.006, unit: 'm', because: 'the source rounds on the way' },
    source: STUDY,
  },
  {
    claim: '48 feeds at 20 rpm and 75 %, 3 courses to the cm, make 1152 m in 8 hours',
    inputs: { coursesPerCm: 3 },
    got: () => metres(0.75 * 48 * 20 * 60 * 8, 3),
    expected: 1152,
    tolerance: arithmetic('m'),
    source: STUDY,
  },
  {
    claim: 'g/m² are courses and wales to the inch by loop in mm by 0.9155, over the cotton count',
    inputs: { coursesPerIn: 1, walesPerIn: 1, loopMm: 1, cottonCount: 1 },
    got: () => massPerM2({ tex: texOfCotton(1), loopMm: 1 }, 25.4, 25.4),
    expected: 0.9155,
    tolerance: { within: 0.0002, unit: 'g/m²', because: 'its constant is rounded on the way; exactly 0.91534' },
    source: HANDBOOK,
  },
  {
    claim: 'an ounce to the square yard is 33.906 g/m²',
    inputs: { ozPerYd2: 1 },
    got: () => G_PER.oz / (MM_PER.yd / 1000) ** 2,
    expected: 33.906,
    tolerance: asPrinted(0.0005, 'g/m²'),
    source: HANDBOOK,
  },
  {
    claim: '120 courses of 48 stitches of 16 mm are 92.16 m',
    inputs: { needles: 48, courses: 120, loopMm: 16 },
    got: () => yarn(48 * 120, 16, 500).lengthM,
    expected: 92.16,
    tolerance: arithmetic('m'),
    source: OWN,
  },
  {
    claim: 'of 500 tex they are 46.08 g by length',
    inputs: { needles: 48, courses: 120, loopMm: 16, tex: 500 },
    got: () => 1000 * yarn(48 * 120, 16, 500).massKg,
    expected: 46.08,
    tolerance: arithmetic('g'),
    source: OWN,
  },
  {
    claim: 'and 46.08 g by area: 28 by 48 cm of 342.857 g/m²',
    inputs: { widthCm: 28, lengthCm: 48, loopMm: 16, tex: 500 },
    got: () => 0.28 * 0.48 * massPerM2({ tex: 500, loopMm: 16 }, 280 / 48, 4),
    expected: 46.08,
    tolerance: arithmetic('g'),
    source: OWN,
  },
  {
    claim: 'yarn of 500 tex wool is 0.8674 mm thick: 4.44e-3·√(tex/density) in cm',
    inputs: { tex: 500, density: 1.31 },
    got: () => yarnDiameterMm(500),
    expected: 0.8674,
    tolerance: asPrinted(0.00005, 'mm'),
    source: STUDY,
  },
];

publishedRows('knitted fabric', 18, rows);
