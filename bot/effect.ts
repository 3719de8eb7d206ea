import { z } from 'zod';
import { BatchStage } from './asks/batch.js';
import { RateOf } from './asks/rates.js';
import { Hours } from './hours.js';
import { RateValue } from './store/ports/rates.js';

/** What is known of a yarn; null is not known. */
const Known = z.object({ category: z.number().nullable(), tex: z.number().nullable(), since: z.number().nullable() });

/** What is known of a lot. */
const OfLot = z.object({
  ball: z.object({ massG: z.number(), lengthMm: z.number() }).optional(),
  price: z.object({ minor: z.number(), currency: z.string() }).optional(),
});

const Clock = z.object({ makerId: z.string(), workId: z.string(), rows: z.number(), startedAt: z.number() }).nullable();
/** What of a result was sent to the owner of its plan. */
const Sent = z.enum(['', 'size', 'rows']);
/** A batch as it was dealt, without what is done of it. */
const DealtBatch = z.object({
  planId: z.string(),
  pieces: z.number(),
  dueDay: z.number(),
  readyDay: z.number(),
  parts: z.array(
    z.object({
      makerId: z.string(),
      stage: BatchStage,
      share: z.number(),
      away: z.array(z.object({ from: z.number(), to: z.number() })),
      isOut: z.boolean(),
    }),
  ),
});

/** One thing that a request stored, small enough to be taken back and put in again exactly. */
export const Effect = z.discriminatedUnion('did', [
  z.object({ did: z.literal('measured'), id: z.string() }),
  z.object({ did: z.literal('withdrew'), id: z.string() }),
  z.object({ did: z.literal('read'), id: z.string() }),
  z.object({ did: z.literal('withdrew_reading'), id: z.string() }),
  z.object({ did: z.literal('counted'), workId: z.string(), seq: z.number() }),
  z.object({ did: z.literal('moved_stop'), workId: z.string(), from: z.number(), to: z.number() }),
  z.object({ did: z.literal('described'), yarnId: z.string(), before: Known, after: Known }),
  z.object({ did: z.literal('moved_stock'), moveId: z.string(), lotId: z.string() }),
  z.object({ did: z.literal('described_lot'), lotId: z.string(), before: OfLot, after: OfLot }),
  z.object({ did: z.literal('sold_as'), putUpId: z.string() }),
  z.object({ did: z.literal('dropped_put_up'), putUpId: z.string() }),
  z.object({
    did: z.literal('set_currency'),
    makerId: z.string(),
    before: z.string().nullable(),
    after: z.string().nullable(),
  }),
  z.object({ did: z.literal('timed'), session: z.string() }),
  z.object({ did: z.literal('set_clock'), makerId: z.string(), before: Clock, after: Clock }),
  z.object({ did: z.literal('set_hours'), makerId: z.string(), before: Hours, after: Hours }),
  z.object({ did: z.literal('set_time_zone'), makerId: z.string(), before: z.string(), after: z.string() }),
  z.object({
    did: z.literal('set_rate'),
    owner: z.string(),
    of: RateOf,
    name: z.string(),
    before: RateValue.nullable(),
    after: RateValue.nullable(),
  }),
  z.object({ did: z.literal('shared'), shareId: z.string() }),
  z.object({ did: z.literal('withdrew_share'), shareId: z.string() }),
  z.object({ did: z.literal('changed_share'), shareId: z.string(), from: z.number(), to: z.number() }),
  z.object({ did: z.literal('resulted'), resultId: z.string() }),
  z.object({ did: z.literal('sent_result'), resultId: z.string(), from: Sent, to: Sent }),
  z.object({ did: z.literal('dealt'), batchId: z.string(), before: DealtBatch.nullable(), after: DealtBatch }),
  z.object({
    did: z.literal('batch_done'),
    batchId: z.string(),
    makerId: z.string(),
    stage: BatchStage,
    by: z.number(),
  }),
  z.object({ did: z.literal('batch_ended'), batchId: z.string() }),
  z.object({ did: z.literal('reminded'), id: z.string() }),
  z.object({ did: z.literal('stopped_reminder'), id: z.string() }),
  z.object({ did: z.literal('started'), workId: z.string() }),
  z.object({ did: z.literal('ended'), workId: z.string(), outcome: z.enum(['done', 'given_up']) }),
]);
export type Effect = z.infer<typeof Effect>;
