import type { Piece } from './piece.js';

type Values = Readonly<Record<string, { is: string; id?: string } | undefined>>;

/**
 * True for an ask that is of use beside what was given: every ask, but one that its piece takes `onlyWith` other options
 * of a choice. An option counts as chosen when it is given, when only such asks are given as go with it, else by default.
 * @param values what was given, by ask id
 */
export function isOfUse(piece: Piece, id: string, values: Values): boolean {
  const only = piece.asks[id]?.onlyWith;
  return only === undefined || only.options.includes(optionOf(piece, only.choice, values));
}

function optionOf(piece: Piece, choice: string, values: Values): string {
  const ask = piece.asks[choice];
  const preset = ask?.is === 'choice' ? ask.default : '';
  const given = values[choice];
  if (given?.id !== undefined) return given.id;
  const implied = Object.keys(values).flatMap((id) => {
    const only = piece.asks[id]?.onlyWith;
    return only?.choice === choice ? [only.options] : [];
  });
  return implied.some((options) => options.includes(preset)) ? preset : (implied[0]?.[0] ?? preset);
}
