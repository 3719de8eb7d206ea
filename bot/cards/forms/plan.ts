import { isOfUse, type Piece, pieceById, pieces } from '../../../core/index.js';
import { Due, type FormValues, isOfPiece, type PlanAsk, type Value } from '../../request.js';
import { askField, askRead } from './ask-field.js';
import { benchFields, benchFilled, benchRead, OTHER } from './bench-field.js';
import type { Field, Form, Known } from './form.js';
import { fieldReader, typedAgain } from './typed.js';

/** What a form of a piece shows beside the piece, its yarn and how many: what it needs, what was said, then the rest. */
const MOST_OFFERED = 4;

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
    return {
      ...benchFilled(ask?.on ?? {}, known),
      ...Object.fromEntries(values),
      piece: ask?.piece ?? '',
      copies: ask === undefined || ask.copies === 1 ? '' : String(ask.copies),
      due: ask?.due === undefined ? '' : JSON.stringify(ask.due),
    };
  },

  fields(values, known) {
    const piece = pieceById(values.piece ?? '');
    if (piece === undefined) return [PIECE];
    const asks = shownAsks(piece, values).map((id) => askOf(piece, id, known));
    return [PIECE, ...asks, COPIES, ...(hasBench(values, known) ? benchFields(values, known, false) : [])];
  },

  request(values, known) {
    const reader = fieldReader(values, known.units);
    const piece = pieceById(values.piece ?? '');
    if (piece === undefined) return { ok: false, problems: [{ at: 'piece', says: 'Which piece is it for?' }] };
    const given: Record<string, Value> = {};
    for (const [id, ask] of Object.entries(piece.asks)) {
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
    const ask: PlanAsk = { piece: piece.id, copies, values: given, on, focus: [], due: dueOf(values) };
    return { ok: true, value: { kind: 'plan', ask } };
  },
};

/** There is something to choose, or something else was named. */
const hasBench = ({ bench }: FormValues, { benches }: Known): boolean =>
  benches.length > 1 || (benches.length === 1 && bench === OTHER);

/** What the piece needs, what was said, what other fields depend on; then its other asks while there is room. */
function shownAsks(piece: Piece, values: FormValues): string[] {
  const given = Object.fromEntries(
    Object.keys(piece.asks).flatMap((id) => (values[id] ? [[id, { is: 'choice', id: values[id] }]] : [])),
  );
  const ids = Object.keys(piece.asks).filter((id) => isOfUse(piece, id, given) || values[id]);
  const isRuling = (id: string): boolean => Object.values(piece.asks).some(({ onlyWith }) => onlyWith?.choice === id);
  const first = ids.filter((id) => isRuling(id) || values[id] || piece.needs.flat().includes(id));
  const others = [...piece.pair, ...ids].filter((id) => ids.includes(id) && !first.includes(id));
  const shown = [...new Set([...first, ...others])].slice(0, Math.max(first.length, MOST_OFFERED));
  return [...shown.filter(isRuling), ...shown.filter((id) => !isRuling(id))];
}

const askOf = (piece: Piece, id: string, { units }: Known): Field => {
  const ask = piece.asks[id];
  if (ask === undefined) throw new Error(`${piece.id} asks nothing called ${id}`);
  return askField(piece, id, ask, units);
};

function dueOf({ due = '' }: FormValues): PlanAsk['due'] {
  return due === '' ? undefined : Due.parse(JSON.parse(due));
}
