import { aspects } from '../aspects.js';
import { done, type Outcome, refused } from '../problems.js';
import { length, say, type Words } from '../words.js';
import { isWithin, middleMm } from './panels.js';
import type { Window } from './rows.js';

/** Asks for the girth of a head; a person named stands for it. */
export const HEAD_ASK = {
  is: 'length',
  label: 'Head',
  question: 'How far is it round the head?',
  words: aspects.head,
  beside: aspects.round,
  minMm: 300,
  maxMm: 700,
  body: 'head',
} as const;

/** A ring of rows goes over what is this many times as round. From memory: 5 to 10 % with ease, 25 to 30 % at most. */
export const RING_STRETCH = 1.1;

/** Heads under this are taken for a child's: five-year-olds measure about 50 cm, women 56 with a deviation of 2. */
const CHILD_HEAD_MM = 520;

/** True for the head of a child, or for one not known. */
export const mayBeChild = (headMm: number | undefined): boolean => headMm === undefined || headMm < CHILD_HEAD_MM;

/** How round something is beside the head it is for; `ease` is the share it is less round, under 0 where it is rounder. */
export function easeWords(ease: number, headMm: number): Words {
  const percent = Math.round(100 * Math.abs(ease));
  if (percent === 0) return say`as round as a head of ${length(headMm)}`;
  return say`${percent}% ${ease > 0 ? 'less round' : 'rounder'} than a head of ${length(headMm)}`;
}

/** Ease that a ring of rows aims at, and how far either side of it still sits well, in per cent. Common practice. */
export const EASE_PERCENT = 10;
const EASE_HALF_PERCENT = 5;
/** Between these shares of the head a ring stays on and still goes on. From memory: it stretches 25 % at most along. */
const STAYS = { lo: 0.8, hi: 1 };

type Ring = { head: number | undefined; girth: Window | undefined; ease: number };

/** The girth of a ring that sits on the head: as asked, where the head takes it; else the head less the ease in per cent. */
export function ringOnHead({ head, girth, ease }: Ring, label: string): Outcome<Window> {
  if (head === undefined) return girth === undefined ? refused({ code: 'missing', anyOf: [] }) : done(girth);
  const less = (percent: number): number => head * (1 - percent / 100);
  if (girth === undefined) return done({ loMm: less(ease + EASE_HALF_PERCENT), hiMm: less(ease - EASE_HALF_PERCENT) });
  const [minMm, maxMm] = [STAYS.lo * head, STAYS.hi * head];
  if (isWithin(middleMm(girth), { loMm: minMm, hiMm: maxMm })) return done(girth);
  return refused({
    code: 'length_out_of_range',
    field: { id: 'girth', label },
    ...{ givenMm: (girth.loMm + girth.hiMm) / 2, minMm, maxMm },
    why: say`it must stay on a head of ${length(head)}, and still go on`,
    offers: [{ label: say`${ease}% less round than the head`, edit: { girth: null } }],
  });
}
