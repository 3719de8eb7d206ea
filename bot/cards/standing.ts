import { MM_PER, type Printing } from '../../core/index.js';
import type { Standing } from '../problems.js';
import { AN_EXAMPLE } from './names.js';
import { resize } from './resize.js';

/** What a maker who stands there can do next: where they stand, in a line, and what they can say. */
type NextSteps = { line: string | undefined; sayings: readonly string[] };

/** Rows that a maker counts before they tell me. */
const FURTHER = 5;

/** Words that lead on from where the maker stands; without that, from the beginning. */
export function nextSteps(standing: Standing | undefined, printing: Printing): NextSteps {
  switch (standing?.is) {
    case 'asked':
      return { line: `I am still asking: ${standing.asks}`, sayings: standing.examples };
    case 'knitting': {
      const { label, machine, row, soFarMm } = standing;
      return {
        line: `The ${label.toLowerCase()} on ${machine} is at row ${row}: count on, or tell me a length.`,
        sayings: ['+1', `row ${row + FURTHER}`, ...hanging(soFarMm, printing), 'where am i'],
      };
    }
    case 'planned': {
      const { label, plan } = standing;
      return {
        line: `Your ${label.toLowerCase()} is still here.`,
        sayings: [...(plan === undefined ? [] : ['start', 'steps', ...resize(plan, printing)]), 'help'],
      };
    }
    case 'measured':
      return { line: 'I have your gauge, so a piece and its size will do.', sayings: [standing.example, 'help'] };
    default:
      return {
        line: undefined,
        sayings: [
          standing?.example ?? AN_EXAMPLE,
          printing.units === 'cm'
            ? '60 rows in 27 cm, 40 needles, 14.5 flat'
            : '110 rows in 22 in, 46 needles, 6 3/4 flat',
          'help',
        ],
      };
  }
}

/** What the work may measure by now, as it would be told. */
function hanging(soFarMm: number | undefined, { units }: Printing): string[] {
  const whole = Math.round((soFarMm ?? 0) / MM_PER[units]);
  return whole === 0 ? [] : [`${whole} ${units} hanging`];
}
