import { describe, expect, test } from 'vitest';
import { meaningOf } from './reading.js';
import { BATCH_THEMES } from './requests/batch.js';
import { BENCHES_THEMES } from './requests/benches.js';
import { BESIDE_THEMES } from './requests/beside.js';
import { BUYING_THEMES } from './requests/buying.js';
import { CHANCES_THEMES } from './requests/chances.js';
import { CONTENTS_THEMES } from './requests/contents.js';
import { CORRECTIONS_THEMES } from './requests/corrections.js';
import { COST_THEMES } from './requests/costs.js';
import { DATES_THEMES } from './requests/dates.js';
import { EVERYDAY_THEMES } from './requests/everyday.js';
import { GAUGE_MORE_THEMES } from './requests/gauge-more.js';
import { GAUGES_THEMES } from './requests/gauges.js';
import { MACHINES_THEMES } from './requests/machines.js';
import { MAKERS_THEMES } from './requests/makers.js';
import { NOTIONS_THEMES } from './requests/notions.js';
import { PEOPLE_THEMES } from './requests/people.js';
import { PIECES_THEMES } from './requests/pieces.js';
import { SEVERAL_THEMES } from './requests/several.js';
import { SHARING_THEMES } from './requests/sharing.js';
import { SHELF_THEMES } from './requests/shelf.js';
import { SIZES_THEMES } from './requests/sizes.js';
import { STRIPES_THEMES } from './requests/stripes.js';
import { TALK_THEMES } from './requests/talk.js';
import { TALLY_THEMES } from './requests/tally.js';
import { TIME_THEMES } from './requests/time.js';
import { TOGETHER_THEMES } from './requests/together.js';
import { WORDS_THEMES } from './requests/words.js';
import { WORK_THEMES } from './requests/work.js';
import { YARN_LEFT_THEMES } from './requests/yarn-left.js';

const THEMES = [
  ...SIZES_THEMES,
  ...SEVERAL_THEMES,
  ...WORDS_THEMES,
  ...PIECES_THEMES,
  ...MAKERS_THEMES,
  ...CONTENTS_THEMES,
  ...PEOPLE_THEMES,
  ...BENCHES_THEMES,
  ...MACHINES_THEMES,
  ...DATES_THEMES,
  ...GAUGES_THEMES,
  ...TALK_THEMES,
  ...CHANCES_THEMES,
  ...TALLY_THEMES,
  ...WORK_THEMES,
  ...CORRECTIONS_THEMES,
  ...GAUGE_MORE_THEMES,
  ...NOTIONS_THEMES,
  ...SHELF_THEMES,
  ...BATCH_THEMES,
  ...BUYING_THEMES,
  ...TIME_THEMES,
  ...COST_THEMES,
  ...STRIPES_THEMES,
  ...YARN_LEFT_THEMES,
  ...SHARING_THEMES,
  ...TOGETHER_THEMES,
  ...BESIDE_THEMES,
  ...EVERYDAY_THEMES,
];

describe.each(THEMES)('%s', (_theme, rows) => {
  test.each(rows.map(([text, meaning, given]) => ({ text, meaning, given })))('"$text" means $meaning', (row) => {
    expect(meaningOf(row.text, row.given)).toBe(row.meaning);
  });
});

test('there are 500 rows or more, each of its own', () => {
  const told = (_key: string, value: unknown) => (value === undefined ? 'undefined' : value);
  const rows = THEMES.flatMap(([, ofTheme]) => ofTheme.map(([text, , given]) => JSON.stringify([text, given], told)));
  expect(rows.length).toBeGreaterThanOrEqual(500);
  expect(new Set(rows).size).toBe(rows.length);
});
