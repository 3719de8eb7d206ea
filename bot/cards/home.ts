import { type Printing, printed, printedLength } from '../../core/index.js';
import { benchName, machineName } from '../desk/names.js';
import { PLAN, RECORD } from '../desk/offers.js';
import { amountWords, freeOf, lotName } from '../desk/yarn/lots.js';
import type { BenchShown, Few, NextUp, Settings } from '../replies/home.js';
import type { GaugeUsed, Offered, WorkShown } from '../reply.js';
import { type Block, context, header, list, plain, richText, run, section } from './blocks.js';
import { LIMITS, shortened } from './limits.js';
import { AN_EXAMPLE, capital, counted, joined, rates, surenessOf } from './names.js';
import { settingLines, settingOffers } from './settings.js';

type Lot = BenchShown['low']['few'][number];

const HELP: Offered = { button: 'Get Help', say: 'help', request: { kind: 'help' } };
const GAUGES: Offered = { button: 'All Gauges', say: 'my gauge', request: { kind: 'show_gauge', on: {} } };
const SHELF: Offered = { button: 'The Whole Shelf', say: 'my shelf', request: { kind: 'show_shelf' } };

/**
 * The Home tab as Block Kit: the bench at a glance, or three things to try while there is nothing on it. Each section
 * stands only where it has something to show. Buttons carry their whole request, since a page outlives the talk.
 */
export function homeBlocks(bench: BenchShown, settings: Settings): Block[] {
  const { units } = settings;
  const { works, next, gauges, low } = bench;
  const printing: Printing = { units: units ?? 'in' };
  const isEmpty = works.all + next.length + gauges.all + low.all === 0;
  if (isEmpty) return [...welcome(), context([READS[units ?? 'none'], OWN])];
  return [
    ...works.few.flatMap((work) => workBlocks(work, printing)),
    ...more(works, 'piece on a machine', 'pieces on machines'),
    buttons([{ ...PLAN, primary: works.all === 0 }, RECORD, HELP]),
    ...nextBlocks(next, printing),
    ...(gauges.all === 0
      ? []
      : [
          header(units === 'cm' ? 'Gauges, to 10 cm' : 'Gauges, to 4 in'),
          bullets(gauges.few.map((used) => gaugeLine(used, printing))),
          ...(gauges.all > gauges.few.length ? [buttons([GAUGES])] : []),
        ]),
    ...(low.all === 0
      ? []
      : [header('Running low'), bullets(low.few.map((lot) => lotLine(lot, printing))), buttons([SHELF])]),
    header('Settings'),
    bullets(settingLines(settings).map(({ label, text }) => labelled(`${label}:`, text))),
    buttons(settingOffers(settings)),
    context([OWN]),
  ];
}

const OWN = 'Only you see this page. Others see a plan only when you share it.';
const READS = {
  cm: 'Numbers without a unit are read in centimetres. Say "use inches" to change that.',
  in: 'Numbers without a unit are read in inches. Say "use cm" to change that.',
  none: 'Say "use cm" or "use inches", and numbers without a unit are read so.',
};

const welcome = (): Block[] => [
  header('Your bench'),
  richText(
    section(run("Tell me what a piece must measure and I'll tell you how many rows to knit, in your own gauge.")),
  ),
  header('Three things to try'),
  richText(
    list('ordered', [
      labelled('Record a gauge.', 'One finished piece is enough to begin: needles, rows, length, flat width.'),
      labelled('Plan a piece.', `Say its size in plain words, such as "${AN_EXAMPLE}".`),
      labelled('Ask what else I do.', 'Counting rows, correcting on the way, yarn on the shelf: say "help".'),
    ]),
  ),
  buttons([{ ...RECORD, primary: true }, PLAN, HELP]),
];

const labelled = (label: string, text: string): Block => section(run(label, true), run(` ${text}`));

const bullets = (lines: readonly Block[]): Block => richText(list('bullet', lines));

function workBlocks(
  { label, machine, rows, stopAt, soFarMm, measureAt, offers }: WorkShown & { offers: readonly Offered[] },
  { units }: Printing,
): Block[] {
  const left = stopAt - rows;
  const sentences = [
    left > 0 ? `${left} to go` : left === 0 ? 'Stop here' : `${-left} too many`,
    ...(soFarMm === undefined || rows === 0 ? [] : [`about ${printedLength(soFarMm, units)} at rest so far`]),
  ];
  const measure =
    measureAt === undefined
      ? 'Measure it on the way: say the row and its length in Messages.'
      : `Measure at row ${measureAt}: say "row ${measureAt}" and its length in Messages.`;
  return [
    header(`${label} on ${machineName(machine)}: row ${rows} of ${stopAt}`),
    richText(section(run(`${sentences.join(', ')}.${left > 0 ? ` ${measure}` : ''}`))),
    buttons(offers),
  ];
}

function more<T>({ few, all }: Few<T>, one: string, many: string): Block[] {
  const others = all - few.length;
  return others === 0 ? [] : [richText(section(run(`${counted(others, `more ${one}`, `more ${many}`)}.`)))];
}

function nextBlocks(next: readonly NextUp[], printing: Printing): Block[] {
  if (next.length === 0) return [];
  const offers = next.flatMap(({ offer }) => offer ?? []);
  return [
    header('Next'),
    bullets(next.map(({ say }) => section(run(printed(say, printing))))),
    ...(offers.length === 0 ? [] : [buttons(offers)]),
  ];
}

function gaugeLine(used: GaugeUsed, { units }: Printing): Block {
  const { rows, stitches } = rates(used, units);
  const told = joined([...(rows ? [`${rows} rows`] : []), ...(stitches ? [`${stitches} stitches`] : [])]);
  return labelled(
    `${capital(benchName(used.machine, used.yarn, used.tension))}:`,
    `${told}. ${capital(surenessOf(used))}, ${counted(used.gauge.pieces, 'piece')}.`,
  );
}

function lotLine(lot: Lot, printing: Printing): Block {
  const aside = lot.aside === 0 ? '' : ' free';
  return labelled(`${capital(lotName(lot))}:`, `${printed(amountWords(freeOf(lot), lot), printing)}${aside}.`);
}

const buttons = (offers: readonly Offered[]): Block => ({
  type: 'actions',
  elements: offers.map(({ button, request, spoken, primary }, index) => ({
    type: 'button',
    text: plain(button, LIMITS.buttonText),
    action_id: `do.${index}`,
    value: JSON.stringify({ request }),
    ...(primary && { style: 'primary' }),
    ...(spoken && { accessibility_label: shortened(spoken, LIMITS.buttonText) }),
  })),
});
