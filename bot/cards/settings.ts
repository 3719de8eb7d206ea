import { otherUnits } from '../../core/index.js';
import { switchOffer, switchWords } from '../other-units.js';
import type { Settings } from '../replies/home.js';
import type { Offered } from '../reply.js';
import { weekText } from './hours.js';

const HOURS: Offered = { button: 'My Hours', say: 'my hours', request: { kind: 'show_hours' } };
const RATES: Offered = { button: 'My Rates', say: 'my rates', request: { kind: 'show_rates' } };

/** Each setting as it stands, with the words that change it. */
export const settingLines = ({ units, currency, timeZone, hours }: Settings): { label: string; text: string }[] => [
  {
    label: 'Numbers without a unit',
    text: `${units === undefined ? 'not settled' : units === 'cm' ? 'centimetres' : 'inches'}. Say "${switchWords(otherUnits(units ?? 'in'))}".`,
  },
  {
    label: 'Prices',
    text: `${currency ?? 'no currency yet'}. Say "prices in ${currency === 'EUR' ? 'dollars' : 'euros'}".`,
  },
  { label: 'Time zone', text: `${timeZone}. Say "my time zone is Europe/Vienna".` },
  { label: 'Hours', text: `${weekText(hours) ?? 'not told yet'}. Say "2 hours on weekdays".` },
];

export const settingOffers = ({ units }: Settings): Offered[] => [
  ...(units === undefined ? (['cm', 'in'] as const) : [otherUnits(units)]).map(switchOffer),
  HOURS,
  RATES,
];
