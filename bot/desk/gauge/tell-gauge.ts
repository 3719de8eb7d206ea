import { say } from '../../../core/index.js';
import { pieceExample } from '../../examples.js';
import type { Desk } from '../desk.js';
import { formOffer } from '../offers.js';

/**
 * What to measure of a piece, and how to say it; for a maker who has none, how to knit one. Nothing waits for the
 * answer: a measured piece is a request itself.
 */
export const tellGaugeDesk: Desk<'tell_gauge'> = async ({ none = false }, { maker, talk }) => {
  const measured = pieceExample(maker.units);
  const offers = [formOffer('gauge')];
  if (none) {
    return {
      reply: {
        kind: 'answer',
        lead: say`Knit one tube and measure it: that is your gauge`,
        lines: [
          say`Cast on all needles with waste yarn, change to your yarn, and crank 60 rows or more; count them.`,
          say`End on waste yarn too, take it off and let it rest, lying flat.`,
          say`Measure its length from the first row of your yarn to the last, and its width as it lies flat.`,
          say`Then tell me four numbers: needles, rows, length and flat width.`,
        ],
        examples: [measured],
        offers,
      },
      talk,
    };
  }
  return {
    reply: {
      kind: 'question',
      asks: say`Which piece have you measured?`,
      because: say`Its needles, rows, length and flat width make your gauge. Add hanging or washed if it was not lying at rest.`,
      examples: [measured, maker.units === 'cm' ? '60 rows in 27 cm, hanging' : '110 rows in 22 in, hanging'],
      offers,
    },
    talk,
  };
};
