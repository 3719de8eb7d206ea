import { length, mass, pieceById, range, say, type Words } from '../../core/index.js';
import type { Bench, PlanAsk, Value } from '../request.js';

/** What a follow-up changed in a plan ask, in words, for the line that begins with "Changed". */
export function changesBetween(before: PlanAsk | undefined, after: PlanAsk): Words[] {
  if (before === undefined) return [];
  const piece = pieceById(after.piece ?? '');
  const fields = [...new Set([...Object.keys(before.values), ...Object.keys(after.values)])];
  const values = fields.flatMap((id) => {
    const now = after.values[id];
    if (JSON.stringify(before.values[id]) === JSON.stringify(now)) return [];
    const label = piece?.asks[id]?.label.toLowerCase() ?? id;
    return [now === undefined ? say`${label} no longer asked for` : say`${label}, ${saidValue(now)}`];
  });
  const copies = before.copies === after.copies ? [] : [say`how many, ${after.copies}`];
  const bench = sameBench(before.on, after.on) ? [] : [say`the machine or yarn`];
  return [...values, ...copies, ...bench];
}

const sameBench = (a: Bench, b: Bench): boolean =>
  a.machine === b.machine && a.needles === b.needles && a.yarn === b.yarn;

function saidValue(value: Value): Words {
  switch (value.is) {
    case 'length':
      return value.mm === 0 ? say`none` : say`${length(value.mm)}`;
    case 'window':
      return say`${range(value.loMm, value.hiMm)}`;
    case 'count':
      return say`${value.count}`;
    case 'mass':
      return say`${mass(value.g)}`;
    case 'choice':
    case 'bare':
      return say`${value.said ?? 'as said'}`;
  }
}
