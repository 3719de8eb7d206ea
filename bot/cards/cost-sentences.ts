import { type CostProblem, plainNumber } from '../../core/index.js';
import { NO_CURRENCY } from '../money.js';
import { capital, joined } from './names.js';
import { type Sentence, sentence } from './sentence.js';

/** What core calls a figure of a cost, as a maker knows it. */
const NAMES: Readonly<Record<string, string>> = {
  fixed_fee: 'Fee of each sale',
  fixed: 'Stall',
  hourly: 'Your time',
  time: 'Your time',
  copies: 'Copies',
  pieces: 'Pieces',
};
const nameOf = (what: string): string => NAMES[what] ?? capital(what.replace(/_/g, ' '));

const SHARES = ['margin', 'markup', 'fee', 'overhead'];

/** Words for what cannot be costed. */
export function costSentence(problem: CostProblem): Sentence {
  switch (problem.code) {
    case 'figure_out_of_range': {
      const { what, given, min, max } = problem;
      // Only a price of nothing gets here; its bounds are in minor units of a currency that is not told.
      if (what === 'price') return sentence('Price: I read 0', ['It must be above 0. Say it again.']);
      const unit = SHARES.includes(what) ? '%' : '';
      return sentence(`${nameOf(what)}: I read ${plainNumber(given)}${unit}`, [
        `It must be between ${plainNumber(min)} and ${plainNumber(max)}${unit}. Say it again.`,
      ]);
    }
    case 'figure_not_whole':
      return sentence(`${nameOf(problem.what)}: I read ${plainNumber(problem.given)}`, [
        'It must be a whole number. Say it again.',
      ]);
    case 'not_a_currency':
      return sentence(`${nameOf(problem.what)}: I know no currency "${problem.given}"`, [], ['prices in euros']);
    case 'mixed_currencies':
      return sentence(
        `These prices are in ${joined(problem.currencies.map((one) => (one === NO_CURRENCY ? 'no currency' : one)))}`,
        ['I never change one into another. Say all of them in one currency.'],
        ['my rates'],
      );
    case 'price_has_no_room': {
      const { marginPercent, feePercent, belowPercent } = problem;
      const fee = feePercent > 0 ? `, and the fee takes ${plainNumber(feePercent)}% of it` : '';
      return sentence(
        `No price has a margin of ${plainNumber(marginPercent)}%`,
        [
          `A margin is a share of the price${fee}: it must be under ${plainNumber(belowPercent)}%. A share of the cost is a markup.`,
        ],
        ['margin 40%', 'markup 80%'],
      );
    }
    case 'no_hours':
      if (problem.what === 'hours') return sentence('Hours: I read 0', ['It must be above 0. Say it again.']);
      return sentence(`${nameOf(problem.what)} needs the hours it takes`, [
        'Tell me the stitches or needles of the plan, and I know what it takes.',
      ]);
    case 'nothing_priced':
      return sentence(
        'I know no price yet',
        ['A cost is the sum of what you tell me: your time, the yarn, what is sewn on, packing, overhead.'],
        ['my time is 16 an hour', '50 g / 105 m at 6.20', 'zips are 1.20 each', 'packing 0.85'],
      );
  }
}
