import { type Printing, percentOf, plainNumber, printedYarn } from '../../core/index.js';
import type { OfYarn } from '../problems.js';
import { joined } from './names.js';
import { type Sentence, sentence } from './sentence.js';

/** Words for what cannot be about yarn and buying it. */
export function yarnSentence(problem: OfYarn, { units }: Printing): Sentence {
  switch (problem.code) {
    case 'count_not_above_zero':
      return sentence(`Yarn count: I read ${plainNumber(problem.given)}`, [
        'It must be more than nothing. Say it again.',
      ]);
    case 'tex_out_of_range':
      return sentence(
        `That would make the yarn ${plainNumber(problem.givenTex, 1)} tex, grams to the kilometre`,
        [
          `From sewing thread to rope it lies between ${plainNumber(problem.minTex)} and ${plainNumber(problem.maxTex)}. Check what a ball weighs and how long its yarn is.`,
        ],
        ['50 g / 105 m'],
      );
    case 'empty_ball':
      return sentence(
        `A ball: I read ${plainNumber(problem.massG)} g and ${plainNumber(problem.lengthM)} m`,
        ['A ball has weight and yarn in it. Both stand on its band.'],
        ['50 g / 105 m'],
      );
    case 'nothing_for_sale':
      return sentence(
        'I know no price of this yarn',
        ['Say what a ball holds and what it costs.'],
        ['how many balls at 6.50 for 50 g / 105 m?'],
      );
    case 'not_whole': {
      const { field, given, min } = problem;
      const name = { price: 'Price', pack: 'Balls in a pack', stock: 'Balls for sale' }[field];
      return sentence(`${name}: I read ${plainNumber(given)}`, [
        field === 'price'
          ? 'A price is more than nothing. Say it again.'
          : `It must be a whole number, ${min} or more. Say it again.`,
      ]);
    }
    case 'no_currency':
      return sentence(
        'A price without a currency',
        ['Say which currency you count in, and ask again.'],
        ['prices in euros'],
      );
    case 'mixed_currencies':
      return sentence(`The prices are in ${joined(problem.currencies)}`, [
        'I compare prices in one currency only. Say them again in one.',
      ]);
    case 'unknown_lot': {
      const lots = [...new Set(problem.lots.filter((lot) => lot !== ''))];
      return sentence(
        `Lot ${problem.given} of this yarn is not there`,
        [lots.length === 0 ? 'No lot of it is on your shelf.' : `On your shelf is lot ${joined(lots)}.`],
        ['my shelf', 'how many balls?'],
      );
    }
    case 'not_enough_for_sale':
      return sentence(`There are ${printedYarn(problem.mostM, units)} for sale in all`, [
        `It takes ${printedYarn(problem.toHoldM, units)} to be sure enough. Find more, or make fewer.`,
      ]);
    case 'sureness_out_of_range':
      return sentence(
        `How sure: I read ${plainNumber(problem.given * 100, 1)}%`,
        [
          `It must be between ${percentOf(problem.min)} and ${plainNumber(problem.max * 100, 1)}%. More yarn makes it surer, never certain.`,
        ],
        ['be 90% sure'],
      );
  }
}
