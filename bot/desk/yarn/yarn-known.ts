import {
  ballTex,
  type LoopSample,
  type Measurement,
  type PlannedSize,
  pieceById,
  plan,
  weighedPiece,
  type YarnKnown,
} from '../../../core/index.js';
import type { Ball, Profile, StoredMeasurement } from '../../store/ports.js';
import type { At } from '../desk.js';
import { given, inUse } from '../plan/in-use.js';
import { ballsOf } from './balls.js';

/** What is known of the yarn of a profile, and the ball it is sold in, where that was told. */
type YarnTold = { known: YarnKnown; ball: Ball | undefined };

/** What measurements of one profile are taken in. */
type Of = { profile: Profile; measurements: readonly StoredMeasurement[]; inYarn: readonly Measurement[]; at: At };

/** So many finished pieces that were weighed tell of the yarn, those done last. Each more is another plan made. */
const MOST_PIECES = 8;

/** The count of a profile's yarn, as told or by its ball, and all that was weighed or unravelled of its knitting. */
export async function yarnTold(of: Of): Promise<YarnTold> {
  const { profile, measurements, at } = of;
  const { yarn } = profile;
  const [ball] = await ballsOf(yarn.name, at);
  const tex = yarn.tex ?? (ball && texOf(ball));
  const own = measurements.filter(({ profileId }) => profileId === profile.id);
  const weighed = lastOf(own.filter(({ massG }) => massG !== undefined)).map((one) => ({
    ...one,
    workId: workOf(one, own),
  }));
  const finished = weighed.filter(({ workId }) => workId !== '').slice(-MOST_PIECES);
  const pieces = await Promise.all(finished.map((one) => finishedSample(one, own, tex, of)));
  const swatches = weighed.filter(({ workId }) => workId === '').flatMap((one) => swatchSample(one, own));
  return { known: { tex, samples: [...swatches, ...drawn(own), ...pieces.flatMap((one) => one ?? [])] }, ball };
}

/** Tex of a ball; undefined where its label cannot be right. */
export function texOf({ massG, lengthMm }: Ball): number | undefined {
  const tex = ballTex({ massG, lengthM: lengthMm / 1000 });
  return tex.ok ? tex.value : undefined;
}

/** The last of each swatch: readings in several states share their weight. */
const lastOf = (measurements: readonly StoredMeasurement[]): StoredMeasurement[] => [
  ...new Map(measurements.map((one) => [one.swatch, one])).values(),
];

/** The work that a weight is of: told with it, or that of the piece it was told of. */
const workOf = ({ swatch, workId }: StoredMeasurement, own: readonly StoredMeasurement[]): string =>
  workId || (own.find((one) => one.swatch === swatch && one.workId !== '')?.workId ?? '');

/** A swatch weighed whole. */
function swatchSample({ swatch, massG }: StoredMeasurement, own: readonly StoredMeasurement[]): LoopSample[] {
  const stitches = stitchesIn(own.filter((one) => one.swatch === swatch));
  return stitches === undefined || massG === undefined ? [] : [{ is: 'weighed', stitches, massG }];
}

/** Yarn drawn out of knitting. */
const drawn = (own: readonly StoredMeasurement[]): LoopSample[] =>
  lastOf(own.filter(({ unravelled }) => unravelled !== undefined)).flatMap(({ unravelled }): LoopSample[] =>
    unravelled === undefined ? [] : [{ is: 'unravelled', ...unravelled }],
  );

/** Stitches of a swatch of which rows and needles are known whole; a count inside a ruler is only a part of it. */
function stitchesIn(readings: readonly StoredMeasurement[]): number | undefined {
  const rows = readings.findLast((one) => one.rows?.how === 'read')?.rows?.count;
  const across = readings.findLast(({ form, stitches }) => form === 'tube' || stitches?.how === 'read');
  const needles = across?.form === 'panel' ? across.stitches?.count : across?.needles;
  return rows === undefined || needles === undefined ? undefined : rows * needles;
}

/**
 * What a finished piece that was weighed tells: its stitches are those of its plan, with the rows that were knitted,
 * since its measured rows count folds and joins.
 */
async function finishedSample(
  one: StoredMeasurement,
  own: readonly StoredMeasurement[],
  tex: number | undefined,
  { profile, measurements, inYarn, at }: Of,
): Promise<LoopSample | undefined> {
  const work = await at.store.works.get(one.workId, at.maker.id);
  const stored = work && (await at.store.plans.get(work.planId, at.maker.id));
  const piece = pieceById(stored?.piece ?? '');
  if (work === undefined || stored === undefined || piece === undefined || one.massG === undefined) return undefined;
  const values = given(inUse(stored.ask));
  const needles = one.needles ?? profile.machine.needles;
  const made = plan({ piece, values, needles, measurements, inYarn, pieces: 1, yarn: { tex } });
  if (!made.ok || made.value.yarn === undefined) return undefined;
  const { yarn, sizes, landing, parts } = made.value;
  const size = sizes.find(({ id }) => id === landing.dimension);
  const measured = own.findLast(({ workId, rows }) => workId === one.workId && rows && rows.spreadMm === undefined);
  const rows = (measured && size && rowsKnitted(measured, size)) ?? Math.max(work.rows, work.stopAt);
  const more = (rows - made.value.rows) * (needles ?? 0) * parts;
  const lengthM = yarn.lengthM + (more * yarn.loop.mm) / 1000;
  return weighedPiece({ ...yarn, stitches: yarn.stitches + more, lengthM }, one.massG);
}

/** The rows cranked for a finished size, from what it measures of the fabric. */
const rowsKnitted = ({ rows }: StoredMeasurement, { measure }: PlannedSize): number | undefined =>
  rows && Math.round(rows.count / measure.share - measure.extra);
