import { count, length, range, say, type Words } from '../../../core/index.js';
import type { Result, Share } from '../../store/ports.js';
import type { At, Desk } from '../desk.js';
import { capital } from '../names.js';
import { countsInWords } from './share-letters.js';
import { labelOf, nameOf, ownOrigin, shareRefusal, shownTo } from './shares.js';

/** So many results are listed, the last ones. */
const MOST_LISTED = 20;

/** How the pieces of a shared plan came out: to its owner all that was sent, to one who holds it their own alone. */
export const showResultsDesk: Desk<'show_results'> = async ({ piece }, at) => {
  const inHand = at.talk.subject;
  const subject = piece === undefined || inHand?.piece === piece ? inHand : undefined;
  const last = (await at.store.shares.of(at.maker.id)).findLast(
    ({ ask }) => piece === undefined || ask.piece === piece,
  );
  const origin = (subject && ownOrigin(subject, at)) ?? last?.origin;
  const own = origin === undefined ? [] : await at.store.shares.of(at.maker.id, origin);
  const isOwner = own.length > 0;
  const results = await resultsOf([origin, subject?.shared?.origin], at);
  const told = results.filter((one) => one.makerId === at.maker.id || (isOwner && one.origin === origin && one.sent));
  const ask = own[0]?.ask ?? subject;
  if (ask === undefined || (!isOwner && told.length === 0))
    return shareRefusal(at, subject?.shared ? { code: 'no_result' } : { code: 'nothing_shared', said: '' });
  const shown = told.slice(-MOST_LISTED);
  const lines: Words[] = [];
  for (const one of shown) lines.push(await resultLine(one, at));
  return {
    reply: {
      kind: 'answer',
      isOwn: true,
      lead: leadOf(told, labelOf(ask)),
      lines: [...lines, ...inPrint(told.filter((one) => isCounted(one, at))), ...(await standings(own, at))],
      examples: isOwner ? ['withdraw it'] : [],
      offers: [],
    },
    talk: at.talk,
  };
};

async function resultsOf(origins: readonly (string | undefined)[], at: At): Promise<Result[]> {
  const each = [...new Set(origins)].filter((origin) => origin !== undefined);
  return (await Promise.all(each.map((origin) => at.store.results.of(origin)))).flat();
}

const isInside = ({ cameMm, window }: Result): boolean => cameMm >= window.loMm && cameMm <= window.hiMm;
const isCounted = ({ makerId, sent }: Result, at: At): boolean => makerId === at.maker.id || sent === 'rows';

function leadOf(told: readonly Result[], label: string): Words {
  const [first] = told;
  if (first === undefined) return say`The ${label}: nothing finished and told yet`;
  const inside = say`The ${label} so far: ${told.filter(isInside).length} of ${told.length} inside`;
  const { loMm, hiMm } = first.window;
  const isOne = told.every(({ window }) => window.loMm === loMm && window.hiMm === hiMm);
  return isOne ? say`${inside} ${range(loMm, hiMm)}` : say`${inside} the size each was made for`;
}

async function resultLine(one: Result, at: At): Promise<Words> {
  const name = one.makerId === at.maker.id ? 'You' : capital(await nameOf(one.makerId, at));
  const counts = isCounted(one, at) ? say`, ${countsInWords(one)}` : say`, rows not shared`;
  return say`${name}: ${length(one.cameMm)}${isInside(one) ? '' : ', outside'}${counts}.`;
}

/** What a written pattern may print: the counts that were told, from the fewest to the most. */
function inPrint(counted: readonly Result[]): Words[] {
  const inside = counted.filter(isInside);
  if (inside.length === 0) return [];
  const needles = inside.flatMap(({ needles: n }) => n ?? []);
  const rows = spread(
    inside.map(({ rows: n }) => n),
    'row',
  );
  const on = needles.length === 0 ? say`` : say`${spread(needles, 'needle')} and `;
  return [say`If you print it: give the size, ${on}${rows}, and "fit the measurement".`];
}

function spread(counts: readonly number[], one: string): Words {
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  return least === most ? say`${count(most, one)}` : say`${least} to ${count(most, one)}`;
}

/** Who has it, and in which size. */
async function standings(shares: readonly Share[], at: At): Promise<Words[]> {
  const lines: Words[] = [];
  for (const share of shares) {
    const taken = await at.store.shares.takenBy(share.id);
    if (taken.length === 0) lines.push(say`Shared with ${await shownTo(share, at)}: not sized yet.`);
    for (const { makerId, revision, answered } of taken) {
      const has =
        revision === share.revision
          ? 'sized it'
          : answered === share.revision
            ? 'kept the size before'
            : 'has the size before';
      lines.push(say`${capital(await nameOf(makerId, at))}: ${has}.`);
    }
  }
  return lines;
}
