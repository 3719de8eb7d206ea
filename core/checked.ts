import type { Given } from './given.js';
import { isOfUse } from './of-use.js';
import type { Ask, Asked, Asks, Piece, Tolerance } from './piece.js';
import { done, type FieldName, type Outcome, type Problem, refused } from './problems.js';
import { type Contents, contentsOf } from './sizing/contents.js';
import type { Window } from './sizing/rows.js';

type AskedValue = Window | Contents | number | string | undefined;

/** What was asked of a piece, in range and complete, with the fields that fell back on a default. */
type Checked = { asked: Asked<Asks>; toleranced: readonly string[] };

/**
 * Returns what was asked of a piece, or every problem with it at once.
 * @param values by ask id; lengths in mm. A window ask takes a length and widens it by the piece's tolerance
 * @returns problems `missing`, `length_out_of_range`, `count_out_of_range`, `percent_out_of_range`, `not_whole`, `wrong_kind`,
 * `unknown_choice`, `empty_window`, `unknown_field`
 */
export function checked(piece: Piece, values: Readonly<Record<string, Given>>): Outcome<Checked> {
  const problems: Problem[] = [];
  const asked: Record<string, AskedValue> = {};
  for (const id of Object.keys(values)) {
    if (!Object.hasOwn(piece.asks, id))
      problems.push({ code: 'unknown_field', field: { id, label: id }, takes: fields(piece) });
  }
  for (const [id, ask] of Object.entries(piece.asks)) {
    const outcome = one(fieldName(id, ask), ask, values[id]);
    if (outcome.ok) asked[id] = outcome.value;
    else problems.push(...outcome.problems);
  }
  for (const group of piece.needs) {
    if (group.every((id) => values[id] === undefined || isNone(piece.asks[id], values[id]))) {
      const anyOf = group.filter((id) => isOfUse(piece, id, values));
      problems.push({ code: 'missing', anyOf: anyOf.map((id) => fieldName(id, piece.asks[id])) });
    }
  }
  const toleranced = Object.keys(piece.asks).filter(
    (id) => piece.asks[id]?.is === 'window' && values[id]?.is === 'length',
  );
  return problems.length === 0 ? done({ asked, toleranced }) : refused(...problems);
}

/** A length of nothing that stands for none at all: a closure that was refused is no size. */
const isNone = (ask: Ask | undefined, given: Given): boolean =>
  ask?.is === 'length' &&
  given.is === 'length' &&
  Object.is(given.mm, 0) &&
  (ask.named ?? []).some(({ mm }) => mm === 0);

/** The asks of a piece that take a value, by name. */
export const fields = (piece: Piece): FieldName[] => Object.entries(piece.asks).map(([id, ask]) => fieldName(id, ask));

const fieldName = (id: string, ask: Ask | undefined): FieldName => ({ id, label: ask?.label ?? id });

function one(field: FieldName, ask: Ask, given: Given | undefined): Outcome<AskedValue> {
  if (given === undefined) return done(defaultOf(ask));
  switch (ask.is) {
    case 'window':
      return windowed(field, ask, given);
    case 'length':
      if (given.is === 'window') {
        const { loMm, hiMm } = given;
        if (!(loMm < hiMm)) return refused({ code: 'empty_window', field, window: { loMm, hiMm } });
        return one(field, ask, { is: 'length', mm: (loMm + hiMm) / 2 });
      }
      if (given.is !== 'length') return refused({ code: 'wrong_kind', field, given, wanted: 'length' });
      return within(ask, given.mm) || isNone(ask, given) ? done(given.mm) : refused(outOfRange(field, ask, given.mm));
    case 'count':
      return counted(field, ask, given);
    case 'percent':
      if (given.is !== 'percent') return refused({ code: 'wrong_kind', field, given, wanted: 'percent' });
      return given.percent >= ask.min && given.percent <= ask.max
        ? done(given.percent)
        : refused({ code: 'percent_out_of_range', field, given: given.percent, min: ask.min, max: ask.max });
    case 'choice': {
      if (given.is !== 'choice') return refused({ code: 'wrong_kind', field, given, wanted: 'choice' });
      const options = ask.options.map((o) => o.id);
      return options.includes(given.id)
        ? done(given.id)
        : refused({ code: 'unknown_choice', field, given: given.id, options });
    }
    case 'contents': {
      if (given.is !== 'contents') return refused({ code: 'wrong_kind', field, given, wanted: 'contents' });
      const bad = given.sidesMm.find((mm) => !within(ask, mm));
      return bad === undefined ? done(contentsOf(given.sidesMm)) : refused(outOfRange(field, ask, bad));
    }
  }
}

function defaultOf(ask: Ask): number | string | undefined {
  if (ask.is === 'choice' || ask.is === 'percent') return ask.default;
  return ask.is === 'length' ? ask.defaultMm : undefined;
}

function windowed(field: FieldName, ask: Ask & { is: 'window' }, given: Given): Outcome<Window> {
  if (given.is === 'length') {
    if (!within(ask, given.mm)) return refused(outOfRange(field, ask, given.mm));
    return done(toleratedWindow(given.mm, ask.tolerance));
  }
  if (given.is !== 'window') return refused({ code: 'wrong_kind', field, given, wanted: 'length' });
  const { loMm, hiMm } = given;
  if (!(loMm < hiMm)) return refused({ code: 'empty_window', field, window: { loMm, hiMm } });
  const bad = [loMm, hiMm].find((mm) => !within(ask, mm));
  return bad === undefined ? done({ loMm, hiMm }) : refused(outOfRange(field, ask, bad));
}

/** The window a size stands for when none was given. */
export function toleratedWindow(mm: number, tolerance: Tolerance): Window {
  const half = 'mm' in tolerance ? tolerance.mm : tolerance.share * mm;
  return { loMm: mm - half, hiMm: mm + half };
}

function counted(field: FieldName, ask: Ask & { is: 'count' }, given: Given): Outcome<number> {
  if (given.is !== 'count') return refused({ code: 'wrong_kind', field, given, wanted: 'count' });
  if (!Number.isInteger(given.count)) return refused({ code: 'not_whole', field, given: given.count });
  return given.count >= ask.min && given.count <= ask.max
    ? done(given.count)
    : refused({ code: 'count_out_of_range', field, given: given.count, min: ask.min, max: ask.max });
}

// Written so that NaN is out of range as well.
const within = (ask: { minMm: number; maxMm: number }, mm: number): boolean => mm >= ask.minMm && mm <= ask.maxMm;

const outOfRange = (field: FieldName, ask: { minMm: number; maxMm: number }, givenMm: number): Problem => ({
  code: 'length_out_of_range',
  field,
  givenMm,
  minMm: ask.minMm,
  maxMm: ask.maxMm,
});
