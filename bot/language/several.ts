import { MOST_SIZES, type Size, type Value } from '../request.js';
import type { SizesRead } from './readers/sizes.js';

/** `why` they cannot be planned in one go. */
export type Several = { sizes: Size[] | undefined; why?: 'too_many_sizes' | 'too_many_at_once'; words?: string };

/** Several sizes to be planned in one go: those typed in a list, else those of several persons; or why they cannot be. */
export function severalSizes(
  { rivals, values }: Pick<SizesRead, 'rivals' | 'values'>,
  ofPersons: readonly Size[],
): Several {
  const persons = ofPersons.map((size) => ({ ...size, values: without(size.values, values) }));
  const areOfPersons = persons.length > 1 && persons.every((size) => Object.keys(size.values).length > 0);
  if (rivals === undefined) return { sizes: areOfPersons ? persons : undefined };
  const { id, words, areListed } = rivals;
  if (!areListed || areOfPersons) return { sizes: undefined, why: 'too_many_sizes', words };
  const all = distinct(rivals.values).map((value) => ({ label: value.said ?? '', values: { [id]: value } }));
  if (all.length === 1) return { sizes: undefined };
  if (all.length > MOST_SIZES) return { sizes: undefined, why: 'too_many_at_once', words };
  return { sizes: all };
}

/** Values that differ in more than their words. */
const distinct = (values: readonly Value[]): Value[] => {
  const bare = values.map(({ said: _, assumed: __, ...value }) => JSON.stringify(value));
  return values.filter((_, i) => bare.indexOf(bare[i] ?? '') === i);
};

/** What was typed for all stands before what a person has. */
const without = (values: Record<string, Value>, typed: object): Record<string, Value> =>
  Object.fromEntries(Object.entries(values).filter(([id]) => !(id in typed)));
