import type { Step } from '../piece.js';
import type { Words } from '../words.js';

/** A further action within what a step beside it counts. */
export const further = (id: string, say: Words): Step => ({ id, count: 0, say });
