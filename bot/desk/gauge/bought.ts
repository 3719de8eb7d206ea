import { chance, count, type Plan, pieceById, plan, say, type Words } from '../../../core/index.js';
import type { ReplyOf } from '../../reply.js';
import { isOfPiece } from '../../request.js';
import type { Profile, StoredMeasurement } from '../../store/ports.js';
import type { At } from '../desk.js';
import { sameName } from '../names.js';
import { given } from '../plan/in-use.js';
import { yarnTold } from '../yarn/yarn-known.js';

/** How the plan in hand fares with the gauge of its profile as it is now, against the measurements before. */
export async function bought(
  at: At,
  profile: Profile,
  before: readonly StoredMeasurement[],
): Promise<ReplyOf<'gauge'>['buys']> {
  const { subject, pending } = at.talk;
  const piece = pieceById(subject?.piece ?? '');
  if (subject === undefined || subject.sizes || piece === undefined || isOfPiece(pending?.request)) return undefined;
  if (!sameName(subject.on.machine ?? '', profile.machine.name)) return undefined;
  const inYarn = await at.store.measurements.inYarn(at.maker.id, profile.yarn.id);
  const planned = async (measurements: readonly StoredMeasurement[]): Promise<Plan | undefined> => {
    const { needles } = profile.machine;
    const { known: yarn } = await yarnTold({ profile, measurements, inYarn, at });
    const outcome = plan({ piece, values: given(subject.values), needles, measurements, inYarn, pieces: 1, yarn });
    return outcome.ok ? outcome.value : undefined;
  };
  const [was, now] = [await planned(before), await planned(await at.store.measurements.of(profile.id))];
  return (
    now && {
      label: piece.label.toLowerCase(),
      rows: now.rows,
      was: was?.landing.chance,
      now: now.landing.chance,
      yarn: { was: was?.yarn, now: now.yarn },
    }
  );
}

/** The same in a line, for a measurement taken back or put in again. */
export async function boughtLine(at: At, profile: Profile, before: readonly StoredMeasurement[]): Promise<Words[]> {
  const buys = await bought(at, profile, before);
  if (buys === undefined) return [];
  const was = buys.was === undefined || buys.was === buys.now ? say`` : say`; it was ${chance(buys.was)}`;
  return [say`Your ${buys.label}: ${count(buys.rows, 'row')}, ${chance(buys.now)}${was}.`];
}
