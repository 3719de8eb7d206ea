import { plainNumber } from '../../core/index.js';
import type { AnyProblem } from '../problems.js';
import { counted } from './names.js';
import { type Sentence, sentence } from './sentence.js';

/** Words for stripes that cannot be. */
export function stripeSentence({ problem }: AnyProblem & { code: 'of_stripes' }): Sentence {
  switch (problem.code) {
    case 'too_many_colours':
      return sentence(`Stripes: I read ${problem.given} colours`, [`I take ${problem.max} at most. Say them again.`]);
    case 'stripe_not_whole':
      return sentence(
        `Stripes: I read ${plainNumber(problem.given)} rows of ${problem.colour}`,
        ['A colour changes after whole rows, one or more. Say the stripes again.'],
        ['stripes of 4 red 2 cream'],
      );
    case 'stripe_too_tall':
      return sentence(
        `Stripes: ${counted(problem.given, 'row')} of ${problem.colour}`,
        [`The whole piece has ${counted(problem.rowsInPiece, 'row')}. Say lower stripes.`],
        ['stripes of 4 red 2 cream'],
      );
    default:
      throw new Error(`no problem of stripes: ${problem.code}`);
  }
}
