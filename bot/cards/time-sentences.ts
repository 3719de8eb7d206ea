import { durationText } from '../desk/time/durations.js';
import type { AnyProblem } from '../problems.js';
import { type Sentence, sentence } from './sentence.js';

type OfTime = Extract<AnyProblem, { code: 'of_time' | 'timed_already' | 'no_clock' | 'bad_hours' | 'no_such_zone' }>;
const DAY_S = 86_400;

type BadHours = OfTime & { code: 'bad_hours' };

/** Words for times that cannot be logged and for hours that cannot be. */
export function timeSentence(problem: OfTime): Sentence {
  switch (problem.code) {
    case 'of_time':
      return notLogged(problem);
    case 'timed_already':
      return sentence(
        `I read "${problem.said}", and that part of the ${problem.label} is logged already`,
        ['Say the row you are at, then the time since; or take back what was logged.'],
        ['row 90', 'undo'],
      );
    case 'no_clock':
      return sentence(
        'No clock is running',
        ['Start it when you begin, or say the time.'],
        ['start the clock', 'knit 30 min'],
      );
    case 'bad_hours':
      return badHours(problem);
    case 'no_such_zone':
      return sentence(
        `I know no time zone ${problem.said}`,
        ['Say it as a continent and a city.'],
        ['my time zone is Europe/Vienna'],
      );
  }
}

function notLogged({ problem, said, label }: OfTime & { code: 'of_time' }): Sentence {
  switch (problem.code) {
    case 'time_out_of_range': {
      const { givenS, minS, maxS } = problem;
      return sentence(
        `Time: I read "${said}"${givenS < minS ? ', which leaves no time' : ''}`,
        [`It must be between ${durationText(minS)} and ${maxS / DAY_S} days. Say how long it took.`],
        ['took 85 minutes'],
      );
    }
    case 'nothing_to_time':
      return sentence(
        `I read "${said}", and the ${label} has no such step`,
        ['Name a step that it has, or the time for all of it.'],
        ['how long will it take', 'took 85 minutes'],
      );
  }
}

const WHY: Record<BadHours['why'], [why: string, next: string, example: string]> = {
  over_a_day: ['A day has 24 hours', 'Say how many of them you work.', '2 hours on weekdays'],
  backwards: [
    'Hours end later on the day on which they begin',
    'Say the earlier time first; past midnight say each day by itself.',
    'Mon to Fri 19:00 to 21:00',
  ],
  overlap: ['Those times run into one another', 'Say them as one.', 'Saturdays 9:00 to 13:00'],
  no_such_day: ['There is no such day', 'Say the day with its month.', 'off from 20 to 27 December'],
  past: ['Those days are over, or end before they begin', 'Say the days to come.', 'off from 20 to 27 December'],
  too_long: ['That is more than a year', 'Say the days of a year at most.', 'off from 20 to 27 December'],
};

function badHours({ said, why }: BadHours): Sentence {
  const [reason, next, example] = WHY[why];
  return sentence(`Hours: I read "${said}"`, [`${reason}. ${next}`], [example]);
}
