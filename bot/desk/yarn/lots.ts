import { count, mass, plainNumber, say, type Words } from '../../../core/index.js';
import type { Lot } from '../../store/ports.js';

const MG_PER_G = 1000;

/** A mass as the shelf keeps it, in whole mg. */
export const milligrams = (massG: number): number => Math.round(massG * MG_PER_G);

/** What is not set aside. */
export const freeOf = ({ left, aside }: Pick<Lot, 'left' | 'aside'>): number => left - aside;

/** A lot as its maker says it: `grey medium, lot 12`. */
export function lotName({ name, dyeLot, owner }: Pick<Lot, 'name' | 'dyeLot' | 'owner'>): string {
  const lot = dyeLot === '' ? name : `${name}, lot ${dyeLot}`;
  return owner === '' ? `the team's ${lot}` : lot;
}

/** An amount of a lot: `3 balls (150 g)`, `38 g`, `24`. */
export function amountWords(amount: number, { kind, ball }: Pick<Lot, 'kind' | 'ball'>): Words {
  if (kind === 'notion') return say`${amount}`;
  const massG = amount / MG_PER_G;
  if (ball === undefined) return say`${mass(massG)}`;
  const balls = plainNumber(massG / ball.massG, 1);
  return say`${count(Number(balls), 'ball')} (${mass(massG)})`;
}

/** What a lot holds now. */
export function holdsWords(lot: Lot): Words {
  if (lot.kind === 'notion') return say`${lot.left === 0 ? 'no' : lot.left} ${lotName(lot)}`;
  return say`${lotName(lot)}: ${lot.left === 0 ? 'none left' : amountWords(lot.left, lot)}`;
}
