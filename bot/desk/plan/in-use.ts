import { isOfUse, pieceById } from '../../../core/index.js';
import type { PlanAsk, Value } from '../../request.js';

/**
 * The values of an ask without those that stand for a person and are of no use beside what was typed: the calf of a
 * woman who gets wrist warmers. They stay in the ask, for leg warmers to be asked for next.
 */
export function inUse({ piece: id, values }: Pick<PlanAsk, 'piece' | 'values'>): Record<string, Value> {
  const piece = pieceById(id ?? '');
  if (piece === undefined) return values;
  const typed = Object.fromEntries(Object.entries(values).filter(([, value]) => value.assumed !== 'body'));
  return Object.fromEntries(
    Object.entries(values).filter(([ask, value]) => value.assumed !== 'body' || isOfUse(piece, ask, typed)),
  );
}

/** Values as core takes them. A bare number is asked about before anything is planned. */
export const given = (values: Record<string, Value>) =>
  Object.fromEntries(Object.entries(values).flatMap(([id, value]) => (value.is === 'bare' ? [] : [[id, value]])));
