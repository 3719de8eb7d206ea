import { say } from '../../core/index.js';
import type { Desk } from './desk.js';
import { formOffer } from './offers.js';

/** What to measure of a piece, and how to say it. Nothing waits for the answer: a measured piece is a request itself. */
export const tellGaugeDesk: Desk<'tell_gauge'> = async (_, { maker, talk }) => ({
  reply: {
    kind: 'question',
    asks: say`Which piece have you measured?`,
    because: say`Its needles, rows, length and flat width make your gauge. Add hanging or washed if it was not lying at rest.`,
    examples: [
      maker.units === 'cm'
        ? '40 needles, 60 rows, 27 cm long, 14.5 flat'
        : '46 needles, 110 rows, 22 in long, 6 3/4 flat',
      maker.units === 'cm' ? '60 rows in 27 cm, hanging' : '110 rows in 22 in, hanging',
    ],
    offers: [formOffer('gauge')],
  },
  talk,
});
