import { NOVEMBER, POUCH, type Rows, type Themes } from './row.js';

const DATES: Rows = [
  ['pouch 11 in wide by Christmas', 'plan pouch width=279.4 by=2026-12-25', NOVEMBER],
  ['pouch 11 in wide for xmas', 'plan pouch width=279.4 by=2026-12-24 event=2026-12-25', NOVEMBER],
  ['pouch 11 in wide by Christmas Eve', 'plan pouch width=279.4 by=2026-12-24', NOVEMBER],
  ["pouch 11 in wide by New Year's Eve", 'plan pouch width=279.4 by=2026-12-31', NOVEMBER],
  ['pouch 11 in wide by new years', 'plan pouch width=279.4 by=2027-01-01', NOVEMBER],
  ["pouch 11 in wide for valentine's day", 'plan pouch width=279.4 by=2027-02-13 event=2027-02-14', NOVEMBER],
  ['pouch 11 in wide before halloween', 'plan pouch width=279.4 by=2027-10-30 event=2027-10-31', NOVEMBER],
  [
    'pouch 11 in wide for the winter market on Dec 12',
    'plan pouch width=279.4 by=2026-12-11 event=2026-12-12',
    NOVEMBER,
  ],
  [
    'pouch 11 in wide for the christmas market on dec 12',
    'plan pouch width=279.4 by=2026-12-11 event=2026-12-12',
    NOVEMBER,
  ],
  ['pouch 11 in wide for the craft fair saturday', 'plan pouch width=279.4 by=2026-11-13 event=2026-11-14', NOVEMBER],
  ['pouch 11 in wide for the christmas market', 'plan pouch width=279.4', NOVEMBER],
  ['pouch 11 in wide for saturday', 'plan pouch width=279.4 by=2026-11-13 event=2026-11-14', NOVEMBER],
  ['3 pouches 11x7 by dec 12 for the market', 'plan pouch width=279.4 height=177.8 x3 by=2026-12-12', NOVEMBER],
  ['pouch 11 in wide by 31 november', 'plan pouch width=279.4', NOVEMBER],
  ['pouch 11 in wide by november 31st', 'plan pouch width=279.4', NOVEMBER],
  ['pouch 11 in wide by 2026-11-31', 'plan pouch width=279.4', NOVEMBER],
  ['20 by 5 december', 'change x20 by=2026-12-05', { ...NOVEMBER, ...POUCH }],
  ['make it 20 by 5 december', 'change width=508 by=2026-12-05', { ...NOVEMBER, ...POUCH }],
  ['for saturday', 'change by=2026-11-13 event=2026-11-14', { ...NOVEMBER, ...POUCH }],
];

export const DATES_THEMES: Themes = [['a day to be ready by', DATES]];
