import { expect, test } from 'vitest';
import { batchSentence } from '../../../bot/cards/batch-sentences.js';
import type { BatchProblem } from '../../../core/index.js';

const PROBLEMS: readonly (readonly [BatchProblem, lead: string])[] = [
  [{ code: 'no_makers' }, 'Nobody is left to make them'],
  [{ code: 'pieces_out_of_range', given: 0, min: 1, max: 500 }, 'Pieces: I read 0'],
  [{ code: 'lead_out_of_range', given: 400, min: 0, max: 365 }, 'Days to order: I read 400'],
  [{ code: 'no_pace', who: 'Owen', givenS: 0 }, 'I do not know how long one piece takes Owen'],
  [{ code: 'rest_out_of_range', who: 'Owen', givenS: 3_600_000, maxS: 2_678_400 }, 'Rest: I read 1000 hours'],
  [{ code: 'no_hours', who: 'Owen' }, 'I do not know when Owen works'],
  [{ code: 'no_hours', who: '' }, 'I do not know when you work'],
  [{ code: 'bad_hours', who: 'Owen', weekday: 6, spans: [] }, 'The hours of Owen cannot be'],
  [
    { code: 'due_day_out_of_range', dueDay: 20_000, today: 20_766, lastDay: 24_419 },
    'Day: I read Thursday 4 October 2024',
  ],
];

test.each(PROBLEMS)('%o is said as "%s", with what is allowed', (problem, lead) => {
  const { lead: said, body } = batchSentence({ code: 'of_batch', problem });
  expect(said.replace(/^Day: I read \w+/, 'Day: I read Thursday')).toBe(lead);
  expect(body.join(' ')).toMatch(/^[A-Z].*\.$/);
});
