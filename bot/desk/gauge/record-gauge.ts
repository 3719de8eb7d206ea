import { type Count, evidence, gauge, type Measurement, say } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import { inUnits } from '../../language/lengths.js';
import type { GaugeAsk, Request, Tension } from '../../request.js';
import type { Profile, StoredMeasurement, Yarn } from '../../store/ports.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { machineName, sameName } from '../names.js';
import { lengthQuestion, needlesQuestion, sameOrNewQuestion, unitsQuestion, unusualQuestion } from '../question.js';
import { dayNumber, dayOf } from '../time/days.js';
import { yarnNotes } from '../yarn/yarn-notes.js';
import { machineMeant, tensionMeant, yarnMeant } from './bench.js';
import { isBenchOnly, isUnusual, problemsOf, spacingProblems } from './gauge-checks.js';
import { gaugeReply } from './gauge-reply.js';
import { lengthsOf, measurementsOf, mmOfValue, recordAssumed, recordSaid } from './measured.js';

/** A measured piece → the maker's gauge, and what it does for the plan in hand. */
export const recordGaugeDesk: Desk<'record_gauge'> = async (request, at) => {
  const ask = ofPanel(withUnits(request.gauge, at));
  const problems = problemsOf(ask);
  for (const past of [ask.day, ask.weight?.since])
    if (past !== undefined && dayNumber(past.day) > dayOf(at)) problems.push({ code: 'day_ahead', said: past.said });
  if (problems.length > 0) return refusal(at, ...problems);
  if (isBenchOnly(ask)) return noted(ask, at);

  const profiles = await at.store.profiles.of(at.maker.id);
  const machine = machineMeant(ask.on, profiles);
  const question = questionAbout(ask, machine.needles, at);
  if (question !== undefined) return question;

  const yarn = yarnMeant(ask.on, profiles);
  const tension = tensionMeant(ask.on, machine.name, yarn, profiles);
  const known = profiles.find(
    (p) => sameName(p.machine.name, machine.name) && sameName(p.yarn.name, yarn) && sameName(p.tension, tension),
  );
  const before = known === undefined ? [] : await at.store.measurements.of(known.id);
  const last = ask.same ? (before.findLast(({ rows }) => rows !== undefined) ?? before.at(-1)) : undefined;
  const { since } = { ...known?.yarn, ...factsOf(ask.weight) };
  const day = ask.day === undefined ? dayOf(at) : dayNumber(ask.day.day);
  if (since !== undefined && day < since)
    return refusal(at, { code: 'before_yarn', said: ask.day?.said ?? 'today', yarn, since });
  const readings = measurementsOf(ask, machine.needles, last?.swatch ?? at.newId());
  const impossible = readings.flatMap(spacingProblems);
  if (impossible.length > 0) return refusal(at, ...impossible);

  const inYarn = known === undefined ? before : await at.store.measurements.inYarn(at.maker.id, known.yarn.id);
  const said = recordSaid(ask);
  const confirmed: Request = { kind: 'record_gauge', gauge: { ...ask, confirmed: true } };
  if (ask.confirmed !== true && readings.some((reading) => isUnusual(evidence(before, inYarn), reading)))
    return unusualQuestion(confirmed, said, at);
  if (ask.confirmed !== true && ask.same !== true && readings.every((reading) => isKnown(before, reading)))
    return sameOrNewQuestion(confirmed, said, at);
  const profile = await at.store.profiles.opened(at.maker.id, machine, yarn, tension, at.now);
  const sameBench = profiles[0]?.id === profile.id && Object.keys(ask.on).length === 0;
  const rest = {
    profileId: profile.id,
    said,
    at: at.now,
    needles: machine.needles,
    massG: ask.mass?.is === 'mass' ? ask.mass.g : undefined,
    unravelled: ask.unravelled && {
      stitches: ask.unravelled.stitches,
      lengthMm: mmOfValue(inUnits(ask.unravelled.over, at.maker.units)),
    },
    note: ask.note ?? '',
    day,
    workId: '',
    replaces: '',
  };
  const stored = readings.map((one) => ({ ...one, ...rest, id: at.newId() }));
  return recorded(stored, said, ask, profile, sameBench, at);
};

/** A machine or a yarn is named and nothing measured in it yet: kept, and what is still needed asked for. */
async function noted(ask: GaugeAsk, at: At): Promise<DeskAnswer> {
  const profiles = await at.store.profiles.of(at.maker.id);
  const machine = machineMeant(ask.on, profiles);
  const yarn = yarnMeant(ask.on, profiles);
  const tension = tensionMeant(ask.on, machine.name, yarn, profiles);
  const kept = await at.store.profiles.opened(at.maker.id, machine, yarn, tension, at.now);
  const described = await describedBy(ask.weight, kept.yarn, at);
  const { needles } = kept.machine;
  const lead =
    ask.weight === undefined
      ? say`Noted: ${machineName(kept.machine)}, ${needles ?? 0} needles`
      : say`Noted: ${kept.yarn.name === '' ? 'your yarn' : kept.yarn.name}, ${ask.weight.said}`;
  const measured = await at.store.measurements.of(kept.id);
  const lines =
    measured.length > 0
      ? yarnNotes({ category: factsOf(ask.weight).category ?? kept.yarn.category }, gauge(evidence(measured)))
      : [say`Now what it made: rows and their length, and a flat width.`];
  const examples = measured.length > 0 ? ['my gauge'] : ['110 rows in 22 in, 6 3/4 flat'];
  const reply = { kind: 'answer' as const, lead, lines, examples, offers: [] };
  const said = ask.weight?.said ?? '';
  return { reply, talk: described.length === 0 ? at.talk : withStored(at.talk, said, described) };
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
  const known = await describedBy(ask.weight, profile.yarn, at);
  const described = { ...profile, yarn: { ...profile.yarn, ...factsOf(ask.weight) } };
  const [last] = before.filter(({ swatch }) => stored.some((one) => one.swatch === swatch)).slice(-1);
  const ofLast = last === undefined || ask.rows !== undefined ? [] : [say`of the piece recorded last, ${last.said}`];
  const assumed = [...recordAssumed(ask, sameBench), ...ofLast];
  const reply = await gaugeReply(at, described, before, { recorded: say`${said}`, assumed });
  const effects: Effect[] = [...known, ...stored.map(({ id }) => ({ did: 'measured' as const, id }))];
  const on = { ...ask.on, machine: profile.machine.name, yarn: profile.yarn.name, tension: profile.tension };
  const request: Request = { kind: 'record_gauge', gauge: { ...ask, on } };
  // The turn resumes what waited; a plan that still lacks something asks again.
  return { reply, talk: withStored({ ...at.talk, pending: undefined }, said, effects, request) };
}

/** Keeps what was said of a yarn, and tells what that replaced. */
async function describedBy(weight: GaugeAsk['weight'], yarn: Yarn, at: At): Promise<Effect[]> {
  if (weight === undefined) return [];
  const { category = null, tex = null, since = null } = yarn;
  const before = { category, tex, since };
  const after = { ...before, ...factsOf(weight) };
  await at.store.yarns.describe(yarn.id, after);
  return [{ did: 'described', yarnId: yarn.id, before, after }];
}

/** What was said of the yarn, as it is kept. */
function factsOf(weight: GaugeAsk['weight']): Partial<Pick<Yarn, 'category' | 'tex' | 'since'>> {
  const { category, tex, since } = weight ?? {};
  return {
    ...(category !== undefined && { category }),
    ...(tex !== undefined && { tex }),
    ...(since !== undefined && { since: dayNumber(since.day) }),
  };
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
    unravelled: ask.unravelled && { ...ask.unravelled, over: inUnits(ask.unravelled.over, units) },
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

/** True for a reading that stands in the gauge already, figure for figure, in all that both have. */
const isKnown = (before: readonly Measurement[], reading: Measurement): boolean =>
  reading.rows !== undefined &&
  before.some((one) => one.state === reading.state && isSame(one.rows, reading.rows) && isSameOrUnknown(one, reading));

const isSame = (a: Count | undefined, b: Count | undefined): boolean =>
  a?.count === b?.count && a?.overMm === b?.overMm && a?.how === b?.how;

const isSameOrUnknown = (a: Measurement, b: Measurement): boolean =>
  a.stitches === undefined || b.stitches === undefined || isSame(a.stitches, b.stitches);
