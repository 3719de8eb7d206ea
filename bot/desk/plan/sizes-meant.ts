import { MM_PER, type Problem, say, type Units } from '../../../core/index.js';
import type { PlanAsk, Value } from '../../request.js';

type OutOfRange = Extract<Problem, { code: 'length_out_of_range' }>;

/** A size that may have been meant by one out of its range, as it would be typed. */
type Meant = { said: string; value: Value };

/** A slip of one decimal place. */
const SLIP = 10;

/**
 * The size likeliest meant by one out of its range: the same number in the other unit where none was typed, else ten
 * times it or a tenth, `60 mm` for 60 cm. Undefined where neither would do.
 */
export function sizeMeantBy({ values }: PlanAsk, problem: OutOfRange): Meant | undefined {
  const value = values[problem.field.id];
  if (value?.is !== 'length' || 'why' in problem || value.given !== undefined) return undefined;
  const unit = unitOf(value);
  const other: Units = unit === 'in' ? 'cm' : 'in';
  const candidates: [mm: number, unit: Units][] = [
    ...(value.assumed === undefined ? [] : [[(value.mm / MM_PER[unit]) * MM_PER[other], other] as [number, Units]]),
    [value.mm * SLIP, unit],
    [value.mm / SLIP, unit],
  ];
  const [meant] = candidates.filter(([mm]) => mm >= problem.minMm && mm <= problem.maxMm);
  if (meant === undefined) return undefined;
  const [mm, as] = meant;
  const said = `${Number((mm / MM_PER[as]).toFixed(2))} ${as}`;
  return { said, value: { is: 'length', mm, said } };
}

/** Inches where they were typed or taken, else centimetres. */
const unitOf = ({ mm, said = '' }: Value & { is: 'length' }): Units => {
  const typed = Number.parseFloat(said.replace(',', '.'));
  const isInches = /\b(?:in|inch|inches|ft|feet|foot)\b|["”]/i.test(said) || Math.abs(typed * MM_PER.in - mm) < 0.01;
  return isInches ? 'in' : 'cm';
};

export const ifMeant = ({ said }: Meant) => say`${said}, if that is what you meant`;
