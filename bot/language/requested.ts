import type { Meaning } from '../request.js';
import type { Context } from './context.js';
import type { BareUnit } from './lengths.js';
import type { Sheet } from './sheet.js';

/** What was found in a message, and the index at which its words begin. */
export type Requested = { at: number; meaning: Meaning };

/** Finds what is meant of one kind and claims its words. */
export type RequestReader = (sheet: Sheet, context: Context, bare: BareUnit) => Requested[];
