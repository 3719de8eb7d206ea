import type { At } from '../desk.js';

const DAY_MS = 86_400_000;

/** The day of a moment as a count of days, as core tells days apart. */
export const dayOf = ({ now }: Pick<At, 'now'>, at = now): number => Math.floor(at / DAY_MS);

/** The same of an ISO day. */
export const dayNumber = (iso: string): number => Math.floor(Date.parse(iso) / DAY_MS);
