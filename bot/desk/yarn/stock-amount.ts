import type { BotProblem } from '../../problems.js';
import type { StockAsk } from '../../request.js';
import type { Ball, Lot } from '../../store/ports.js';
import { capital } from '../names.js';
import { freeOf, milligrams } from './lots.js';

/** Balls or pieces, and g of loose yarn, that one message may tell of. From memory. */
const MOST = { things: 10_000, g: 1_000_000 };
const LEAST_G = 0.01;

/** Every fault of what was typed: half a zip, none bought, more than a shelf holds. */
export function amountProblems({ kind, name, way, count, massG }: StockAsk): BotProblem[] {
  const label = kind === 'yarn' ? 'Balls' : capital(name ?? '');
  const outside = (given: number, least: number, max: number, unit: '' | ' g'): BotProblem[] =>
    given >= (way === 'set' ? 0 : least) && given <= max
      ? []
      : [{ code: 'amount_outside', label: unit === '' ? label : 'Yarn', given, min: way === 'set' ? 0 : 1, max, unit }];
  if (kind === 'notion' && count !== undefined && !Number.isInteger(count))
    return [{ code: 'count_not_whole', label, given: count }];
  return [
    ...(count === undefined ? [] : outside(count, kind === 'notion' ? 1 : LEAST_G, MOST.things, '')),
    ...(massG === undefined ? [] : outside(massG, LEAST_G, MOST.g, ' g')),
  ];
}

/** The amount told, in mg or pieces; undefined for all there is. */
export function amountOf({ count = 0, massG, kind, all }: StockAsk, ball: Ball | undefined): number | undefined {
  if (all) return undefined;
  return kind === 'notion' ? count : milligrams(massG ?? count * (ball?.massG ?? 0));
}

/** How much a lot changes by; undefined where it does not hold enough, or work was promised it. */
export function changeOf({ way }: StockAsk, amount: number | undefined, lot: Lot): number | undefined {
  if (amount === undefined) return freeOf(lot) > 0 ? -freeOf(lot) : undefined;
  const change = way === 'set' ? amount - lot.left : way === 'add' ? amount : -amount;
  return lot.left + change >= lot.aside ? change : undefined;
}
