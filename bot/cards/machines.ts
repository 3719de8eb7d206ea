import {
  acrossOf,
  evidence,
  gauge,
  type Plan,
  type Printing,
  percentOf,
  printed,
  printedBoth,
  printedChance,
  printedLength,
  printedRange,
} from '../../core/index.js';
import { machineName } from '../desk/names.js';
import type { ReplyOf } from '../reply.js';
import { factOf } from './assumed.js';
import { type Card, plainCard } from './card.js';
import { capital, counted } from './names.js';
import { between } from './plan.js';
import { sentenceFor } from './sentences.js';

type Machines = ReplyOf<'machines'>;
type Ranked = Machines['ranked'][number];
type Across = NonNullable<ReturnType<typeof acrossOf>>;
type Able = Ranked & { plan: Plan; chance: number };

/** The machine that suits a piece best and why, then what each would make of it, a line a machine. */
export function machinesCard(reply: Machines, printing: Printing): Card {
  const { ranked, untold, assumed, offers } = reply;
  const able = ranked.flatMap((one): Able[] =>
    one.outcome.ok ? [{ ...one, plan: one.outcome.value, chance: one.chance ?? 0 }] : [],
  );
  const [best] = able;
  const all = [...(best?.plan.assumed ?? []), ...assumed].map((words) => printed(words, printing));
  return plainCard(capital(leadOf(reply, able, printing)), {
    kept: true,
    body: whyOf(reply, able, printing),
    facts: [
      ...ranked.map((one) => ({ label: capital(machineName(one.bench)), text: textOf(one, reply, printing) })),
      ...untold.map((machine) => ({
        label: capital(machineName(machine)),
        text: 'tell me its needles and how wide its tube lies flat, and I count it in.',
      })),
      ...factOf(all),
    ],
    offers,
    foot: [ranked.length === 1 ? 'Nothing was stored.' : 'Best first. Nothing was stored.'],
    sayings: [
      ...offers.flatMap(({ say }) => say ?? []),
      ...(ranked.length === 1 ? otherNeedles(best) : []),
      'my gauge',
    ],
  });
}

/** The size that all needles of a tube make, where it was asked for or must have room; undefined where rows alone decide. */
function decidedBy({ plan }: Able) {
  const size = plan.tube && acrossOf(plan);
  return size?.across.asked || size?.across.needed ? size : undefined;
}

function leadOf({ label, ranked }: Machines, able: readonly Able[], { units }: Printing): string {
  const [best, second] = able;
  if (best === undefined) return `none of your machines makes this ${label.toLowerCase()} as asked`;
  const name = machineName(best.bench);
  const size = decidedBy(best);
  const comes = size && `${printedLength(size.across.expectedMm, units)} ${size.adjective}`;
  const makes = `${comes ?? counted(best.plan.rows, 'row')}, ${printedChance(best.chance)}`;
  if (ranked.length === 1) return `${name} is the one machine I know: ${makes}`;
  if (second === undefined) return `only ${name} can make it: ${makes}`;
  return `${name} ${size?.across.asked?.inside === false ? 'comes nearest' : 'suits it best'}: ${makes}`;
}

/** Why that machine leads, or what would be needed where none does. */
function whyOf({ ranked }: Machines, able: readonly Able[], printing: Printing): string[] {
  const [best, second] = able;
  if (best === undefined) {
    const [problem] = ranked.flatMap(({ outcome }) => (outcome.ok ? [] : outcome.problems));
    return problem === undefined ? [] : [...sentenceFor(problem, printing).body];
  }
  const size = decidedBy(best);
  if (size !== undefined) return [needlesSetIt(size, printing)];
  if (ranked.length === 1) return onOtherNeedles(best, printing);
  if (second === undefined) return [];
  if (percentOf(best.chance) === percentOf(second.chance)) {
    const isAlike = best.plan.needles === second.plan.needles;
    const why = isAlike ? 'a smaller machine will do' : 'fewer needles take less yarn';
    return [`Its rows are as sure as on ${machineName(second.bench)}, and ${why}.`];
  }
  const isOwn = best.bench.borrowedFrom === undefined && second.bench.borrowedFrom !== undefined;
  return [isOwn ? 'Its gauge is its own; a borrowed one is less sure.' : 'Its rows are the surest.'];
}

function needlesSetIt({ label, across: { asked, needed } }: Across, { units }: Printing): string {
  const set = `Needles set the ${label.toLowerCase()}, not rows`;
  if (asked !== undefined) return `${set}; about ${asked.needlesWanted} would be right in this gauge.`;
  return needed === undefined
    ? `${set}.`
    : `${set}; what goes in needs at least ${printedLength(needed.leastMm, units)}.`;
}

/** What other needles would do, where none were asked for. */
function onOtherNeedles({ plan, bench: { needles } }: Able, { units }: Printing): string[] {
  const size = acrossOf(plan);
  if (size === undefined || plan.needles === undefined) return [];
  if (plan.needles !== needles) {
    return [`It takes ${counted(plan.needles, 'needle')}, so any machine of ${plan.needles + 2} or more would do.`];
  }
  const { extra, fixedMm } = size.measure;
  const eachMm = (size.across.expectedMm - fixedMm) / (plan.needles + extra);
  return [
    `On other needles the rows stay ${plan.rows} in this gauge; each needle changes the ${size.label.toLowerCase()} by about ${printedLength(eachMm, units)}.`,
  ];
}

/** Words that plan it on the needles that would be right. */
const otherNeedles = (one: Able | undefined): string[] => {
  const wanted = one && decidedBy(one)?.across.asked?.needlesWanted;
  return wanted === undefined || wanted === one?.plan.needles ? [] : [`on ${wanted} needles`];
};

function textOf({ bench, outcome, chance }: Ranked, { ask }: Machines, printing: Printing): string {
  const { units } = printing;
  if (!outcome.ok) {
    const why = outcome.problems.map((problem) => sentenceFor(problem, printing).lead).join('; ');
    return chance === undefined ? `${why}.` : `${why}; ${printedChance(chance)} even so.`;
  }
  const plan = outcome.value;
  const { landing } = plan;
  const adjective = plan.sizes.find(({ id }) => id === landing.dimension)?.adjective ?? '';
  const window = between(landing, ask.values[landing.dimension], units);
  const on = plan.needles === bench.needles ? '' : ` on ${plan.needles} of its needles`;
  const rows = `${counted(plan.rows, 'row')}${on}, ${printedChance(landing.chance)} to end between ${window} ${adjective}`;
  const { pieces } = gauge(evidence(bench.measurements));
  const gaugeUsed =
    bench.borrowedFrom === undefined
      ? `Its own gauge, ${counted(pieces, 'piece')}.`
      : `Gauge of ${bench.borrowedFrom}, taken to hold here within 3%.`;
  return `${rows.trim()}${acrossText(plan, ask, units)}. ${gaugeUsed}`;
}

function acrossText(plan: Plan, ask: Machines['ask'], units: Printing['units']): string {
  const size = acrossOf(plan);
  if (size === undefined) return '';
  const { expectedMm, likelyMm, asked, needed } = size.across;
  const likely = `most likely ${printedRange(likelyMm.loMm, likelyMm.hiMm, units)}`;
  const met =
    asked && `, ${printedChance(asked.chance)} to be between ${between(asked.window, ask.values[size.id], units)}`;
  const room = needed && `, ${printedChance(needed.chance)} to leave the room that what goes in needs`;
  return `; ${printedBoth(expectedMm, units)} ${size.adjective}, ${likely}${met ?? ''}${room ?? ''}`;
}
