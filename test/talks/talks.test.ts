import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { linesIn, withTalks } from './talks.js';

test('the talks in the README are what the program answers, word for word', () => {
  const readme = readFileSync('README.md', 'utf8');
  expect(linesIn(readme)).toBeGreaterThanOrEqual(30);
  expect(withTalks(readme)).toBe(readme);
});
