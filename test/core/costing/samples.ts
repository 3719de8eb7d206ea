import type { Item } from '../../../core/costing/item.js';
import type { Money } from '../../../core/money/currency.js';
import type { Outcome } from '../../../core/problems.js';

export const eur = (minor: number): Money => ({ currency: 'EUR', minor });

/** A cowl: 182 m of a ball of 105 m at 6.20, packing at 0.85, 1.32 h at 16.00. */
export const COWL: readonly Item[] = [
  { id: 'yarn', is: 'material', quantity: 182, price: { is: 'rate', ...eur(620), per: 105 } },
  { id: 'packing', is: 'material', quantity: 1, price: { is: 'rate', ...eur(85), per: 1 } },
  { id: 'time', is: 'time', quantity: 1.32, price: { is: 'rate', ...eur(1600), per: 1 } },
];

/** What was made, where it is expected. */
export function made<T>(outcome: Outcome<T, { code: string }>): T {
  if (!outcome.ok) throw new Error(outcome.problems.map((p) => p.code).join(', '));
  return outcome.value;
}

/** What went wrong, where it is expected. */
export function wrong<P>(outcome: Outcome<unknown, P>): readonly P[] {
  if (outcome.ok) throw new Error('no problem was found');
  return outcome.problems;
}
