import type { BatchPart, StoredBatch } from '../../store/ports.js';

/** The parts that end a piece: what they have done is done of the batch. */
const ends = ({ stage }: BatchPart): boolean => stage !== 'knit';

/** How many pieces of a batch are done. */
export const doneOf = ({ parts }: Pick<StoredBatch, 'parts'>): number =>
  parts.filter(ends).reduce((sum, { done }) => sum + done, 0);

/** How many are still to be made. */
export const leftOf = (batch: Pick<StoredBatch, 'parts' | 'pieces'>): number =>
  Math.max(0, batch.pieces - doneOf(batch));

/** The parts of those who go on. */
export const going = ({ parts }: Pick<StoredBatch, 'parts'>): BatchPart[] => parts.filter(({ isOut }) => !isOut);

export const isStaged = (batch: Pick<StoredBatch, 'parts'>): boolean =>
  going(batch).some(({ stage }) => stage === 'knit');
