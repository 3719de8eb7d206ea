import { z } from 'zod';
import { isOfUse, type Piece, pieceById, pieces } from '../../../core/index.js';
import { Due, type FormValues, isOfPiece, PlanAsk, Size, type Value } from '../../request.js';
import { joined } from '../names.js';
import { askField, askRead, sizesTyped } from './ask-field.js';
import { benchFilled, benchList, benchRead, OTHER } from './bench-field.js';
import { type Field, type Form, type Known, MOST_FIELDS } from './form.js';
import { fieldReader, typedAgain } from './typed.js';

/** What was said that has no field. */
const Unseen = PlanAsk.pick({ piece: true, focus: true, stripes: true, team: true, shared: true });

/** Several sizes as they were said, in the field of what they differ in first. */
const Listed = z.object({ at: z.string(), text: z.string(), piece: z.string().optional(), sizes: z.array(Size) });

const PIECE: Field = {
  is: 'select',
  id: 'piece',
  label: 'Piece',
  required: true,
  redraws: true,
  options: pieces.map(({ id, label }) => ({ id, label })),
};
const COPIES: Field = { is: 'text', id: 'copies', label: 'How many', hint: 'One if left empty.' };

export const planForm: Form = {
  title: 'Plan a piece',
  submit: 'Work Out Rows',
  at: { Needles: 'bench.needles' },

  filled(said, known) {
    const ask = isOfPiece(said) ? said.ask : undefined;
    const values = Object.entries(ask?.values ?? {}).map(([id, value]) => [id, typedAgain(value, known.units)]);
    const listed = ask && listedIn(ask);
    const { focus = [], stripes, team, shared } = ask ?? {};
    const hasUnseen = focus.length > 0 || [stripes, team, shared].some((one) => one !== undefined);
    return {
      due: ask?.due === undefined ? '' : JSON.stringify(ask.due),
      unseen: hasUnseen ? JSON.stringify({ piece: ask?.piece, focus, stripes, team, shared }) : '',
      sizes: listed === undefined ? '' : JSON.stringify(listed),
      ...(listed && { [listed.at]: listed.text }),
      ...benchFilled(ask?.on ?? {}, known),
      ...Object.fromEntries(values),
      piece: ask?.piece ?? '',
      copies: ask === undefined || ask.copies === 1 ? '' : String(ask.copies),
    };
  },

  fields(values, known) {
    const piece = pieceById(values.piece ?? '');
    if (piece === undefined) return [PIECE];
    const others = [COPIES, ...(hasBench(values, known) ? [benchList(values, known)] : [])];
    const shown = shownAsks(piece, values, MOST_FIELDS - 1 - others.length);
    return [PIECE, ...shown.map((id) => askOf(piece, id, known)), ...others];
  },

  unseen(id, values) {
    if (id === 'due') return dueOf(values)?.said;
    if (id === 'unseen') {
      const { stripes, team } = unseenOf(values);
      return [...(stripes ? [stripes.said] : []), ...(team ? ['who makes them'] : [])].join('; ') || undefined;
    }
    return pieceById(values.piece ?? '')?.asks[id]?.label.toLowerCase();
  },

  request(values, known) {
    const reader = fieldReader(values, known.units);
    const piece = pieceById(values.piece ?? '');
    if (piece === undefined) return { ok: false, problems: [{ at: 'piece', says: 'Which piece is it for?' }] };
    const given: Record<string, Value> = {};
    let sizes = sizesKept(values, piece);
    const isListed = (id: string): boolean => sizes?.some((size) => id in size.values) === true;
    for (const [id, ask] of Object.entries(piece.asks)) {
      if (isListed(id)) continue;
      const several = sizesTyped(piece, id, ask, known.units, reader.text(id));
      if (several !== undefined && sizes !== undefined)
        reader.refuse(id, 'Only one field can hold several sizes. Ask for the others in a form of their own.');
      if (several !== undefined) sizes = sizes ?? several;
      if (several !== undefined) continue;
      const value = askRead(piece, id, ask, known.units, reader);
      if (value !== undefined) given[id] = value;
    }
    for (const group of piece.needs) {
      const [first = ''] = group.filter((id) => isOfUse(piece, id, given));
      if (group.every((id) => reader.text(id) === ''))
        reader.refuse(first, piece.asks[first]?.question ?? `I need the ${piece.asks[first]?.label.toLowerCase()}.`);
    }
    const copies = reader.count('copies') ?? 1;
    if (!Number.isInteger(copies) || copies < 1 || copies > 500)
      reader.refuse('copies', `I read ${copies}. It must be a whole number between 1 and 500.`);
    const on = benchRead(values, known, reader);
    if (reader.faults.length > 0) return { ok: false, problems: reader.faults };
    const ask: PlanAsk = { piece: piece.id, copies, values: given, sizes, on, due: dueOf(values), ...unseenOf(values) };
    return { ok: true, value: { kind: 'plan', ask } };
  },
};

/** There is something to choose, or something else was named. */
const hasBench = ({ bench }: FormValues, { benches }: Known): boolean =>
  benches.length > 1 || (benches.length === 1 && bench === OTHER);

/** The asks that have room: what the piece needs, what was said, what other fields depend on, then its other asks. */
function shownAsks(piece: Piece, values: FormValues, room: number): string[] {
  const given = Object.fromEntries(
    Object.keys(piece.asks).flatMap((id) => (values[id] ? [[id, { is: 'choice', id: values[id] }]] : [])),
  );
  const ids = Object.keys(piece.asks).filter((id) => isOfUse(piece, id, given) || values[id]);
  const groups = piece.needs.map((group) => group.filter((id) => ids.includes(id)));
  const needed = groups.flatMap((group) => group.find((id) => values[id]) ?? group[0] ?? []);
  const isRuling = (id: string): boolean => Object.values(piece.asks).some(({ onlyWith }) => onlyWith?.choice === id);
  const said = ids.filter((id) => values[id]);
  const inTurn = [...needed, ...said, ...ids.filter(isRuling), ...groups.flat(), ...piece.pair, ...ids];
  const shown = [...new Set(inTurn.filter((id) => ids.includes(id)))].slice(0, room);
  const inOrder = Object.keys(piece.asks).filter((id) => shown.includes(id));
  return [...inOrder.filter(isRuling), ...inOrder.filter((id) => !isRuling(id))];
}

const askOf = (piece: Piece, id: string, { units }: Known): Field => {
  const ask = piece.asks[id];
  if (ask === undefined) throw new Error(`${piece.id} asks nothing called ${id}`);
  return askField(piece, id, ask, units);
};

function dueOf({ due = '' }: FormValues): PlanAsk['due'] {
  return due === '' ? undefined : Due.parse(JSON.parse(due));
}

/** What was said without a field; a share is of the piece that was shared. */
function unseenOf({ unseen = '', piece }: FormValues): Omit<z.infer<typeof Unseen>, 'piece'> {
  if (unseen === '') return { focus: [] };
  const { piece: of, shared, ...rest } = Unseen.parse(JSON.parse(unseen));
  return { ...rest, ...(of === piece && { shared }) };
}

function listedIn({ piece, sizes }: PlanAsk): z.infer<typeof Listed> | undefined {
  const at = Object.keys(sizes?.[0]?.values ?? {})[0];
  return sizes && at !== undefined ? { at, text: joined(sizes.map(({ label }) => label)), piece, sizes } : undefined;
}

/** The sizes that were said, as long as their field holds what it was filled with. */
function sizesKept(values: FormValues, piece: Piece): PlanAsk['sizes'] {
  if (!values.sizes) return undefined;
  const { at, text, piece: of, sizes } = Listed.parse(JSON.parse(values.sizes));
  return of === piece.id && values[at]?.trim() === text ? sizes : undefined;
}
