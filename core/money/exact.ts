import Fraction from 'fraction.js';

/** An exact rational number. */
export type Exact = Fraction;

/** Nothing a maker gives is finer: what is counts as nothing, so that the denominators of long sums stay small. */
const FINEST = 1e-12;

/** A figure exactly as it prints: 1.005 is 201/200, whatever binary makes of it. Finite. */
export function exact(figure: number): Exact {
  if (Math.abs(figure) < FINEST) return new Fraction(0);
  const [digits = '', power] = figure.toString().split('e');
  const read = new Fraction(digits);
  return power === undefined ? read : read.mul(new Fraction(10).pow(Number(power)));
}

/** A figure in per cent as a share: 6.5 is 13/200. */
export const share = (percent: number): Exact => exact(percent).div(100);

export const total = (parts: readonly Exact[]): Exact => parts.reduce((sum, part) => sum.add(part), new Fraction(0));

const whole = (value: Exact): number => Number(value.s * value.n);

/** The whole number nearest; of two as near the even one, so that many roundings do not drift. */
export function rounded(value: Exact): number {
  const floor = value.floor();
  const beyond = value.sub(floor).compare(new Fraction(1, 2));
  const up = beyond > 0 || (beyond === 0 && floor.n % 2n === 1n);
  return whole(floor) + (up ? 1 : 0);
}

/** The whole number at or below. */
export const roundedDown = (value: Exact): number => whole(value.floor());

/** The whole number at or above. */
export const roundedUp = (value: Exact): number => whole(value.ceil());
