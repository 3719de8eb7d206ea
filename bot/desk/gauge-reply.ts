import {
  dimensionalChange,
  evidence,
  factorBetween,
  gauge,
  type Measurement,
  pieceById,
  plan,
  say,
  type Words,
} from '../../core/index.js';
import type { Offered, ReplyOf } from '../reply.js';
import type { Profile, StoredMeasurement } from '../store/ports.js';
import type { At } from './desk.js';
import { sameName } from './names.js';
import { given } from './planning.js';
import { yarnNotes } from './yarn-notes.js';

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
  const offers: Offered[] = [
    { button: 'Undo', say: 'undo', spoken: 'Take this measurement back', request: { kind: 'undo', redo: false } },
    { button: 'My Gauge', say: 'my gauge', request: { kind: 'show_gauge', on: {} } },
  ];
  return {
    kind: 'gauge',
    recorded,
    notes: [...changeOffMachine(known, before, after), ...yarnNotes(profile.yarn, made)],
    gauge: { ...profile, gauge: made },
    assumed,
    buys: bought(at, before, after, profile),
    offers,
  };
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

/** How the plan in hand fares with the new gauge, against the old. */
function bought(
  at: At,
  before: readonly Measurement[],
  after: readonly Measurement[],
  profile: Profile,
): ReplyOf<'gauge'>['buys'] {
  const { subject, pending } = at.talk;
  const piece = pieceById(subject?.piece ?? '');
  if (subject === undefined || piece === undefined || pending?.request.kind === 'plan') return undefined;
  if (!sameName(subject.on.machine ?? '', profile.machine.name)) return undefined;
  const landing = (measurements: readonly Measurement[]) => {
    const { needles } = profile.machine;
    const outcome = plan({ piece, values: given(subject.values), needles, measurements, pieces: 1 });
    return outcome.ok ? { rows: outcome.value.rows, chance: outcome.value.landing.chance } : undefined;
  };
  const now = landing(after);
  return now && { label: piece.label.toLowerCase(), rows: now.rows, was: landing(before)?.chance, now: now.chance };
}
