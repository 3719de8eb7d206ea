import { pieceById } from '../core/index.js';
import { type Conversation, subjectOf } from './conversation.js';
import type { Bench, Edit, PlanAsk, Request, Value } from './request.js';

/** The plan in hand, or the one that waits, with what a follow-up changes of it; or what that lacks. */
export function changed(edit: Edit, talk: Conversation): Request {
  const subject = subjectOf(talk);
  if (subject === undefined) return { kind: 'unread', why: 'no_plan', words: '' };
  const beside = edit.by && besideOf(subject.values[edit.by.field], edit.by);
  if (edit.by !== undefined && beside === undefined) return { kind: 'unread', why: 'no_size_yet', words: edit.by.word };
  const sizes = edit.sizes ?? (setsSize(subject, edit) ? undefined : subject.sizes);
  const values = withoutRivals(subject, edit);
  if (edit.by !== undefined && beside !== undefined) values[edit.by.field] = beside;
  for (const [id, value] of Object.entries(edit.values)) {
    if (value === null) delete values[id];
    else values[id] = withHalfWidth(value, subject.values[id]);
  }
  const ask: PlanAsk = {
    ...subject,
    values,
    sizes,
    copies: edit.copies ?? subject.copies,
    on: rebenched(subject.on, edit.on),
    focus: edit.focus.length > 0 || !keepsFocus(edit, talk) ? edit.focus : subject.focus,
    due: edit.due ?? subject.due,
    stripes: restriped(subject.stripes, edit.stripes),
    team: edit.team ?? subject.team,
  };
  if (talk.pending?.request.kind === 'which_machine') return { kind: 'which_machine', ask };
  return { kind: 'plan', ask, follows: talk.pending === undefined };
}

/** The yarn that was asked about is told of more pieces first too; of another size or bench the rows come first again. */
const keepsFocus = ({ values, sizes, by, on, stripes }: Edit, { pending }: Conversation): boolean =>
  pending !== undefined ||
  (Object.keys({ ...values, ...on }).length === 0 && (sizes ?? by) === undefined && stripes === undefined);

/** A size so much more or so many times another; undefined where there is none. */
function besideOf(value: Value | undefined, { mm = 0, times = 1 }: NonNullable<Edit['by']>): Value | undefined {
  const moved = (old: number): number => old * times + mm;
  if (value?.is === 'length') return { is: 'length', mm: moved(value.mm) };
  if (value?.is !== 'window') return undefined;
  const [centre, half] = [(value.loMm + value.hiMm) / 2, (value.hiMm - value.loMm) / 2];
  return { is: 'window', loMm: moved(centre) - half, hiMm: moved(centre) + half };
}

/** The stripes that a follow-up leaves a plan with. */
function restriped(before: PlanAsk['stripes'], edit: Edit['stripes']): PlanAsk['stripes'] {
  if (edit === 'meet') return before && { ...before, meets: true };
  return edit === null ? undefined : (edit ?? before);
}

/** Another machine brings its own needles, and the setting of the one before it means nothing there. */
export function rebenched(before: Bench, edit: Bench): Bench {
  const { machine, needles, tension, ...yarn } = before;
  const names = ({ machine: name, needles: n }: Bench): boolean => name !== undefined || n !== undefined;
  if (!names(edit)) return { ...before, ...edit };
  return { ...yarn, ...(names(before) || tension === undefined ? {} : { tension }), ...edit };
}

/** Setting one of a group of which one is needed removes the others, unless both were set at once; the card says so. */
function withoutRivals(subject: PlanAsk, edit: Edit): Record<string, Value> {
  const varied = idsOf(edit.sizes);
  const set = Object.keys(edit.values).filter((id) => isSize(edit.values[id]));
  const rivals = rivalsOf(subject, [...set, ...varied]);
  const stays = ([id, value]: [string, Value]) =>
    !varied.includes(id) && (!rivals.includes(id) || set.includes(id) || !isSize(value));
  return Object.fromEntries(Object.entries(subject.values).filter(stays));
}

/** Every ask of the groups of which one is needed, and of which one is set. */
const rivalsOf = ({ piece }: PlanAsk, set: readonly string[]): string[] =>
  (pieceById(piece ?? '')?.needs ?? []).flatMap((group) => (group.some((id) => set.includes(id)) ? group : []));

const idsOf = (sizes: PlanAsk['sizes'] = []): string[] => sizes.flatMap(({ values }) => Object.keys(values));

/** True for an edit that sets what the sizes in hand differ in: its one value takes the place of them all. */
function setsSize(subject: PlanAsk, edit: Edit): boolean {
  const varied = idsOf(subject.sizes);
  const rivals = rivalsOf(subject, varied);
  return Object.entries(edit.values).some(
    ([id, value]) => varied.includes(id) || (isSize(value) && rivals.includes(id)),
  );
}

/** A thing refused, `no closure`, is the rival of no size. */
const isSize = (value: Value | null | undefined): boolean =>
  value !== null && value !== undefined && !(value.is === 'length' && value.mm === 0);

/** "Make it 12" keeps the half-width last stated; a size bounded on one side states none. */
function withHalfWidth(value: Value, before: Value | undefined): Value {
  if (value.is !== 'length' || before?.is !== 'window') return value;
  if (before.given?.some((made) => made === 'at_least' || made === 'at_most')) return value;
  const half = (before.hiMm - before.loMm) / 2;
  const { mm, ...rest } = value;
  return { ...rest, is: 'window', loMm: mm - half, hiMm: mm + half };
}
