import { chance, count, type Measurement, pieceById, plan, say, type Words } from '../../core/index.js';
import type { ReplyOf } from '../reply.js';
import { isOfPiece } from '../request.js';
import type { Profile } from '../store/ports.js';
import type { At } from './desk.js';
import { sameName } from './names.js';
import { given } from './planning.js';

/** How the plan in hand fares with the gauge of its profile as it is now, against the measurements before. */
export async function bought(
  at: At,
  profile: Profile,
  before: readonly Measurement[],
): Promise<ReplyOf<'gauge'>['buys']> {
  const { subject, pending } = at.talk;
  const piece = pieceById(subject?.piece ?? '');
  if (subject === undefined || subject.sizes || piece === undefined || isOfPiece(pending?.request)) return undefined;
  if (!sameName(subject.on.machine ?? '', profile.machine.name)) return undefined;
  const inYarn = await at.store.measurements.inYarn(at.maker.id, profile.yarn.id);
  const landing = (measurements: readonly Measurement[]) => {
    const { needles } = profile.machine;
    const outcome = plan({ piece, values: given(subject.values), needles, measurements, inYarn, pieces: 1 });
    return outcome.ok ? { rows: outcome.value.rows, chance: outcome.value.landing.chance } : undefined;
  };
  const now = landing(await at.store.measurements.of(profile.id));
  return now && { label: piece.label.toLowerCase(), rows: now.rows, was: landing(before)?.chance, now: now.chance };
}

/** The same in a line, for a measurement taken back or put in again. */
export async function boughtLine(at: At, profile: Profile, before: readonly Measurement[]): Promise<Words[]> {
  const buys = await bought(at, profile, before);
  if (buys === undefined) return [];
  const was = buys.was === undefined || buys.was === buys.now ? say`` : say`; it was ${chance(buys.was)}`;
  return [say`Your ${buys.label}: ${count(buys.rows, 'row')}, ${chance(buys.now)}${was}.`];
}
