import { expect, test } from 'vitest';
import { panelGraftSteps, panelSeamStep } from '../../../core/finishing/panel-seam.js';
import { printed } from '../../../core/units/print.js';
import { say, type Words } from '../../../core/words.js';

const text = (words: Words | undefined) => (words === undefined ? '' : printed(words, { units: 'cm' }));

test('a panel grafted into a ring joins a pair a needle, makes one row more, and its waste comes out', () => {
  const steps = panelGraftSteps({ needles: 21, rows: 152 }, say` round the form`);
  expect(steps.map((s) => [s.driver, s.count])).toEqual([
    ['graft', 21],
    ['take_out_waste', 10],
  ]);
  expect(text(steps[0]?.say)).toMatch(/two ends together round the form.*graft 21 pairs of stitches.*makes row 153/);
});

test('a panel whose needles are not known is grafted pair by pair', () => {
  expect(text(panelGraftSteps({ needles: undefined, rows: 10 })[0]?.say)).toContain('every pair of stitches');
});

test('the edges of a panel are sewn a pair a bar, a stitch from each', () => {
  const seam = panelSeamStep(27, say`the side edges`, say` Leave the rest.`);
  expect([seam.driver, seam.count]).toEqual(['mattress', 27]);
  expect(text(seam.say)).toMatch(/sew the side edges, 27 bars in mattress stitch, a full stitch.* Leave the rest\.$/);
});
