import { type Printing, printed, printedChance, type Standing } from '../../core/index.js';
import { machineName } from '../desk/names.js';
import type { ReplyOf } from '../reply.js';
import { factOf } from './assumed.js';
import { type Card, plainCard } from './card.js';
import { between, sizeLine } from './plan.js';

const RUNS: Record<Standing['word'], string> = {
  usual: 'within what is usual for you',
  a_little_loose: 'a little loose for you',
  a_little_tight: 'a little tight for you',
  loose: 'loose for you',
  tight: 'tight for you',
};

/** Where to stop now that the piece was measured, and what that is worth. */
export function correctionCard(reply: ReplyOf<'correction'>, printing: Printing): Card {
  const { plan, stopBefore, read, machine, ask } = reply;
  const { work } = plan;
  if (work === undefined) throw new Error('a correction without work');
  const moved = plan.rows !== stopBefore;
  const limits = between(plan.landing, ask.values[plan.landing.dimension], printing.units);
  return plainCard(moved ? `Stop at row ${plan.rows}, not ${stopBefore}` : `Stay at row ${plan.rows}`, {
    kept: true,
    body: [
      `Read: ${read.said}. ${standingLine(work.standing, work.pitchChange)}`,
      ...passedLine(reply),
      sizeLine(plan, printing),
    ],
    facts: [
      {
        label: 'Chance',
        text: `${printedChance(work.stop.chance)} to end between ${limits} at ${plan.rows}${moved ? `; ${printedChance(work.before.chance)} had you gone on to ${stopBefore}` : ''}.`,
      },
      ...next(reply),
      ...assumed(reply, printing),
    ],
    offers: reply.offers,
    foot: [`${plan.label} on ${machineName(machine)}.`],
    sayings: ['+1', ...(moved ? [`stay with ${stopBefore}`] : []), 'undo', 'what would help'],
  });
}

function standingLine(standing: Standing | undefined, change: number | undefined): string {
  if (standing === undefined) return '';
  const percent = Math.abs(Math.round(standing.longer * 100));
  const runs =
    percent === 0
      ? 'The piece runs as expected.'
      : `The piece runs about ${percent}% ${standing.longer > 0 ? 'long (loose)' : 'short (tight)'}, ${RUNS[standing.word]}.`;
  const turned =
    change === undefined
      ? ''
      : ` The rows since the last reading are ${Math.abs(Math.round(Math.expm1(change) * 100))}% ${change > 0 ? 'longer' : 'shorter'} than those before: look at tension and weights.`;
  return `${runs}${turned}`;
}

/** More rows on the needles than are wanted: they can still be pulled back. */
function passedLine({ plan }: ReplyOf<'correction'>): string[] {
  const { passed } = plan.work ?? {};
  if (passed === undefined) return [];
  return [
    `You are past the best row, ${passed.rows}: pulled back to it, ${printedChance(passed.chance)}. After casting off rows cannot be taken out.`,
  ];
}

function next({ plan }: ReplyOf<'correction'>): Card['facts'] {
  const step = plan.work?.next;
  if (step?.is === 'measure_again') {
    return [
      {
        label: 'Better',
        text: `measured again at row ${step.at.row}, it should become ${printedChance(step.at.chance)}.`,
      },
    ];
  }
  if (step?.is !== 'pair') return [];
  return [
    {
      label: 'Better',
      text: 'measured off the machine and at rest, the same piece would tell more; how your fabric changes off the machine is what I know least. Finish this one and tell me its size: the next reading that hangs is worth more.',
    },
  ];
}

function assumed({ read, assumed: more }: ReplyOf<'correction'>, printing: Printing): Card['facts'] {
  const { state } = read.reading;
  const notes = [
    ...(read.stateAssumed ? [state === 'hanging' ? 'measured as it hangs' : `measured ${state}, as last time`] : []),
    ...more.map((words) => printed(words, printing)),
  ];
  return factOf(notes);
}
