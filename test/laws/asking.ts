import fc from 'fast-check';
import type { Measurement } from '../../core/gauge/measurement.js';
import type { Given } from '../../core/given.js';
import type { Ask, Piece } from '../../core/piece.js';
import { pieces } from '../../core/pieces/index.js';
import { type Plan, type PlanInput, plan } from '../../core/plan.js';
import type { Outcome } from '../../core/problems.js';
import { between, EVEN, MEDIUM, mm, read, tube } from '../core/samples.js';

/** Every law runs on the same examples each time; a counterexample is printed by fast-check. */
export const FIXED = { seed: 20_240_229, numRuns: 400 };

type Values = Record<string, Given>;

/** What an ask may be given at the ends of its range, and nothing at all. */
function corners(ask: Ask): (Given | undefined)[] {
  switch (ask.is) {
    case 'window': {
      const { minMm, maxMm } = ask;
      const windows = [between(minMm, minMm + 1), between(minMm, maxMm), between(maxMm - 1, maxMm)];
      return [undefined, mm(minMm), mm(maxMm), ...windows];
    }
    case 'length':
      return [undefined, mm(ask.minMm), mm(ask.maxMm), ...(ask.named ?? []).map((one) => mm(one.mm))];
    case 'count':
      return [undefined, { is: 'count', count: ask.min }, { is: 'count', count: ask.max }];
    case 'percent':
      return [undefined, { is: 'percent', percent: ask.min }, { is: 'percent', percent: ask.max }];
    case 'choice':
      return [undefined, ...ask.options.map(({ id }): Given => ({ is: 'choice', id }))];
    case 'contents': {
      const { minMm, maxMm } = ask;
      const sides = [
        [minMm, minMm, minMm],
        [minMm, maxMm, minMm],
        [160, 80, 10],
        [maxMm, maxMm, maxMm],
      ] as const;
      return [undefined, ...sides.map((sidesMm): Given => ({ is: 'contents', sidesMm }))];
    }
  }
}

/** More combinations than this are thinned evenly, so that a piece with many asks is still tried within a second. */
const MOST_CORNERS = 400;

const thinned = <T>(all: readonly T[]): T[] => {
  const step = Math.max(1, all.length / MOST_CORNERS);
  return all.filter((_, i) => Math.floor(i / step) !== Math.floor((i - 1) / step));
};

/** Combinations of corners of a piece's asks: every one, or evenly chosen where they are many. */
export function cornerValues(piece: Piece): Values[] {
  return thinned(everyCorner(piece));
}

function everyCorner(piece: Piece): Values[] {
  return Object.entries(piece.asks).reduce<Values[]>(
    (made, [id, ask]) =>
      made.flatMap((values) =>
        corners(ask).map((given) => (given === undefined ? values : { ...values, [id]: given })),
      ),
    [{}],
  );
}

const inside = (minMm: number, maxMm: number) => fc.double({ min: minMm, max: maxMm, noNaN: true });

/** Anything within the range of an ask. */
function given(ask: Ask): fc.Arbitrary<Given> {
  switch (ask.is) {
    case 'window':
      return fc.oneof(
        inside(ask.minMm, ask.maxMm).map(mm),
        fc
          .tuple(inside(ask.minMm, ask.maxMm), inside(ask.minMm, ask.maxMm))
          .filter(([a, b]) => a !== b)
          .map(([a, b]) => between(Math.min(a, b), Math.max(a, b))),
      );
    case 'length':
      return inside(ask.minMm, ask.maxMm).map(mm);
    case 'count':
      return fc.integer({ min: ask.min, max: ask.max }).map((count): Given => ({ is: 'count', count }));
    case 'percent':
      return inside(ask.min, ask.max).map((percent): Given => ({ is: 'percent', percent }));
    case 'choice':
      return fc.constantFrom(...ask.options.map(({ id }): Given => ({ is: 'choice', id })));
    case 'contents': {
      const side = inside(ask.minMm, ask.maxMm);
      return fc.tuple(side, side, side).map((sidesMm): Given => ({ is: 'contents', sidesMm }));
    }
  }
}

/** Values for any of a piece's asks, with at least the first of each group that is needed. */
function valuesOf(piece: Piece): fc.Arbitrary<Values> {
  const needed = piece.needs.flatMap((group) => group.slice(0, 1));
  const asks = Object.entries(piece.asks).map(([id, ask]) => [id, given(ask)] as const);
  return fc.record(Object.fromEntries(asks), { requiredKeys: needed }) as fc.Arbitrary<Values>;
}

/** Fabrics from very fine to very coarse, known at rest or only from hanging. */
export const FABRICS: readonly (readonly Measurement[])[] = [
  MEDIUM,
  EVEN,
  [tube('rows only', 80, 400)],
  [tube('hung', 110, 575, { state: 'hanging', stitches: read(46, 330) })],
  [tube('fine', 200, 200, { stitches: read(100, 150) }), tube('washed', 200, 190, { state: 'washed' })],
  [tube('coarse', 20, 300, { stitches: read(10, 250) })],
];
export const MACHINES = [undefined, 12, 46, 120];

/** Any piece asked for within its ranges, on any bench. */
export const input: fc.Arbitrary<PlanInput> = fc.constantFrom(...pieces).chain((piece) =>
  fc.record({
    piece: fc.constant(piece),
    values: valuesOf(piece),
    needles: fc.constantFrom(...MACHINES),
    measurements: fc.constantFrom(...FABRICS),
    pieces: fc.integer({ min: 1, max: 24 }),
  }),
);

/** The size of a piece that rows solve, as it is asked for: a window that it needs, else the first that it takes. */
export function solvedAsk(piece: Piece) {
  const isWindow = (id: string): boolean => piece.asks[id]?.is === 'window';
  const id = piece.needs[0]?.find(isWindow) ?? Object.keys(piece.asks).find(isWindow) ?? '';
  const ask = piece.asks[id];
  if (ask?.is !== 'window') throw new Error(`${piece.id} takes no size`);
  return { id, minMm: ask.minMm, maxMm: ask.maxMm };
}

/** A size of a piece that rows do not solve: 200 mm, or what is in its range and mostly suits the others. */
const besides = (ask: Ask | undefined): Given =>
  mm(ask !== undefined && 'minMm' in ask ? Math.max(ask.minMm, Math.min(200, 2 * ask.minMm)) : 200);

/**
 * A piece asked for with the least that it needs, before a machine is known that could be too small for it: `window` is
 * that of the dimension that rows solve.
 */
export function plainlyAsked(piece: Piece, window: { loMm: number; hiMm: number }): Outcome<Plan> {
  const solved = solvedAsk(piece).id;
  const others = piece.needs.filter((group) => !group.includes(solved));
  const needed = others.map(([id = '']): [string, Given] => [id, besides(piece.asks[id])]);
  const values: Values = { ...Object.fromEntries(needed), [solved]: between(window.loMm, window.hiMm) };
  return plan({ piece, values, needles: undefined, measurements: MEDIUM, pieces: 1 });
}

/** Every number anywhere in a value, with the path it was found at. */
export function numbersIn(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${path}.${key}`));
}

/** The numbers no maker should ever see. */
export const unprintable = (value: unknown): [string, number][] =>
  numbersIn(value).filter(([, n]) => !Number.isFinite(n) || Object.is(n, -0));
