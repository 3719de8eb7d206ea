import type { Edit, Meaning } from '../request.js';

/** Stripes are of every plan and every change of one; alone they change the plan in hand. */
export function withStripes(meanings: readonly Meaning[], stripes: Edit['stripes']): Meaning[] {
  if (stripes === undefined) return [...meanings];
  const isOfPlan = meanings.some(({ kind }) => kind === 'plan' || kind === 'change');
  if (!isOfPlan)
    return [
      ...meanings.filter(({ kind }) => kind !== 'unread'),
      { kind: 'change', edit: { values: {}, on: {}, focus: [], stripes } },
    ];
  return meanings.map((one): Meaning => {
    if (one.kind === 'change') return { ...one, edit: { ...one.edit, stripes } };
    const isNew = one.kind === 'plan' && stripes !== null && stripes !== 'meet';
    return isNew ? { ...one, ask: { ...one.ask, stripes } } : one;
  });
}

/** A machine or yarn named for one of several plans is that of all. */
export function onOneBench(meanings: readonly Meaning[]): Meaning[] {
  const benches = meanings.flatMap((one) =>
    one.kind === 'plan' && Object.keys(one.ask.on).length > 0 ? [one.ask.on] : [],
  );
  const [on, ...others] = benches;
  if (on === undefined || others.length > 0) return [...meanings];
  return meanings.map((one) => (one.kind === 'plan' ? { ...one, ask: { ...one.ask, on } } : one));
}
