import { gPer, MM_PER, mmPer } from '../../../core/index.js';
import type { BallAsk } from '../../request.js';
import { indexesBetween, markAt, quantityAtIndex, type Sheet, wordAt } from '../sheet.js';
import { isBall } from './things.js';

export type Amount = { at: number; value: number };

/** The first unclaimed mass within a range, in g. */
export const massIn = (sheet: Sheet, from: number, to: number): Amount | undefined =>
  first(from, to, (i) => scaled(sheet, i, gPer(quantityAtIndex(sheet, i)?.unit)));

/** The first unclaimed length of yarn within a range, in mm: metres or yards. */
export const yarnIn = (sheet: Sheet, from: number, to: number): Amount | undefined =>
  first(from, to, (i) => {
    const perMm = mmPer(quantityAtIndex(sheet, i)?.unit);
    return perMm !== undefined && perMm >= MM_PER.yd ? scaled(sheet, i, perMm) : undefined;
  });

function scaled(sheet: Sheet, i: number, per: number | undefined): number | undefined {
  const quantity = quantityAtIndex(sheet, i);
  return per === undefined || quantity === undefined || quantity.lo !== quantity.hi ? undefined : quantity.lo * per;
}

function first(from: number, to: number, valueAt: (i: number) => number | undefined): Amount | undefined {
  for (const at of indexesBetween(from, to - 1)) {
    const value = valueAt(at);
    if (value !== undefined) return { at, value };
  }
  return undefined;
}

/**
 * What a ball weighs and holds: `50 g / 100 m`, `50g balls of 105 m`, `100 m per 50 g`, `105 m a ball`. Of a mass and a
 * length both are given; either alone is of a ball only where a ball is named, or `isCounted` says that balls were.
 */
export function ballIn(
  sheet: Sheet,
  from: number,
  to: number,
  isCounted: boolean,
): { ball: BallAsk; at: number[] } | undefined {
  const mass = massIn(sheet, from, to);
  const yarn = yarnIn(sheet, from, to);
  const isOfBall = isCounted || indexesBetween(from, to - 1).some((i) => isBall(wordAt(sheet, i)));
  if ((mass === undefined && yarn === undefined) || ((mass === undefined || yarn === undefined) && !isOfBall))
    return undefined;
  return {
    ball: { ...(mass && { massG: mass.value }), ...(yarn && { lengthMm: yarn.value }) },
    at: [mass, yarn].flatMap((one) => one?.at ?? []),
  };
}

/** True for the mass of one of several: `10 x 50 g`, `10 50 g`. */
export const isTimes = (sheet: Sheet, count: number, mass: number): boolean =>
  mass === count + 1 || (mass === count + 2 && markAt(sheet, count + 1) === 'by');
