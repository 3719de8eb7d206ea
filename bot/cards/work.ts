import { type Printing, printed, printedLength } from '../../core/index.js';
import { machineName } from '../desk/names.js';
import { typedSize } from '../desk/typed.js';
import type { ReplyOf, WorkShown } from '../reply.js';
import { type Card, plainCard } from './card.js';
import { capital } from './names.js';

/** The row counter: where the work is, how far to go, and where to measure. */
export function workCard({ work, became, notes, offers }: ReplyOf<'work'>, printing: Printing): Card {
  const ended = became === 'given_up';
  return plainCard(leadOf(became, work), {
    body: [
      ...notes.map((words) => printed(words, printing)),
      ...(became === 'settled' ? ['The other count stays in the notes.'] : []),
      ended
        ? `It stood at row ${work.rows} of ${work.stopAt}. It teaches nothing; ${machineName(work.machine)} is free.`
        : whereabouts(work, printing),
    ],
    offers,
    sayings: ended ? ['undo'] : sayings(work),
  });
}

function leadOf(became: ReplyOf<'work'>['became'], work: WorkShown): string {
  if (became === 'given_up') return `Given up: ${work.label.toLowerCase()} on ${machineName(work.machine)}`;
  if (became === 'stop_set') return `Stop at row ${work.stopAt}, as you say`;
  return rowLead(work);
}

/** `Row 58 of 131: 73 to go`. */
function rowLead({ rows, stopAt }: Pick<WorkShown, 'rows' | 'stopAt'>): string {
  const left = stopAt - rows;
  if (left > 0) return `Row ${rows} of ${stopAt}: ${left} to go`;
  return left === 0 ? `Row ${rows} of ${stopAt}: stop here` : `Row ${rows} of ${stopAt}: ${-left} too many`;
}

function whereabouts(work: WorkShown, printing: Printing): string {
  const { label, machine, rows, stopAt, soFarMm, measureAt, colour } = work;
  const { units } = printing;
  const on = colour === undefined ? '' : ` ${capital(printed(colour, printing))}`;
  const soFar = soFarMm === undefined || rows === 0 ? '' : `, about ${printedLength(soFarMm, units)} at rest so far`;
  const next =
    rows > stopAt
      ? ' Rows can be pulled back before casting off.'
      : measureAt === undefined
        ? ''
        : ` Measure at row ${measureAt}, ${measureAt - rows} on.`;
  return `${label} on ${machineName(machine)}${soFar}.${on}${next}`;
}

const sayings = ({ rows, stopAt }: WorkShown): string[] =>
  rows >= stopAt ? ['done', 'undo'] : ['+1', '+10', `row ${Math.min(stopAt, rows + 5)}`, 'lost count', 'undo'];

/** Two counts, what a length says of them, and the one to go on from. */
export function countsCard(reply: ReplyOf<'counts'>, { units }: Printing): Card {
  const { work, counts, verdict, length, state, offers } = reply;
  const [first, second] = counts;
  const both = counts.length === 2 && first?.rows !== second?.rows;
  const lead =
    verdict?.trust !== undefined && both
      ? `Trust ${(verdict.trust === 'first' ? first : second)?.rows}`
      : verdict !== undefined && !both
        ? `About row ${Math.round(verdict.rows.expected)}`
        : `Go on from row ${work.rows} for now`;
  const read = length === undefined ? '' : `${typedSize(length)}, ${state}, is`;
  return plainCard(lead, {
    body: [
      ...(both ? [`Kept: ${counts.map(({ name, rows }) => `${name} ${rows}`).join(', ')}.`] : []),
      ...(verdict === undefined
        ? []
        : [
            `Your ${read} about ${Math.round(verdict.rows.expected)} rows, most likely ${Math.round(verdict.rows.lo)} to ${Math.round(verdict.rows.hi)}.`,
          ]),
      ...(both ? settling(reply) : []),
    ],
    offers,
    sayings: [
      ...offers.flatMap(({ say }) => say ?? []),
      ...(verdict === undefined ? [units === 'cm' ? 'it hangs 31 cm' : 'it hangs 12 1/4 in'] : []),
    ],
  });
}

function settling({ verdict, counts, work }: ReplyOf<'counts'>): string[] {
  const safe = `Until it is settled, ${work.rows}: rows too many can be pulled back before casting off, missing ones cannot be added after.`;
  if (verdict === undefined) return [`Tell me how long the work measures, and I weigh them. ${safe}`];
  if (verdict.trust !== undefined) return [`That is ${oddsOf(verdict.odds)} for it.`];
  const [a, b] = counts.map(({ rows }) => rows);
  const close = verdict.canTell
    ? `It leans ${oddsOf(verdict.odds)} to ${verdict.odds >= 1 ? a : b}, not enough to trust it.`
    : `A length cannot tell ${a} from ${b} here: count the rows between the last marker you are sure of and the needles.`;
  return [close, safe];
}

/** Odds either way, never finer than they are worth. */
function oddsOf(odds: number): string {
  const ratio = odds >= 1 ? odds : 1 / odds;
  return ratio > 100
    ? 'more than 100 to 1'
    : `${ratio < 10 ? ratio.toFixed(1).replace(/\.0$/, '') : Math.round(ratio)} to 1`;
}
