import type { Context } from '../../../bot/language/context.js';
import { dueReader } from '../../../bot/language/due.js';

/** What is typed, what it must mean, and what stood before it. Inches unless a row says otherwise; 1 in = 25.4 mm. */
export type Row = [text: string, meaning: string, given?: Partial<Context>];
export type Rows = readonly Row[];
export type Themes = readonly [theme: string, rows: Rows][];

export const CM: Partial<Context> = { units: 'cm' };
export const NO_UNIT: Partial<Context> = { units: undefined };
export const POUCH: Partial<Context> = { subjectPiece: 'pouch' };
export const TUBE: Partial<Context> = { subjectPiece: 'plain-tube' };
export const TWO_MACHINES: Partial<Context> = { machines: ['48', '46'] };
export const NO_YARN: Partial<Context> = { yarns: [] };
export const GREY: Partial<Context> = { yarns: ['grey'] };
/** Monday 9 November 2026. */
export const NOVEMBER: Partial<Context> = { due: dueReader(Date.parse('2026-11-09T10:00:00Z'), 'Europe/Berlin') };
export const asking = (hole: string, subjectPiece?: string): Partial<Context> => ({ holes: [hole], subjectPiece });
/** A pouch at row 40 of 109 on the machine. */
export const IN_HAND: Partial<Context> = {
  ...POUCH,
  machines: ['48', '46'],
  inHand: { piece: 'pouch', rows: 40, stopAt: 109 },
};
/** The same, its counters at 64 and 62. */
export const COUNTS_OPEN: Partial<Context> = {
  ...POUCH,
  holes: ['length'],
  inHand: { piece: 'pouch', rows: 62, stopAt: 109, counts: [64, 62] },
};
