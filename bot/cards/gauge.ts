import { type Drift, dimensionalChange, otherUnits, type Printing, printed, printedChance } from '../../core/index.js';
import { benchName } from '../desk/names.js';
import type { GaugeUsed, ReplyOf } from '../reply.js';
import { assumedFact } from './assumed.js';
import { type Card, plainCard } from './card.js';
import { AN_EXAMPLE, capital, counted, joined, rates, surenessOf } from './names.js';
import { learnedFact } from './yarn.js';

const NO_CHANGE = { was: undefined, now: undefined };
const PRIVATE = 'Only you can see your gauge until you share it.';

/** What was recorded, what the gauge is now, and what that buys. */
export function gaugeCard(reply: ReplyOf<'gauge'>, printing: Printing): Card {
  const { recorded, notes, gauge, assumed, buys, loop } = reply;
  const { insteadOf } = reply;
  return plainCard(`${insteadOf === undefined ? 'Recorded' : 'Corrected'}: ${printed(recorded, printing)}`, {
    body: [
      ...(insteadOf === undefined ? [] : [`It was: ${insteadOf}.`]),
      rateLine(gauge, printing),
      ...driftLine(gauge),
      ...notes.map((words) => printed(words, printing)),
    ],
    facts: [
      { label: 'How sure', text: `${surenessOf(gauge)}. ${counted(gauge.gauge.pieces, 'piece')} so far.` },
      ...(buys === undefined
        ? []
        : [
            {
              label: 'What it buys',
              text: `your ${buys.label} is ${counted(buys.rows, 'row')}, ${printedChance(buys.now)}${buys.was === undefined ? '' : `; it was ${printedChance(buys.was)}`}.`,
            },
          ]),
      ...learnedFact(loop, buys?.label ?? '', buys?.yarn ?? NO_CHANGE, printing),
      ...assumedFact(assumed, printing),
    ],
    offers: reply.offers,
    foot: [PRIVATE],
    sayings: ['undo', 'my gauge', AN_EXAMPLE],
  });
}

function rateLine(used: GaugeUsed, { units }: Printing): string {
  const own = rates(used, units);
  const other = rates(used, otherUnits(units));
  const counts = (r: ReturnType<typeof rates>) =>
    joined([...(r.rows ? [`${r.rows} rows`] : []), ...(r.stitches ? [`${r.stitches} stitches`] : [])]);
  const per = (u: Printing['units']) => (u === 'cm' ? '10 cm' : '4 in');
  const missing = [own.rows ? undefined : 'rows', own.stitches ? undefined : 'stitch width'].filter(Boolean);
  const wait = missing.length === 0 ? '' : ` Not measured yet: ${missing.join(' and ')}.`;
  if (missing.length === 2)
    return `${capital(benchName(used.machine, used.yarn, used.tension))} has nothing measured yet.`;
  return `${capital(benchName(used.machine, used.yarn, used.tension))} is now ${counts(own)} to ${per(units)} (${counts(other)} to ${per(otherUnits(units))}).${wait}`;
}

/** The maker's gauges, surest first. */
export function gaugesCard({ gauges, offers }: ReplyOf<'gauges'>, printing: Printing): Card {
  const { units } = printing;
  const [surest] = gauges;
  const name = (used: GaugeUsed): string => capital(benchName(used.machine, used.yarn, used.tension));
  const both = (noun: string, own?: string, other?: string): string =>
    own === undefined ? `no ${noun} yet` : `${own} (${other}) ${noun}`;
  if (surest === undefined) throw new Error('a list of gauges has at least one');
  const best = benchName(surest.machine, surest.yarn, surest.tension);
  const lead = gauges.length === 1 ? `Your gauge: ${best}` : `${counted(gauges.length, 'gauge')}; surest: ${best}`;
  return plainCard(lead, {
    kept: true,
    body: [
      units === 'cm' ? 'Rows and stitches to 10 cm (to 4 in).' : 'Rows and stitches to 4 in (to 10 cm).',
      ...gauges.flatMap((used) =>
        driftLine(used).map((line) => (gauges.length === 1 ? line : `${name(used)}. ${line}`)),
      ),
    ],
    table: {
      columns: ['Yarn, machine', 'Rows', 'Stitches', 'How sure'],
      rows: gauges.map((used) => {
        const own = rates(used, units);
        const other = rates(used, otherUnits(units));
        const sure = `${surenessOf(used)}, ${counted(used.gauge.pieces, 'piece')}`;
        return [name(used), both('rows', own.rows, other.rows), both('stitches', own.stitches, other.stitches), sure];
      }),
    },
    offers,
    foot: [gauges.length === 1 ? PRIVATE : 'Surest first. Only you can see this list.'],
    sayings: [AN_EXAMPLE, 'undo'],
  });
}

/** A drift worth a word: rows that get shorter or longer over the weeks, with how sure that is. */
function driftLine({ gauge: { drift } }: GaugeUsed): string[] {
  if (drift === undefined || drift.sureness === 'none') return [];
  const { month, give } = monthly(drift);
  const way = drift.perDay < 0 ? 'shorter (you tighten up)' : 'longer (you loosen)';
  const rows = `${month.toFixed(1)}% a month ${way}, give or take ${give.toFixed(1)}`;
  return drift.sureness === 'established'
    ? [`Your rows get ${rows}. Older pieces count less from now on.`]
    : [`Your rows may be getting ${rows}. Not sure yet; all pieces count alike.`];
}

/** The change in 30 days in per cent, and its standard error. */
const monthly = ({ perDay, standardError }: Drift) => ({
  month: Math.abs(dimensionalChange(30 * perDay)),
  give: 100 * 30 * standardError,
});
