import { type Ask, type Piece, pieces, printedLength, type Units } from '../../../core/index.js';
import { bareUnit, typedValue } from '../../language/lengths.js';
import { read } from '../../language/read.js';
import type { Edit, PlanAsk, Value } from '../../request.js';
import { capital } from '../names.js';
import type { Field } from './form.js';
import { type FieldReader, lengthHint, quantityOnly, quoted } from './typed.js';

/** The field of one ask of a piece. An option of its own choice on which other asks depend draws the form anew. */
export function askField(piece: Piece, id: string, ask: Ask, units: Units | undefined): Field {
  const { label } = ask;
  const others = piece.needs.find((group) => group.includes(id))?.filter((other) => other !== id) ?? [];
  const instead = others.map((other) => piece.asks[other]?.label.toLowerCase()).join(' or ');
  const hints = [...(instead === '' ? [] : [`This or the ${instead}.`]), ...hintsOf(ask, units)];
  if (ask.is !== 'choice') return { is: 'text', id, label, hint: hints.join(' ') };
  const redraws = Object.values(piece.asks).some(({ onlyWith }) => onlyWith?.choice === id);
  const options = ask.options.map((option) => ({ id: option.id, label: capital(option.label) }));
  return { is: 'select', id, label, options, redraws };
}

function hintsOf(ask: Ask, units: Units | undefined): string[] {
  const long = (mm: number): string => printedLength(mm, units ?? 'cm');
  switch (ask.is) {
    case 'window':
      return [lengthHint(units), `A range works: ${long(ask.minMm * 2)} to ${long(ask.minMm * 2.2)}.`];
    case 'length':
      return ask.defaultMm === undefined ? [lengthHint(units)] : [`${long(ask.defaultMm)} if left empty.`];
    case 'percent':
      return ask.default === undefined ? ['In per cent.'] : [`In per cent; ${ask.default} if left empty.`];
    case 'count':
      return [`A number from ${ask.min} to ${ask.max}.`];
    case 'contents':
      return ['Three sides of a thing that must go in, such as 25 x 17 x 1 cm.'];
    case 'choice':
      return [];
  }
}

/** What a field says, as the value that words would give that ask; what cannot be read is noted beside it. */
export function askRead(piece: Piece, id: string, ask: Ask, units: Units | undefined, reader: FieldReader) {
  const typed = reader.text(id);
  if (typed === '') return undefined;
  if (ask.is === 'choice') return typed === ask.default ? undefined : choice(ask, id, typed, reader);
  const value = valueTyped(piece, id, ask, units, typed);
  if (value === undefined) return reader.refuse(id, `I could not read ${quoted(typed)}. ${hintsOf(ask, units)[0]}`);
  if (value.is === 'bare') return reader.refuse(id, `Is ${quoted(typed)} in inches or in centimetres? Write its unit.`);
  return value;
}

function choice(ask: Ask & { is: 'choice' }, id: string, typed: string, reader: FieldReader): Value | undefined {
  const option = ask.options.find((one) => one.id === typed);
  return option ? { is: 'choice', id: typed, said: option.label } : reader.refuse(id, 'Choose one of these.');
}

/** A text as the value of one ask: a quantity alone, or the words that would answer the question about it. */
function valueTyped(
  piece: Piece,
  id: string,
  ask: Exclude<Ask, { is: 'choice' }>,
  units: Units | undefined,
  said: string,
): Value | undefined {
  const quantity = quantityOnly(said);
  if (quantity === undefined) return valueInWords(piece, id, ask, units, said);
  const isOne = quantity.lo === quantity.hi && quantity.halfWidth === undefined;
  const { unit, lo } = quantity;
  if (ask.is === 'count') return isOne && unit === undefined ? { is: 'count', count: lo, said } : undefined;
  if (ask.is === 'percent')
    return isOne && (unit === undefined || unit === 'percent') ? { is: 'percent', percent: lo, said } : undefined;
  if (ask.is === 'contents') return valueInWords(piece, id, ask, units, said);
  return typedValue(quantity, bareUnit([], units), said, ask);
}

/** `48, 52 and 56 cm`: several sizes of a piece, which differ in one ask; undefined for a text that is no list. */
export function sizesTyped(
  piece: Piece,
  id: string,
  ask: Ask,
  units: Units | undefined,
  said: string,
): PlanAsk['sizes'] {
  if (ask.is === 'choice' || ask.is === 'contents' || !LIST.test(said) || quantityOnly(said) !== undefined)
    return undefined;
  return wordsRead(piece, id, ask, units, said, ({ sizes }) =>
    sizes?.every(({ values }) => id in values) ? sizes : undefined,
  );
}

const LIST = /[,;/&]|\b(?:and|or|to)\b/i;

/** `a woman`, `at least 24 cm`, `none`: read as talk reads it, and only where all of it is of this ask. */
function valueInWords(piece: Piece, id: string, ask: Ask, units: Units | undefined, said: string): Value | undefined {
  const value =
    wordsRead(piece, id, ask, units, said, ({ values, sizes }) => (sizes ? undefined : values[id])) ?? undefined;
  return value && { ...value, said };
}

/** What a text says of an ask, in the first way to say it of which nothing is left over. */
function wordsRead<T>(
  piece: Piece,
  id: string,
  ask: Ask,
  units: Units | undefined,
  said: string,
  taken: (edit: Edit) => T | undefined,
): T | undefined {
  const context = { pieces, units, machines: [], yarns: [], subjectPiece: piece.id, holes: [id] };
  const [word = ''] = ask.words;
  const ways = ask.is === 'contents' ? [`to take ${said}`] : [`${word} ${said}`, `${said} ${word}`, said];
  for (const way of ways) {
    const { meanings, trace } = read(way, context);
    const [meaning, ...others] = meanings;
    if (others.length > 0 || trace.leftover.length > 0 || meaning?.kind !== 'change') continue;
    const found = taken(meaning.edit);
    if (found) return found;
  }
  return undefined;
}
