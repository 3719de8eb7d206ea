import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isOfUse } from '../../core/of-use.js';
import { pieceById, pieces } from '../../core/pieces/index.js';
import { quantityAt } from '../../core/units/quantity.js';
import { MM_PER } from '../../core/units/units.js';
import { FIXED, numbersIn, plainlyAsked, solvedAsk } from './asking.js';

const repeated = (words: readonly string[]): string[] => words.filter((word, i) => words.indexOf(word) !== i);

/** A typed length in mm. */
function mmOfTyped(typed: string): number {
  const quantity = quantityAt(typed, 0);
  const unit = quantity?.unit;
  if (quantity === undefined || (unit !== 'in' && unit !== 'cm')) throw new Error(`no length read in "${typed}"`);
  return quantity.lo * MM_PER[unit];
}

const eighths = fc.integer({ min: 8 * 5, max: 8 * 40 });

describe('the registry of pieces', () => {
  test('gives every piece an id of its own, by which it is found', () => {
    expect(repeated(pieces.map((p) => p.id))).toEqual([]);
    expect(pieces.map((p) => pieceById(p.id))).toEqual(pieces);
    expect(pieceById('')).toBeUndefined();
  });

  test('lets no word stand for two pieces', () => {
    expect(repeated(pieces.flatMap(({ words, sizedWords = [] }) => [...words, ...sizedWords]))).toEqual([]);
  });
});

describe.each(pieces.map((piece) => [piece.label, piece] as const))('%s', (_, piece) => {
  test('has words, and an example that holds one of them', () => {
    expect(piece.words.length).toBeGreaterThan(0);
    expect(piece.words.some((word) => piece.example.includes(word))).toBe(true);
  });

  test('needs and pairs only what it asks', () => {
    const known = Object.keys(piece.asks);
    expect(piece.needs.every((group) => group.length > 0)).toBe(true);
    expect(known).toEqual(expect.arrayContaining([...piece.pair, ...piece.needs.flat()]));
  });

  test('takes asks only with options of a choice of its own, one of each needed group with each of them', () => {
    for (const { onlyWith } of Object.values(piece.asks)) {
      const ask = piece.asks[onlyWith?.choice ?? ''];
      if (onlyWith === undefined) continue;
      const options = ask?.is === 'choice' ? ask.options.map(({ id }) => id) : [];
      expect(options).toEqual(expect.arrayContaining([...onlyWith.options]));
      for (const id of options) {
        const values = { [onlyWith.choice]: { is: 'choice', id } };
        expect(piece.needs.every((group) => group.some((one) => isOfUse(piece, one, values)))).toBe(true);
      }
    }
  });

  test('is knitted as two parts where it is a pair', () => {
    if (!piece.isPair) return;
    const outcome = plainlyAsked(piece, { loMm: 200, hiMm: 220 });
    expect(outcome).toMatchObject({ ok: true, value: { parts: 2 } });
  });

  test('asks within ranges that run upward, with defaults inside them', () => {
    for (const ask of Object.values(piece.asks)) {
      if (ask.is === 'choice') expect(ask.options.map((o) => o.id)).toContain(ask.default);
      else {
        const [lo, hi] = 'min' in ask ? [ask.min, ask.max] : [ask.minMm, ask.maxMm];
        expect(lo).toBeLessThan(hi);
        const preset = (ask.is === 'length' ? ask.defaultMm : ask.is === 'percent' ? ask.default : lo) ?? lo;
        const usual = (ask.is === 'length' ? ask.usualMm : lo) ?? lo;
        for (const one of [preset, usual]) expect(one >= lo && one <= hi).toBe(true);
      }
    }
  });

  test('comes to the same plan from a size in inches and the same size in centimetres', () => {
    fc.assert(
      fc.property(eighths, fc.integer({ min: 1, max: 8 }), (lo, wide) => {
        const inches = (n: number) => mmOfTyped(`${n / 8} in`);
        const centimetres = (n: number) => mmOfTyped(`${((n / 8) * 2.54).toFixed(4)} cm`);
        const [a, b] = [inches, centimetres].map((mm) => plainlyAsked(piece, { loMm: mm(lo), hiMm: mm(lo + wide) }));
        const [inA, inB] = [numbersIn(a), numbersIn(b)];
        const apart = inA.filter(([path, n], i) => inB[i]?.[0] !== path || Math.abs(n - inB[i][1]) > 1e-6);
        expect(apart).toEqual([]);
        expect(inA.length).toBe(inB.length);
      }),
      FIXED,
    );
  });

  test('never takes fewer rows for a larger size, and twice the rows in the piece for twice what they make of it', () => {
    const { minMm, maxMm } = solvedAsk(piece);
    const planned = (loMm: number, hiMm: number) => {
      const outcome = plainlyAsked(piece, { loMm, hiMm });
      if (!outcome.ok) throw new Error(outcome.problems.map((p) => p.code).join());
      return outcome.value;
    };
    const rowsInPiece = (loMm: number, hiMm: number): number => planned(loMm, hiMm).landing.rowsInPiece;
    const least = Math.max(60, minMm);
    fc.assert(
      fc.property(
        fc.double({ min: least, max: Math.min(500, (maxMm - 120) / 2.1), noNaN: true }),
        fc.double({ min: 1, max: 60, noNaN: true }),
        (lo, by) => {
          const { landing, sizes, graftRows } = planned(lo, lo * 1.05);
          const fixedMm = sizes.find(({ id }) => id === landing.dimension)?.measure.fixedMm ?? 0;
          const twice = (mm: number): number => 2 * (mm - fixedMm) + fixedMm;
          const off = rowsInPiece(twice(lo), twice(lo * 1.05)) - 2 * landing.rowsInPiece;
          expect(rowsInPiece(lo + by, (lo + by) * 1.05)).toBeGreaterThanOrEqual(landing.rowsInPiece);
          // An end shut flat makes half a row, so only every other half can be met.
          expect(Math.abs(off)).toBeLessThanOrEqual(Number.isInteger(graftRows) ? 1 : 1.5);
        },
      ),
      FIXED,
    );
  });
});
