import { expect, test } from 'vitest';
import { panelGraftSteps, panelSeamSteps } from '../../../core/finishing/panel-seam.js';
import { printed } from '../../../core/units/print.js';
import { say, type Words } from '../../../core/words.js';

const text = (words: Words | undefined) => (words === undefined ? '' : printed(words, { units: 'cm' }));

test('a panel grafted into a ring joins a pair a needle, makes one row more, and its waste comes out', () => {
  const steps = panelGraftSteps({ needles: 21, rows: 152 }, say` round the form`);
  expect(steps.map((s) => [s.driver, s.count])).toEqual([
    [undefined, 0],
    ['graft', 21],
    ['take_out_waste', 10],
  ]);
  expect(steps.map(({ say }) => text(say)).join(' ')).toMatch(
    /two ends together round the form.*Graft 21 pairs of stitches.*this is row 153/,
  );
});

test('a panel whose needles are not known is grafted pair by pair', () => {
  expect(text(panelGraftSteps({ needles: undefined, rows: 10 })[1]?.say)).toContain('every pair of stitches');
});

test('the edges of a panel are sewn a pair a bar, a stitch from each, once markers are in', () => {
  const [markers, seam] = panelSeamSteps(27, say`the side edges`);
  expect([markers?.count, seam?.driver, seam?.count, seam?.yarn]).toEqual([0, 'mattress', 27, undefined]);
  expect(text(markers?.say)).toBe('Put a marker at every 10th bar of both edges.');
  expect(text(seam?.say)).toBe(
    'Mattress 27 bars, a full stitch from each edge, meeting at each marker: the side edges.',
  );
});

test('a seam that no tail sews says what yarn is cut for it', () => {
  const [, seam] = panelSeamSteps(27, say`the side edges`, { id: 'join', cutMm: 638 });
  expect(seam).toMatchObject({ id: 'join', yarn: [{ role: 'main', lengthMm: 638 }] });
});
