import { type Printing, printedChance, printedRange, type Remedy } from '../../core/index.js';
import type { ReplyOf } from '../reply.js';
import { type Card, plainCard } from './card.js';
import { capital } from './names.js';
import { between } from './plan.js';

/** What would raise the chance of the plan in hand, best first, each with the number it would reach. */
export function helpsCard({ plan, ask, remedies, offers }: ReplyOf<'helps'>, printing: Printing): Card {
  const limits = between(plan.landing, ask.values[plan.landing.dimension], printing.units);
  const now = `Now: ${printedChance(plan.landing.chance)} to end between ${limits} with ${plan.rows} rows.`;
  const [best] = remedies;
  if (best === undefined) {
    return plainCard('Nothing more is needed', { body: [now], offers, sayings: ['start', 'my gauge'] });
  }
  return plainCard(capital(deed(best, printing)), {
    kept: true,
    body: [
      now,
      ...remedies.map(
        (remedy) => `${capital(deed(remedy, printing))}: ${printedChance(remedy.chance)}.${note(remedy)}`,
      ),
    ],
    offers,
    sayings: [...offers.flatMap(({ say }) => say ?? []), 'my gauge'],
  });
}

function deed(remedy: Remedy, { units }: Printing): string {
  switch (remedy.is) {
    case 'measure_at_rest':
      return `measure at row ${remedy.row}, off the machine and lying flat`;
    case 'measure_hanging':
      return `measure at row ${remedy.row} as it hangs`;
    case 'swatch':
      return 'measure one more piece as long as this one';
    case 'pair':
      return `measure one piece hanging and again at rest, then this one at row ${remedy.row} as it hangs`;
    case 'wider':
      return `allow ${printedRange(remedy.window.loMm, remedy.window.hiMm, units)}`;
  }
}

const note = ({ is }: Remedy): string => (is === 'swatch' || is === 'pair' ? ' It helps every later plan too.' : '');
