import { type Ask, length, mass, pieceById, printed, range, say, type Units, type Words } from '../../core/index.js';
import { type Conversation, inHand, subjectOf, withChange } from '../conversation.js';
import type { Bench, PlanAsk, Value } from '../request.js';
import { machineName } from './names.js';
import { inUse } from './plan/in-use.js';
import { sizeName, statesWidth, typedSize } from './typed.js';

/** What a follow-up changed in the plan in hand, from the talk before it to the talk after. */
export function editMade(before: Conversation, after: Conversation): Words[] {
  const to = subjectOf(after);
  return to === undefined ? [] : changesBetween(subjectOf(before), to);
}

/** The talk with a follow-up among its changes; the talk as it is when the follow-up changed nothing. */
export function withEdit(
  before: Conversation,
  after: Conversation,
  changed: readonly Words[],
  units: Units | undefined,
): Conversation {
  if (changed.length === 0) return after;
  const said = changed.map((words) => printed(words, { units: units ?? 'in' })).join('; ');
  return withChange(after, { kind: 'plan', other: inHand(before), said });
}

/** The talk with a new plan among its changes: taking it back brings the plan before it in hand again. */
export function withNewPlan(before: Conversation, after: Conversation): Conversation {
  const { subject } = after;
  if (before.subject !== undefined && before.subject.piece === subject?.piece && editMade(before, after).length === 0)
    return after;
  const label = pieceById(subject?.piece ?? '')?.label.toLowerCase() ?? 'plan';
  return withChange(after, { kind: 'plan', other: inHand({ ...before, pending: undefined }), said: `the ${label}` });
}

/** What a follow-up changed in a plan ask, in words, for the line that begins with "Changed". */
export function changesBetween(before: PlanAsk | undefined, after: PlanAsk): Words[] {
  if (before === undefined) return [];
  const piece = pieceById(after.piece ?? '');
  const [then, next] = [inUse(before), inUse(after)];
  const fields = [...new Set([...Object.keys(then), ...Object.keys(next)])];
  const values = fields.flatMap((id) => {
    const now = next[id];
    if (JSON.stringify(then[id]) === JSON.stringify(now)) return [];
    const label = piece?.asks[id]?.label.toLowerCase() ?? id;
    if (now === undefined) return [say`${label} no longer asked for`];
    const told = saidValue(now, piece?.asks[id]);
    return [isMeant(now) ? say`${label} ${told}` : say`${label}, ${told}`];
  });
  const each = after.sizes === undefined ? '' : ' of each';
  const copies = before.copies === after.copies ? [] : [say`how many, ${after.copies}${each}`];
  const due = before.due?.day === after.due?.day ? [] : [say`the day, ${after.due?.said ?? ''}`];
  return [
    ...values,
    ...sizesChanged(before, after),
    ...copies,
    ...benchChanges(before.on, after.on),
    ...due,
    ...stripesChanged(before.stripes, after.stripes),
    ...(sameTeam(before, after) ? [] : [say`makers, ${(after.team?.names ?? []).join(', ')}`]),
  ];
}

function stripesChanged(before: PlanAsk['stripes'], after: PlanAsk['stripes']): Words[] {
  if (before?.said === after?.said && before?.meets === after?.meets) return [];
  if (after === undefined) return [say`no stripes`];
  return [
    after.meets === true
      ? say`rows to a whole repeat`
      : after.said.includes('stripe')
        ? say`${after.said}`
        : say`stripes, ${after.said}`,
  ];
}

const sameTeam = (before: PlanAsk, after: PlanAsk): boolean =>
  JSON.stringify(before.team) === JSON.stringify(after.team);

function sizesChanged(before: PlanAsk, after: PlanAsk): Words[] {
  const names = (ask: PlanAsk): string => (ask.sizes ?? []).map(sizeName).join(', ');
  return after.sizes === undefined || names(before) === names(after) ? [] : [say`sizes, ${names(after)}`];
}

function benchChanges(before: Bench, after: Bench): Words[] {
  const isSame = before.machine === after.machine && before.needles === after.needles;
  const machine = machineName({ name: after.machine ?? String(after.needles ?? '') });
  return [
    ...(isSame ? [] : [say`machine, ${machine}`]),
    ...(before.yarn === after.yarn ? [] : [say`yarn, ${after.yarn || 'as used last'}`]),
  ];
}

/** What a plan asks for, as it was said: `width 10.5 to 11 in, 2 of them`. */
export function askInWords(ask: PlanAsk): Words[] {
  const { piece, sizes = [], copies } = ask;
  const asks = pieceById(piece ?? '')?.asks;
  const shared = Object.entries(inUse(ask)).map(([id, value]) => {
    const label = asks?.[id]?.label.toLowerCase() ?? id;
    return say`${label} ${saidValue(value, asks?.[id])}`;
  });
  const all = sizes.length === 0 ? shared : [...shared, say`sizes ${sizes.map(sizeName).join(', ')}`];
  if (copies === 1) return all;
  return [...all, sizes.length === 0 ? say`${copies} of them` : say`${copies} of each`];
}

/** A size that stands for words which named none: `woman`, `a fringe`. */
const isMeant = ({ assumed }: Value): boolean => assumed === 'body' || assumed === 'usual';

function saidValue(value: Value, ask: Ask | undefined): Words {
  switch (value.is) {
    case 'length':
      if (value.assumed === 'body') return say`${length(value.mm)}, ${value.said ?? ''}`;
      if (value.assumed === 'usual') return say`${length(value.mm)}, as is usual`;
      if (value.mm === 0) return say`none`;
      if (value.assumed === 'named') return say`${value.said ?? ''} (${length(value.mm)})`;
      return value.said === undefined ? say`${length(value.mm)}` : say`${typedSize(value)}`;
    case 'window':
      if (value.said === undefined) return say`${range(value.loMm, value.hiMm)}`;
      if (statesWidth(value)) return say`${typedSize(value)}`;
      return say`${typedSize(value)}, give or take ${length((value.hiMm - value.loMm) / 2)}`;
    case 'contents':
      return say`${typedSize(value)}`;
    case 'count':
      return say`${value.count}`;
    case 'percent':
      return say`${value.percent}%`;
    case 'mass':
      return say`${mass(value.g)}`;
    case 'choice': {
      const option = ask?.is === 'choice' ? ask.options.find(({ id }) => id === value.id) : undefined;
      return say`${option?.label ?? value.said ?? 'as said'}`;
    }
    case 'bare':
      return say`${value.said ?? 'as said'}`;
  }
}
