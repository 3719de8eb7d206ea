import type { PlanAsk, Size, Value } from './request.js';

/** The ask for one of its sizes alone. */
export const ofSize = ({ sizes: _, ...ask }: PlanAsk, { values }: Size): PlanAsk => ({
  ...ask,
  values: { ...ask.values, ...values },
});

/** Every value of an ask, those of each size after the ones that all share. */
export const valuesOf = ({ values, sizes = [] }: PlanAsk): Value[] =>
  [values, ...sizes.map((size) => size.values)].flatMap((some) => Object.values(some));
