import { type Evidence, gauge, type Measurement, pieceFactor, RESTED_TUBE, standing } from '../../../core/index.js';
import type { BotProblem } from '../../problems.js';
import type { Bench, GaugeAsk, Tension, Value } from '../../request.js';

type Range = { min: number; max: number };

/** Needles of a hand-cranked circular machine, the largest included. From memory. */
const NEEDLES: Range = { min: 3, max: 400 };
/** Rows or stitches in one measured piece. */
const MOST_ROWS = 20_000;
const COUNTED: Range = { min: 0.5, max: MOST_ROWS };
const UNRAVELLED: Range = { min: 1, max: MOST_ROWS };
/** Yarn counts that a hand-cranked machine takes, in tex, with room to spare; and the published categories. From memory. */
export const TEX: Range = { min: 20, max: 20_000 };
const CATEGORY: Range = { min: 0, max: 7 };
/** Row heights and stitch widths of hand-cranked knitting, from the finest to the thickest. From memory. */
const SPACING_MM: Range = { min: 0.8, max: 40 };

/** What cannot have been measured: counts out of range, a weight for a length, nothing at all. Every fault at once. */
export function problemsOf(ask: GaugeAsk): BotProblem[] {
  const { rows, stitches, flatWidth, on, earlier = [], mass, unravelled, weight } = ask;
  const nothing = isBenchOnly(ask) && on.needles === undefined && weight === undefined;
  return [
    ...(nothing ? [{ code: 'nothing_measured' as const }] : []),
    ...countProblems('Rows', rows),
    ...countProblems('Stitches', stitches),
    ...needleProblems(on),
    ...[...earlier.map((reading) => reading.rows), rows].flatMap((read) => lengthProblems('Length', read?.over)),
    ...lengthProblems('Width', stitches?.over),
    ...lengthProblems('Flat width', flatWidth),
    ...massProblems('Weight', mass),
    ...lengthProblems('Unravelled yarn', unravelled?.over),
    ...(unravelled === undefined ? [] : wholeProblems('Stitches unravelled', unravelled.stitches, UNRAVELLED)),
    ...weightProblems(weight),
  ];
}

/** Needles that no machine has. */
export const needleProblems = ({ needles }: Bench): BotProblem[] =>
  needles === undefined ? [] : wholeProblems('Needles', needles, NEEDLES);

/** True when a record names a machine or yarn and measures nothing. */
export const isBenchOnly = ({ rows, stitches, flatWidth, mass, unravelled }: GaugeAsk): boolean =>
  [rows, stitches, flatWidth, mass, unravelled].every((one) => one === undefined);

/** A length where a weight was asked for, or one that is none. */
export function massProblems(label: string, value: Value | undefined): BotProblem[] {
  if (value === undefined || (value.is === 'mass' && value.g > 0)) return [];
  return [{ code: 'not_a_weight', label, said: value.said ?? '' }];
}

function weightProblems(weight: GaugeAsk['weight']): BotProblem[] {
  const { category, tex } = weight ?? {};
  return [
    ...(category === undefined ? [] : wholeProblems('Yarn category', category, CATEGORY)),
    ...(tex === undefined || inRange(tex, TEX)
      ? []
      : [{ code: 'count_outside' as const, label: 'Tex', given: Math.round(tex), ...TEX }]),
  ];
}

function countProblems(label: string, tension: Tension | undefined): BotProblem[] {
  if (tension === undefined) return [];
  if (tension.how === 'read') return wholeProblems(label, tension.count, { min: 1, max: COUNTED.max });
  if (inRange(tension.count, COUNTED)) return [];
  // A rate is not the count that it stands for: it is quoted as it was typed.
  const said = tension.over?.assumed === 'rate' ? tension.said : undefined;
  return [{ code: 'count_outside', label, given: tension.count, said, ...COUNTED }];
}

/** Rows that no piece has. */
export const rowProblems = (label: string, rows: number, min = 1): BotProblem[] =>
  wholeProblems(label, rows, { min, max: MOST_ROWS });

function wholeProblems(label: string, given: number, range: Range): BotProblem[] {
  if (!inRange(given, range)) return [{ code: 'count_outside', label, given, ...range }];
  return Number.isInteger(given) ? [] : [{ code: 'count_not_whole', label, given }];
}

const inRange = (given: number, { min, max }: Range): boolean => given >= min && given <= max;

/** A weight where a length was asked for, or a length of nothing. */
export function lengthProblems(label: string, value: Value | undefined): BotProblem[] {
  if (value?.is === 'mass') return [{ code: 'not_a_length', label, said: value.said ?? '' }];
  if (value?.is === 'length' && value.mm <= 0) return [{ code: 'length_not_positive', label, said: value.said ?? '' }];
  return [];
}

/** Rows or stitches too fine or too coarse for any machine: most often a slip of the unit. */
export function spacingProblems({ rows, stitches }: Measurement): BotProblem[] {
  const spacings = [
    ['row', rows],
    ['stitch', stitches],
  ] as const;
  return spacings.flatMap(([label, count]) => {
    if (count === undefined) return [];
    const givenMm = count.overMm / count.count;
    if (inRange(givenMm, SPACING_MM)) return [];
    return [{ code: 'spacing_outside' as const, label, givenMm, minMm: SPACING_MM.min, maxMm: SPACING_MM.max }];
  });
}

/** True when a measurement lies further from the others than one piece in a hundred does. */
export function isUnusual(before: Evidence, measured: Measurement): boolean {
  const known = gauge(before);
  const factor = (axis: 'rows' | 'stitches') => pieceFactor(before[axis].factors, measured, RESTED_TUBE);
  const unusual = (axis: 'rows' | 'stitches') => {
    const [estimate, count] = [axis === 'rows' ? known.row : known.stitch, measured[axis]];
    return estimate !== undefined && count !== undefined && standing(estimate, count, factor(axis)) === 'unusual';
  };
  return unusual('rows') || unusual('stitches');
}
