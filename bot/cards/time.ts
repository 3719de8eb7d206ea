import type { Driver, Printing, TimeRange } from '../../core/index.js';
import { durationText, roughText } from '../desk/time/durations.js';
import type { Took } from '../replies/bench.js';
import type { ReplyOf } from '../reply.js';
import { assumedFact } from './assumed.js';
import { DRIVER_NAMES, driverCount } from './bench-names.js';
import { type Card, plainCard } from './card.js';
import { capital, counted, joined } from './names.js';

const likely = ({ loS, hiS }: TimeRange): string => `${roughText(loS)} to ${roughText(hiS)}`;

const forHowMany = (copies: number, label: string, isPair: boolean): string =>
  copies === 1 ? `one ${label.toLowerCase()}` : `${copies}${isPair ? ' pairs' : ''} of them`;

/** `About 1 h 35 min for one pouch`. */
export const timeLead = ({ timing, copies }: Took, label: string, isPair: boolean): string =>
  `About ${roughText(timing.whole.medianS)} for ${forHowMany(copies, label, isPair)}`;

/** The time among the facts of a plan. */
export const timeFact = (time: Took): Card['facts'] => [
  {
    label: 'Time',
    text: `about ${roughText(time.timing.whole.medianS)}, ${likelyText(time.timing.whole)}. ${stagesText(time)}`,
  },
];

const likelyText = (range: TimeRange): string => `8 times in 10 between ${likely(range).replace(' to ', ' and ')}`;

const stagesText = ({ timing: { knit, finish } }: Took): string =>
  `At the machine about ${roughText(knit.medianS)} (${likely(knit)}), at the table about ${roughText(finish.medianS)} (${likely(finish)}).`;

/** How long it takes as a whole, at the machine and at the table, and what each step has in it. */
export function timeCard({ label, isPair, time, offers }: ReplyOf<'time'>): Card {
  const { timing, copies } = time;
  const { lines, slowest } = timing;
  const slow = lines.find(({ driver }) => driver === slowest);
  const rows = lines.map(({ driver, stage, count, medianS }) => [
    capital(DRIVER_NAMES[driver]),
    stage === 'knit' ? 'machine' : 'table',
    driverCount(driver, count),
    roughText(medianS),
  ]);
  return plainCard(timeLead(time, label, isPair), {
    kept: true,
    body: [
      `${capital(likelyText(timing.whole))}. ${stagesText(time)}`,
      ...(slow === undefined
        ? []
        : [`The slow one is ${DRIVER_NAMES[slow.driver]}, about ${roughText(slow.medianS)}.`]),
      'The steps do not add up to the whole: now and then one takes far longer, hardly ever far less.',
    ],
    table: {
      columns: ['Step', 'Where', 'How many', 'About'],
      rows,
      lines: rows.map(([step, where, many, about]) => `${step} (${where}): ${many}, about ${about}`),
    },
    facts: paceFacts(time),
    offers,
    foot: ['Rest hands and wrists between pieces; stop when they hurt.'],
    sayings: [
      ...(copies === 1 ? ['how long for 12'] : ['how long for 1']),
      'knit 30 min, seaming an hour',
      'took 85 minutes',
      'start the clock',
    ],
  });
}

/** Whose pace it is, and what it leaves out. */
function paceFacts({ timing: { lines, leftOut }, paced, sessions }: Took): Card['facts'] {
  const usual = lines.flatMap(({ driver }) => (paced.includes(driver) ? [] : [driver]));
  const named = (drivers: readonly Driver[]): string => joined(drivers.map((driver) => DRIVER_NAMES[driver]));
  const text =
    paced.length === 0
      ? 'the usual pace, until you log your own.'
      : usual.length <= paced.length
        ? `the usual pace for ${named(usual)}.`
        : `the usual pace for all but ${named(paced)}.`;
  return [
    ...(paced.length === 0
      ? []
      : [{ label: 'Your pace', text: `learned from ${counted(sessions, 'time')} you logged.` }]),
    ...(usual.length === 0 ? [] : [{ label: 'Assumed', text }]),
    ...(leftOut.length === 0
      ? []
      : [
          {
            label: 'Left out',
            text: `${named(leftOut)}, until I know the needles and how wide your tube lies flat.`,
          },
        ]),
  ];
}

/** What was logged, and how the estimate moved by it. */
export function loggedCard(reply: ReplyOf<'logged'>, printing: Printing): Card {
  const { label, times, pieces, was, now, sessions, assumed, offers } = reply;
  const kept = times.map(({ parts, seconds }) => [joined(parts), durationText(seconds)].filter(Boolean).join(' '));
  const of = pieces === 1 ? `for the ${label.toLowerCase()}` : `for ${pieces} of the ${label.toLowerCase()}`;
  const whole = label.toLowerCase();
  const [before, after] = [durationText(was.medianS), durationText(now.medianS)];
  const moved = before === after ? `is still about ${after}` : `was about ${before}, now about ${after}`;
  return plainCard(`Logged ${of}: ${joined(kept)}`, {
    body: [
      `My estimate for one ${whole} ${moved}, 8 times in 10 between ${likely(now).replace(' to ', ' and ')}.`,
      sessions < 3
        ? `${capital(counted(sessions, 'time'))} logged so far; from the third on the range narrows.`
        : `Learned from ${counted(sessions, 'time')} you logged.`,
    ],
    facts: assumedFact(assumed, printing),
    offers,
    foot: ['Your pace is yours: nobody else sees it.'],
    sayings: ['undo', 'how long will it take', 'how long for 12'],
  });
}
