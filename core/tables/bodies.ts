import { ADULT_SIZES } from './adult-sizes.js';
import { HEAD_GIRTH } from './head-girth.js';

/** A measure of a person that a piece may be made to. */
export type BodyMeasure = keyof (typeof ADULT_SIZES)['women'];

type Child = { is: 'child'; months: number; sex?: 'boy' | 'girl' | undefined };

/** A person as a maker names one: an adult, or a child by its age in months. */
export type Person = { is: 'woman' } | { is: 'man' } | Child;

/**
 * The measure of a person in mm, as published: the mean of adults, the median of children, and of a child whose sex is
 * not named the mean of both; between two published ages on the line between them. Undefined where no table holds it:
 * a child's hand, a head of five to seventeen years.
 */
export function bodySizeMm(measure: BodyMeasure, person: Person): number | undefined {
  if (person.is === 'woman') return ADULT_SIZES.women[measure].meanMm;
  if (person.is === 'man') return ADULT_SIZES.men[measure].meanMm;
  return measure === 'head' ? headMm(person) : undefined;
}

function headMm({ months, sex }: Child): number | undefined {
  const after = HEAD_GIRTH.find((row) => row.months >= months);
  const before = HEAD_GIRTH.findLast((row) => row.months <= months);
  if (after === undefined || before === undefined) return undefined;
  const median = ({ boys, girls }: (typeof HEAD_GIRTH)[number]): number => {
    if (sex === undefined) return 5 * (boys.medianCm + girls.medianCm);
    return 10 * (sex === 'boy' ? boys : girls).medianCm;
  };
  const share = after.months === before.months ? 0 : (months - before.months) / (after.months - before.months);
  return median(before) + share * (median(after) - median(before));
}
