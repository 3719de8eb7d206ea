import type { BatchProblem } from '../../core/index.js';
import { longDay } from '../day-words.js';
import type { AnyProblem } from '../problems.js';
import { capital, counted, joined } from './names.js';
import { type Sentence, sentence } from './sentence.js';

type OfBatch = Extract<
  AnyProblem,
  {
    code:
      | 'of_batch'
      | 'not_in_team'
      | 'no_gauge_of'
      | 'no_batch'
      | 'no_reminders'
      | 'nothing_to_remind'
      | 'done_outside';
  }
>;

/** Words for what a batch or a date cannot be. */
export function batchSentence(problem: OfBatch): Sentence {
  switch (problem.code) {
    case 'of_batch':
      return scheduleSentence(problem.problem);
    case 'not_in_team': {
      const { said, makers } = problem;
      const known = makers.length === 0 ? 'Nobody else here has talked to me yet' : `I know ${joined(makers)}`;
      return sentence(`I know no maker here called ${said}`, [`${known}; once they say hello to me I know them.`]);
    }
    case 'no_gauge_of':
      return sentence(`${capital(problem.who)} has no gauge for this yet`, [
        'Rows and time come from the gauge of whoever knits. They measure one piece and tell me; then say this again.',
      ]);
    case 'no_batch':
      return sentence('There is no batch open', ['Say how many, by when, and with whom.']);
    case 'no_reminders':
      return sentence('No reminder is waiting', ['You have asked for none that is still ahead.']);
    case 'nothing_to_remind':
      return sentence('I know no day to remind you of', [
        'Plan a piece for a day that is still ahead, with your hours told, and I can.',
      ]);
    case 'done_outside': {
      const { given, max } = problem;
      return sentence(`Done: I read ${given}`, [`It must be between 1 and ${max}, which are still to be made.`]);
    }
  }
}

function scheduleSentence(problem: BatchProblem): Sentence {
  switch (problem.code) {
    case 'no_makers':
      return sentence('Nobody is left to make them', ['Name who makes them: a batch needs at least one maker.']);
    case 'pieces_out_of_range':
      return sentence(`Pieces: I read ${problem.given}`, [
        `It must be a whole number between ${problem.min} and ${problem.max}.`,
      ]);
    case 'lead_out_of_range':
      return sentence(`Days to order: I read ${problem.given}`, [
        `It must be between ${problem.min} and ${problem.max} days.`,
      ]);
    case 'no_pace':
      return sentence(`I do not know how long one piece takes ${problem.who}`, [
        'Its steps have no count yet. Tell me the needles of the machine, and I can.',
      ]);
    case 'rest_out_of_range':
      return sentence(`Rest: I read ${counted(Math.round(problem.givenS / 3600), 'hour')}`, [
        `It must be between 0 and ${counted(Math.round(problem.maxS / 86_400), 'day')}.`,
      ]);
    case 'no_hours':
      return problem.who === ''
        ? sentence('I do not know when you work', [
            'Tell me your week, such as "2 hours on weekdays", and I tell you when to start.',
          ])
        : sentence(`I do not know when ${problem.who} works`, [
            `${problem.who} tells me the hours of a week, such as "2 hours on weekdays"; then say this again.`,
          ]);
    case 'bad_hours':
      return sentence(`The hours of ${problem.who} cannot be`, [
        `On ${WEEKDAYS[problem.weekday] ?? 'a day'} they overlap, end before they begin or leave the day.`,
      ]);
    case 'due_day_out_of_range': {
      const { dueDay, today, lastDay } = problem;
      return sentence(`Day: I read ${longDay(dueDay, today)}`, [
        `It must be between today and ${longDay(lastDay, today)}. Say another day, such as by 5 December.`,
      ]);
    }
  }
}

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
