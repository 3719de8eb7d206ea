import { type Printing, plainNumber, printed } from '../../core/index.js';
import type { AnyProblem } from '../problems.js';
import { capital, joined } from './names.js';
import { type Sentence, sentence } from './sentence.js';

type OfShelf = Extract<
  AnyProblem,
  { code: 'amount_outside' | 'price_too_fine' | 'no_yarn_named' | 'not_on_shelf' | 'shelf_too_low' }
>;

/** Words for what the shelf cannot do. */
export function shelfSentence(problem: OfShelf, printing: Printing): Sentence {
  switch (problem.code) {
    case 'amount_outside': {
      const { label, given, min, max, unit } = problem;
      return sentence(`${label}: I read ${plainNumber(given)}${unit}`, [
        `It must be between ${plainNumber(min)} and ${plainNumber(max)}${unit}. Say it again.`,
      ]);
    }
    case 'price_too_fine':
      return sentence(`Price: I read ${problem.said}`, [
        `Its currency has ${problem.digits === 0 ? 'no digits' : `${problem.digits} digits at most`} behind the point. Say it again.`,
      ]);
    case 'no_yarn_named':
      return sentence(
        'Which yarn is it?',
        ['Say it again with its name.'],
        [problem.example ?? 'I have 3 balls of grey wool, lot 12'],
      );
    case 'not_on_shelf': {
      const { name, dyeLot, lots } = problem;
      const what = dyeLot === '' ? capital(name) : `Lot ${dyeLot} of ${name}`;
      return sentence(
        `${what} is not on the shelf`,
        lots.length === 0 ? ['Say what you have, and I keep it.'] : [`There is lot ${joined(lots)}.`],
        ['my shelf'],
      );
    }
    case 'shelf_too_low': {
      const { lot, holds, aside } = problem;
      const promised =
        aside === undefined
          ? 'I never take off more than there is.'
          : `Of it ${printed(aside, printing)} is set aside for work; that is free once the piece is done or given up.`;
      return sentence(`${capital(lot)} holds ${printed(holds, printing)}`, [promised], ['my shelf']);
    }
  }
}
