import type { GaugeAsk, Request, StockAsk, Tension, Value } from '../request.js';
import { mmOfValue } from './gauge/measured.js';

/** A figure this far from the one it would replace is of something else. */
const MOST_APART = 2;

/**
 * A stored request with the figure that a correction means in its place: the one typed before, else a length for the
 * length nearest to it, a count for the rows, a weight for the weight. Undefined when it has no such figure.
 * @param was the figure as it was typed, when the maker said it
 */
export function amended(request: Request, value: Value, was: number | undefined): Request | undefined {
  switch (request.kind) {
    case 'record_gauge': {
      const gauge = amendedGauge(request.gauge, value, was);
      return gauge && { kind: 'record_gauge', gauge: { ...gauge, confirmed: true } };
    }
    case 'reading': {
      const row = countIn(value, was, request.row);
      if (row !== undefined) return { ...request, row, confirmed: true };
      return isLength(value) && isNear(request.length, value)
        ? { ...request, length: value, confirmed: true }
        : undefined;
    }
    case 'finish': {
      if (value.is === 'mass') return { ...request, mass: value, confirmed: true };
      const rows = countIn(value, was, request.rows);
      if (rows !== undefined) return { ...request, rows, confirmed: true };
      const at = nearest(
        request.sizes.map((one) => one.value),
        value,
        was,
      );
      const size = at === undefined ? undefined : request.sizes[at];
      if (size === undefined || at === undefined) return undefined;
      return { ...request, sizes: request.sizes.with(at, { ...size, value }), confirmed: true };
    }
    case 'stock': {
      const stock = amendedStock(request.stock, value, was);
      return stock && { kind: 'stock', stock };
    }
    default:
      return undefined;
  }
}

function amendedGauge(gauge: GaugeAsk, value: Value, was: number | undefined): GaugeAsk | undefined {
  if (value.is === 'mass') return gauge.mass && { ...gauge, mass: value };
  const { rows, stitches, flatWidth } = gauge;
  const count = rows && countIn(value, was, rows.count);
  if (rows !== undefined && count !== undefined) return { ...gauge, rows: { ...rows, count } };
  const over = (tension: Tension | undefined): Tension | undefined => tension && { ...tension, over: value };
  const places: [Value | undefined, GaugeAsk][] = [
    [rows?.over, { ...gauge, rows: over(rows) }],
    [stitches?.over, { ...gauge, stitches: over(stitches) }],
    [flatWidth, { ...gauge, flatWidth: value }],
  ];
  const held = places.flatMap(([old, changed]) => (old === undefined ? [] : [{ old, changed }]));
  const at = nearest(
    held.map(({ old }) => old),
    value,
    was,
  );
  return at === undefined ? undefined : held[at]?.changed;
}

/** The weight for the weight; a bare number for the one typed before, else for the balls or pieces, else the price. */
function amendedStock(stock: StockAsk, value: Value, was: number | undefined): StockAsk | undefined {
  const { count, massG, price } = stock;
  if (value.is === 'mass') return massG === undefined ? undefined : { ...stock, massG: value.g };
  const figure = Number.parseFloat(value.said ?? '');
  const isBare = value.is === 'bare' || value.is === 'count' || value.assumed !== undefined;
  if (!isBare || !Number.isFinite(figure)) return undefined;
  const isPrice = price !== undefined && (count === undefined || was === price.amount || !Number.isInteger(figure));
  if (isPrice) return { ...stock, price: { ...price, amount: figure, said: value.said ?? '' } };
  return count === undefined ? undefined : { ...stock, count: figure };
}

/** The count a correction means: one said as such, or a bare figure said to stand for the count. */
function countIn(value: Value, was: number | undefined, count: number | undefined): number | undefined {
  if (value.is === 'count') return value.count;
  return value.is === 'bare' && was !== undefined && was === count ? value.lo : undefined;
}

const isLength = (value: Value): boolean => value.is === 'length' || value.is === 'window';

const apart = (a: Value, b: Value): number => Math.abs(Math.log(mmOfValue(a) / mmOfValue(b)));
const isNear = (a: Value, b: Value): boolean => isLength(a) && isLength(b) && apart(a, b) <= Math.log(MOST_APART);

/** Which of the lengths a correction means, by what was typed, else by how near it is. */
function nearest(lengths: readonly Value[], value: Value, was: number | undefined): number | undefined {
  if (!isLength(value)) return undefined;
  const typed = ({ said }: Value): boolean =>
    was !== undefined && said !== undefined && Number.parseFloat(said) === was;
  const ranked = lengths
    .map((length, at) => ({ length, at }))
    .filter(({ length }) => isNear(length, value))
    .sort(
      (a, b) => Number(typed(b.length)) - Number(typed(a.length)) || apart(a.length, value) - apart(b.length, value),
    );
  return ranked[0]?.at;
}
