import { DAY_S, type Printing, printed } from '../../core/index.js';
import { longDay } from '../day-words.js';
import type { Member } from '../replies/batch.js';
import type { ReplyOf } from '../reply.js';
import { type Card, plainCard } from './card.js';
import { capital, changedLine, counted } from './names.js';
import { scheduleLines, verdict } from './schedule.js';
import { sentenceFor } from './sentences.js';
import { weekStrip } from './week-strip.js';

/** Whether all is ready by the day, who makes how many in which week, and the last days. Gauge and pace stay private. */
export function batchCard(reply: ReplyOf<'batch'>, printing: Printing): Card {
  const { schedule, members, own, done, pieces, changed, problems, became } = reply;
  const why = problems.flatMap((problem) => {
    const { lead, body } = sentenceFor(problem, printing);
    return [`${lead}. ${body.join(' ')}`];
  });
  const rows =
    own &&
    `Your own: knit ${counted(own.rows, 'row')}${own.needles === undefined ? '' : ` on ${counted(own.needles, 'needle')}`} each.`;
  return plainCard(leadOf(reply), {
    kept: true,
    body: [
      ...(became === 'replanned' && changed.length === 0 ? ['Nothing changes.'] : changedLine(changed, printing)),
      ...(done === 0 ? [] : [`Done so far: ${done} of ${pieces}.`]),
      ...members.map((one) => memberLine(one, reply)),
      ...(schedule === undefined
        ? []
        : [...weekStrip(schedule, done), ...scheduleLines(schedule), ...waitsLine(reply)]),
      ...why,
      ...(rows === undefined || schedule === undefined ? [] : [rows]),
    ],
    facts:
      schedule === undefined || schedule.assumed.length === 0
        ? []
        : [
            {
              label: 'Assumed',
              text: `${schedule.assumed.map((words) => printed(words, printing)).join('; ')}; each on the machine and yarn used last.`,
            },
          ],
    offers: reply.offers,
    foot: ['All who make it see this split and its hours; gauge, rows and pace stay with each.'],
    sayings: schedule === undefined ? ['undo'] : ['done 3', 're-plan', 'where are we with the batch?', 'remind me'],
  });
}

function leadOf({ schedule, pieces, label, dueDay, today }: ReplyOf<'batch'>): string {
  const what = `${label.toLowerCase()}, ${pieces} of them,`;
  if (schedule === undefined) return `${capital(what)} by ${longDay(dueDay, today)}`;
  return `${verdict(schedule)}: ${what} by ${longDay(dueDay, today)}`;
}

const STAGES = { whole: 'makes', knit: 'knits', finish: 'finishes' } as const;

/** `Owen makes 5: 2 done, 3 to go, 4.5 h`. */
function memberLine({ name, isOwn, stage, share, done }: Member, { schedule }: ReplyOf<'batch'>): string {
  const dealt = schedule?.makers.find((one) => one.name === name && one.stage === stage);
  const left = Math.max(0, share - done);
  const hours = dealt === undefined || left === 0 ? '' : `, about ${hoursText(dealt.workS)}`;
  const who = isOwn ? `${name} (you)` : name;
  return `${who} ${STAGES[stage]} ${share}: ${done} done, ${left} to go${hours}.`;
}

const HOUR_S = 3600;
const hoursText = (seconds: number): string => `${Math.round((seconds / HOUR_S) * 10) / 10} h`;

/** Who waits for whom, where one knits and another finishes. */
function waitsLine({ schedule }: ReplyOf<'batch'>): string[] {
  const { waits, makers = [] } = schedule ?? {};
  const finisher = makers.find(({ stage }) => stage === 'finish');
  if (waits === undefined || finisher === undefined) return [];
  const forKnitter =
    waits.finisherS < HOUR_S / 10
      ? 'waits for no piece'
      : `waits ${hoursText(waits.finisherS)} of working time for pieces`;
  const pieces =
    waits.piecesS < HOUR_S
      ? 'no piece lies waiting'
      : `a piece lies up to ${counted(Math.ceil(waits.piecesS / DAY_S), 'day')} before it is finished`;
  return [`${finisher.name} ${forKnitter}; ${pieces}.`];
}
