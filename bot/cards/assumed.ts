import { type Printing, printed, type Words } from '../../core/index.js';
import type { Card } from './card.js';

/** What was taken for granted, as a fact of a card; none where that is nothing. */
export const assumedFact = (assumed: readonly Words[], printing: Printing): Card['facts'] =>
  factOf(assumed.map((words) => printed(words, printing)));

/** The same of sentences that are printed. */
export const factOf = (assumed: readonly string[]): Card['facts'] =>
  assumed.length === 0 ? [] : [{ label: 'Assumed', text: `${assumed.join('; ')}.` }];
