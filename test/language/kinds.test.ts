import { describe, expect, test } from 'vitest';
import { read } from '../../bot/language/read.js';
import { type Ask, type Piece, pieces } from '../../core/index.js';
import { PLAIN } from './reading.js';

/** What a text plans, or every meaning of it where it is no one plan. */
function planned(text: string) {
  const { meanings, trace } = read(text, { ...PLAIN, units: undefined });
  const [meaning] = meanings;
  return meanings.length === 1 && meaning?.kind === 'plan' ? { ...meaning.ask, left: trace.leftover } : meanings;
}

/** A size in the middle of a range, in whole centimetres where that is in it. */
function middle({ minMm, maxMm }: { minMm: number; maxMm: number }): string {
  const mm = Math.sqrt(Math.max(minMm, 1) * maxMm);
  return mm < 20 ? `${Math.round(mm)} mm` : `${Math.round(mm / 10)} cm`;
}

/** The asks before one, of which its words may be too: there the first is meant. */
const isOwn = (piece: Piece, id: string, word: string): boolean =>
  Object.entries(piece.asks).find(([, ask]) => ask.is !== 'choice' && ask.words.includes(word))?.[0] === id;

/** Before a number these mean that it is about so much. */
const isAbout = (word: string): boolean => ['round', 'around'].includes(word);

/** How a maker says a value of an ask by one of its words, in every order that is usual. */
function sayings(ask: Ask, word: string): string[] {
  switch (ask.is) {
    case 'window':
    case 'length':
      return [
        `${middle(ask)} ${word}`,
        `${word}: ${middle(ask)}`,
        ...(isAbout(word) ? [] : [`${word} ${middle(ask)}`]),
      ];
    case 'percent':
      return [`8% ${word}`, `${word} 8%`];
    case 'count':
      return [`${ask.min + 1} ${word}`];
    case 'choice':
    case 'contents':
      return [];
  }
}

const optionsOf = (ask: Ask) => (ask.is === 'choice' ? ask.options : []);

describe.each(pieces.map((piece) => [piece.label, piece] as const))('%s', (_, piece) => {
  const name = piece.words[0] ?? '';

  test('its example is read whole', () => {
    expect(planned(piece.example)).toMatchObject({ piece: piece.id, left: [] });
  });

  test.each(piece.words)('"a %s" is one of it, and no other kind', (word) => {
    expect(planned(`a ${word}`)).toMatchObject({ piece: piece.id, copies: 1, left: [] });
    expect(planned(`rows for a grey ${word} please`)).toMatchObject({ piece: piece.id });
  });

  test.each(piece.words.filter((word) => /s$/.test(word) && word !== 'warmers' && !piece.isPair))(
    '"3 %s" are three of it',
    (word) => {
      expect(planned(`3 ${word}`)).toMatchObject({ piece: piece.id, copies: 3, left: [] });
      expect(planned(`a dozen ${word}`)).toMatchObject({ piece: piece.id, copies: 12, left: [] });
    },
  );

  test.each(piece.sizedWords ?? [])('"%s" beside a size is one of it, and alone is none', (word) => {
    expect(planned(`${word} 10 cm across`)).toMatchObject({ piece: piece.id });
    expect(planned(`a 10 cm ${word}`)).toMatchObject({ piece: piece.id });
    expect(planned(`a ${word} of yarn`)).toMatchObject([{ kind: 'unread' }]);
  });

  const said = Object.entries(piece.asks).flatMap(([id, ask]) =>
    ask.words.filter((word) => isOwn(piece, id, word)).flatMap((word) => sayings(ask, word).map((text) => [text, id])),
  );
  test.each(said)('"%s" says its %s', (text = '', id = '') => {
    expect(planned(`${name} ${text}`)).toMatchObject({
      piece: piece.id,
      values: { [id]: { is: piece.asks[id]?.is === 'window' ? 'length' : piece.asks[id]?.is } },
      left: [],
    });
  });

  const chosen = Object.entries(piece.asks).flatMap(([id, ask]) =>
    optionsOf(ask).flatMap((option) => option.words.map((words) => [words, id, option.id])),
  );
  test.each(chosen)('"%s" chooses its %s', (words = '', id = '', option = '') => {
    expect(planned(`${name}, ${words}`)).toMatchObject({ piece: piece.id, values: { [id]: { id: option } }, left: [] });
  });
});
