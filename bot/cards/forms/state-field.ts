import { type GaugeAsk, State } from '../../request.js';
import type { Field, Option } from './form.js';

const HANGING: Option = { id: 'hanging', label: 'Hanging', about: 'On the needles, or just off' };
const RESTED: Option = { id: 'rested', label: 'Rested', about: 'Off the machine, lain flat: much surer' };
const WASHED: Option = { id: 'washed', label: 'Washed', about: 'Washed and dry, as it will be used' };

/** How a piece was measured, the likeliest first. */
export const stateField = (first: 'rested' | 'hanging'): Field => ({
  is: 'radio',
  id: 'state',
  label: 'How it was measured',
  options: first === 'rested' ? [RESTED, HANGING, WASHED] : [HANGING, RESTED, WASHED],
});

/** The state chosen, undefined where none was. */
export const stateChosen = (id: string | undefined): GaugeAsk['state'] => State.safeParse(id).data;
