import {
  dimensionalChange,
  evidence,
  factorBetween,
  type Gauge,
  gauge,
  type LoopEstimate,
  loopEstimate,
  type Measurement,
  RESTED_TUBE,
  say,
  spacingMm,
  type Words,
} from '../../../core/index.js';
import type { Offered, ReplyOf } from '../../reply.js';
import type { Profile, StoredMeasurement } from '../../store/ports.js';
import type { At } from '../desk.js';
import { MY_GAUGE, UNDO } from '../offers.js';
import { yarnTold } from '../yarn/yarn-known.js';
import { yarnNotes } from '../yarn/yarn-notes.js';
import { bought } from './bought.js';

/** What a record came to: the gauge as it now stands, what stands out, and what it does for the plan in hand. */
export async function gaugeReply(
  at: At,
  profile: Profile,
  before: readonly StoredMeasurement[],
  { recorded, assumed }: { recorded: Words; assumed: readonly Words[] },
): Promise<ReplyOf<'gauge'>> {
  const after = await at.store.measurements.of(profile.id);
  const known = evidence(after, await at.store.measurements.inYarn(at.maker.id, profile.yarn.id));
  const made = gauge(known);
  const offers: Offered[] = [{ ...UNDO, spoken: 'Take this measurement back' }, MY_GAUGE];
  return {
    kind: 'gauge',
    recorded,
    notes: [...changeOffMachine(known, before, after), ...yarnNotes(profile.yarn, made)],
    gauge: { ...profile, gauge: made },
    assumed,
    buys: await bought(at, profile, before),
    loop: await loopTold(at, profile, after, made),
    offers,
  };
}

/** The yarn in a stitch as it is known now, where the last record weighed or unravelled some. */
async function loopTold(
  at: At,
  profile: Profile,
  measurements: readonly StoredMeasurement[],
  { row, stitch }: Gauge,
): Promise<LoopEstimate | undefined> {
  const last = measurements.at(-1);
  if (row === undefined || (last?.massG ?? last?.unravelled) === undefined) return undefined;
  const { known } = await yarnTold({ profile, measurements, inYarn: measurements, at });
  const { state } = RESTED_TUBE;
  return loopEstimate({ stitchMm: stitch && spacingMm(stitch), rowMm: spacingMm(row), state }, known);
}

/** The change off the machine, when a new pair of readings has just taught it. */
function changeOffMachine(
  known: ReturnType<typeof evidence>,
  before: readonly Measurement[],
  after: readonly Measurement[],
): Words[] {
  const { factors } = known.rows;
  if (factors.pairs === 0 || evidence(before).rows.factors.pairs === evidence(after).rows.factors.pairs) return [];
  const { delta } = factorBetween(factors, { state: 'hanging', form: 'tube' }, { state: 'rested', form: 'tube' });
  const change = dimensionalChange(delta);
  const way = change < 0 ? 'draws in' : 'grows';
  return [
    say`Off the machine your fabric ${way} by about ${Math.abs(change).toFixed(1)}% in length; readings that hang count by that.`,
  ];
}
