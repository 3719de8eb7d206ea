import { pieceById, pieces } from '../../core/index.js';
import type { Standing } from '../problems.js';
import type { At } from './desk.js';
import { machineName } from './names.js';
import { tried } from './plan/planning.js';
import { workMeant, workShown } from './work/work-meant.js';

/** Where the maker stands in this talk: asked something, knitting, with a plan in hand, with a gauge, or new here. */
export async function standing(at: At): Promise<Standing> {
  const { pending, subject, planId } = at.talk;
  if (pending?.put !== undefined) return { is: 'asked', ...pending.put };
  const work = await workMeant({}, at);
  if (work !== undefined) {
    const { label, machine, rows, soFarMm } = await workShown(work, at);
    return { is: 'knitting', label, machine: machineName(machine), row: rows, soFarMm };
  }
  const planned = subject && planId !== undefined ? pieceById(subject.piece ?? '') : undefined;
  if (subject !== undefined && planned !== undefined) {
    const outcome = subject.sizes === undefined ? (await tried(subject, planned, at)).outcome : undefined;
    return { is: 'planned', label: planned.label, plan: outcome?.ok ? outcome.value : undefined };
  }
  const last = pieceById((await at.store.plans.latest(at.maker.id))?.piece ?? '') ?? pieces[0];
  const example = last?.example ?? '';
  const profiles = await at.store.profiles.of(at.maker.id);
  return profiles.length > 0 ? { is: 'measured', example } : { is: 'new', example };
}
