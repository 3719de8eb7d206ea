import type { Settings } from '../replies/home.js';
import type { Offered } from '../reply.js';
import { weekText } from './hours.js';

const HOURS: Offered = { button: 'My Hours', say: 'my hours', request: { kind: 'show_hours' } };
const RATES: Offered = { button: 'My Rates', say: 'my rates', request: { kind: 'show_rates' } };
const UNITS: Readonly<Record<'cm' | 'in', Offered>> = {
  cm: { button: 'Use Centimetres', say: 'use cm', request: { kind: 'set_units', units: 'cm' } },
  in: { button: 'Use Inches', say: 'use inches', request: { kind: 'set_units', units: 'in' } },
};

/** Each setting as it stands, with the words that change it. */
export const settingLines = ({ units, currency, timeZone, hours }: Settings): { label: string; text: string }[] => [
  {
    label: 'Numbers without a unit',
    text: `${units === undefined ? 'not settled' : units === 'cm' ? 'centimetres' : 'inches'}. Say "${units === 'cm' ? 'use inches' : 'use cm'}".`,
  },
  {
    label: 'Prices',
    text: `${currency ?? 'no currency yet'}. Say "prices in ${currency === 'EUR' ? 'dollars' : 'euros'}".`,
  },
  { label: 'Time zone', text: `${timeZone}. Say "my time zone is Europe/Vienna".` },
  { label: 'Hours', text: `${weekText(hours) ?? 'not told yet'}. Say "2 hours on weekdays".` },
];

export const settingOffers = ({ units }: Settings): Offered[] => [
  ...(units === undefined ? [UNITS.cm, UNITS.in] : [UNITS[units === 'cm' ? 'in' : 'cm']]),
  HOURS,
  RATES,
];
