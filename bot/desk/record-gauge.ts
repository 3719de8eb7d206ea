import { evidence, gauge, type Measurement, pieceById, plan, say } from '../../core/index.js';
import { withChange } from '../conversation.js';
import { inUnits } from '../language/lengths.js';
import type { Offered, ReplyOf } from '../reply.js';
import type { GaugeAsk, Request, Tension } from '../request.js';
import type { Profile, StoredMeasurement } from '../store/ports.js';
import { machineMeant, yarnMeant } from './bench.js';
import { type At, type Desk, type DeskAnswer, refusal } from './desk.js';
import { isBenchOnly, isUnusual, problemsOf, spacingProblems } from './gauge-checks.js';
import { lengthsOf, measurementsOf, recordAssumed, recordSaid } from './measured.js';
import { machineName, sameName } from './names.js';
import { given } from './planning.js';
import { lengthQuestion, needlesQuestion, unitsQuestion, unusualQuestion } from './question.js';

/** A measured piece → the maker's gauge, and what it does for the plan in hand. */
export const recordGaugeDesk: Desk<'record_gauge'> = async (request, at) => {
  const ask = ofPanel(withUnits(request.gauge, at));
  const problems = problemsOf(ask);
  if (problems.length > 0) return refusal(at, ...problems);
  if (isBenchOnly(ask)) return noted(ask, at);

  const profiles = await at.store.profiles.of(at.maker.id);
  const machine = machineMeant(ask.on, profiles);
  const question = questionAbout(ask, machine.needles, at);
  if (question !== undefined) return question;

  const readings = measurementsOf(ask, machine.needles, at.newId());
  const impossible = readings.flatMap(spacingProblems);
  if (impossible.length > 0) return refusal(at, ...impossible);

  const yarn = yarnMeant(ask.on, profiles);
  const known = profiles.find((p) => sameName(p.machine.name, machine.name) && sameName(p.yarn.name, yarn));
  const before = known === undefined ? [] : await at.store.measurements.of(known.id);
  const said = recordSaid(ask);
  if (ask.confirmed !== true && readings.some((reading) => isUnusual(before, reading))) {
    return unusualQuestion({ kind: 'record_gauge', gauge: { ...ask, confirmed: true } }, said, at);
  }
  const profile = await at.store.profiles.opened(at.maker.id, machine, yarn, at.now);
  const sameBench = profiles[0]?.id === profile.id && Object.keys(ask.on).length === 0;
  const stored = readings.map((one) => ({ ...one, id: at.newId(), profileId: profile.id, said, at: at.now }));
  return recorded(stored, said, ask, profile, sameBench, at);
};

/** A machine is named and nothing measured on it yet: kept, and what is still needed asked for. */
async function noted(ask: GaugeAsk, at: At): Promise<DeskAnswer> {
  const profiles = await at.store.profiles.of(at.maker.id);
  const machine = machineMeant(ask.on, profiles);
  const { machine: kept } = await at.store.profiles.opened(at.maker.id, machine, yarnMeant(ask.on, profiles), at.now);
  const lead = say`Noted: ${machineName(kept)}, ${kept.needles ?? 0} needles`;
  const lines = [say`Now what it made: rows and their length, and a flat width.`];
  return {
    reply: { kind: 'answer', lead, lines, examples: ['110 rows in 22 in, 6 3/4 flat'], offers: [] },
    talk: at.talk,
  };
}

async function recorded(
  stored: readonly StoredMeasurement[],
  said: string,
  ask: GaugeAsk,
  profile: Profile,
  sameBench: boolean,
  at: At,
): Promise<DeskAnswer> {
  const before = await at.store.measurements.of(profile.id);
  for (const reading of stored) await at.store.measurements.add(reading);
  const after = [...before, ...stored];
  const offers: Offered[] = [
    { button: 'Undo', say: 'undo', spoken: 'Take this measurement back', request: { kind: 'undo', redo: false } },
    { button: 'My Gauge', say: 'my gauge', request: { kind: 'show_gauge', on: {} } },
  ];
  const reply: ReplyOf<'gauge'> = {
    kind: 'gauge',
    recorded: say`${said}`,
    gauge: { machine: profile.machine, yarn: profile.yarn, gauge: gauge(evidence(after)) },
    assumed: recordAssumed(ask, sameBench),
    buys: bought(at, before, after, profile),
    offers,
  };
  const change = { kind: 'measurement' as const, ids: stored.map(({ id }) => id), said };
  // The turn resumes what waited; a plan that still lacks something asks again.
  return { reply, talk: withChange({ ...at.talk, pending: undefined }, change) };
}

/** The needles of a panel are its stitches; they say nothing of the machine's. */
function ofPanel(ask: GaugeAsk): GaugeAsk {
  const { needles, ...on } = ask.on;
  if (ask.form !== 'panel' || needles === undefined || isBenchOnly(ask)) return ask;
  const across: Tension | undefined = ask.flatWidth && { count: needles, over: ask.flatWidth, how: 'read' };
  return { ...ask, on, stitches: ask.stitches ?? across, flatWidth: undefined };
}

function withUnits(ask: GaugeAsk, at: At): GaugeAsk {
  const { units } = at.maker;
  const counted = (tension: Tension | undefined) =>
    tension && { ...tension, over: tension.over && inUnits(tension.over, units) };
  return {
    ...ask,
    rows: counted(ask.rows),
    earlier: ask.earlier?.map(({ rows, state }) => ({ rows: counted(rows) ?? rows, state })),
    stitches: counted(ask.stitches),
    flatWidth: ask.flatWidth && inUnits(ask.flatWidth, units),
  };
}

/** What must be known before a record can be understood: its unit, the length of its rows, its needles. */
function questionAbout(ask: GaugeAsk, needles: number | undefined, at: At): DeskAnswer | undefined {
  const request: Request = { kind: 'record_gauge', gauge: ask };
  const bare = lengthsOf(ask).find((value) => value?.is === 'bare');
  if (bare !== undefined) return unitsQuestion(request, bare.said ?? '', at);
  if (ask.rows !== undefined && ask.rows.over === undefined) return lengthQuestion(request, ask.rows.count, at);
  return ask.flatWidth !== undefined && needles === undefined ? needlesQuestion(request, at) : undefined;
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
    const outcome = plan({
      piece,
      values: given(subject.values),
      needles: profile.machine.needles,
      measurements,
      pieces: 1,
    });
    return outcome.ok ? { rows: outcome.value.rows, chance: outcome.value.landing.chance } : undefined;
  };
  const now = landing(after);
  return now && { label: piece.label.toLowerCase(), rows: now.rows, was: landing(before)?.chance, now: now.chance };
}
