import { RING, SEAMED, WHOLE } from '../finishing/panel-seam.js';
import type { Dimension, Layout } from '../piece.js';
import type { Words } from '../words.js';
import type { Measure, Window } from './rows.js';

type Side = Omit<Dimension, 'axis' | 'window' | keyof Measure> & { window: Window };

/** What goes round a limb or a jar: its girth and its size along it, with the windows that both must end in. */
type Sleeve = {
  parts: number;
  girth: Side;
  /** `fixedMm`: what the rows must make beside that size, taken off it. */
  along: Side & { fixedMm?: number };
};

const rowsAlong = ({ along }: Sleeve): Dimension => ({ ...WHOLE, ...along, axis: 'rows' });

/** A tube: rows along, all needles round. */
export const tubeWay = (sleeve: Sleeve, because?: Words): Layout => ({
  id: 'tube',
  form: 'round',
  parts: sleeve.parts,
  because,
  dimensions: [rowsAlong(sleeve), { ...sleeve.girth, axis: 'needles', ...WHOLE }],
});

/** An upright panel sewn up: rows along, all needles round but the two that the seam takes. */
export const seamedWay = (sleeve: Sleeve, needles: number, because: Words | undefined): Layout => ({
  id: 'panel',
  form: 'flat',
  parts: sleeve.parts,
  needles,
  because,
  dimensions: [rowsAlong(sleeve), { ...sleeve.girth, axis: 'needles', ...SEAMED }],
});

/** A panel laid sideways: its rows round, grafted unless said, its needles along. */
export const sidewaysWay = (sleeve: Sleeve, needles: number, because: Words, round: Measure = RING): Layout => ({
  id: 'sideways',
  form: 'flat',
  parts: sleeve.parts,
  needles,
  because,
  dimensions: [
    { ...sleeve.girth, axis: 'rows', ...round },
    { ...sleeve.along, axis: 'needles', ...WHOLE },
  ],
});
