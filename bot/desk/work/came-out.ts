import {
  finishedCount,
  type Measurement,
  type Plan,
  type PlannedSize,
  pieceById,
  readingCount,
} from '../../../core/index.js';
import { inUnits } from '../../language/lengths.js';
import type { Request, Value } from '../../request.js';
import type { StoredMeasurement } from '../../store/ports.js';
import type { At } from '../desk.js';
import { mmOfValue } from '../gauge/measured.js';
import { dayOf } from '../time/days.js';
import type { WorkMeant } from './work-meant.js';

export type FinishRequest = Request & { kind: 'finish' };

/** A size of the finished piece, as it was typed. */
export type Came = { size: PlannedSize; value: Value };

/** Lengths with a name go to the size so named, the others in order: what rows make first. */
export function sizesOf({ sizes }: FinishRequest, plan: Plan, at: At): Came[] {
  const solved = plan.sizes.filter(({ id }) => id === plan.landing.dimension);
  const inOrder = [...solved, ...plan.sizes.filter(({ id }) => id !== plan.landing.dimension)];
  const free = inOrder.filter(({ id }) => !sizes.some((one) => one.id === id));
  return sizes.flatMap(({ id, value }) => {
    const size = id === undefined ? free.shift() : inOrder.find((one) => one.id === id || isSideOf(plan, id, one));
    return size === undefined ? [] : [{ size, value: inUnits(value, at.maker.units) }];
  });
}

/** A size that goes by a word of an ask for what the piece goes on: `33 round` is the hat's girth, not the head's. */
const isSideOf = (plan: Plan, id: string, { adjective }: PlannedSize): boolean =>
  plan.sizes.every((size) => size.id !== id) &&
  pieceById(plan.piece)?.asks[id]?.words.includes(adjective.split(' ')[0] ?? '') === true;

/** The piece as a measurement; undefined where nothing of it was told. */
export function measurementOf(
  { work, piece, profile }: WorkMeant,
  plan: Plan,
  came: readonly Came[],
  rows: number,
  request: FinishRequest,
  at: At,
): StoredMeasurement | undefined {
  if (came.length === 0 && request.mass === undefined) return undefined;
  const counted = (axis: 'rows' | 'needles', count: number | undefined) => {
    const one = came.find(({ size }) => size.axis === axis);
    return one && count !== undefined ? finishedCount(one.size.measure, count, mmOfValue(one.value)) : undefined;
  };
  const sizes = came.map(({ size, value }) => `${value.said ?? ''} ${size.adjective}`.trim());
  const mass = request.mass?.said;
  return {
    id: at.newId(),
    profileId: profile.id,
    swatch: work.id,
    state: request.state ?? 'rested',
    form: plan.onMachine.target.form,
    rows: counted('rows', rows),
    stitches: counted('needles', plan.needles),
    needles: plan.needles,
    massG: request.mass?.is === 'mass' ? request.mass.g : undefined,
    unravelled: undefined,
    note: '',
    day: dayOf(at),
    workId: work.id,
    replaces: '',
    said: [`finished ${piece.label.toLowerCase()}`, ...sizes, ...(mass === undefined ? [] : [mass])].join(', '),
    at: at.now,
  };
}

/** Readings of the work as readings of the same fabric. */
export const readingsOf = (
  { work, readings, profile }: WorkMeant,
  form: Measurement['form'],
  rows: number,
  at: At,
): StoredMeasurement[] =>
  readings.map(({ row, lengthMm, state, said, at: readAt }) => ({
    id: at.newId(),
    profileId: profile.id,
    swatch: work.id,
    state,
    form,
    rows: readingCount({ row, lengthMm, state }, rows),
    stitches: undefined,
    needles: undefined,
    massG: undefined,
    unravelled: undefined,
    note: '',
    day: dayOf(at, readAt),
    workId: work.id,
    replaces: '',
    said,
    at: readAt,
  }));
