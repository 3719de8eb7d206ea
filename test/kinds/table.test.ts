import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { withKinds } from './table.js';

test('the table of kinds in the README is current: npm run kinds makes it anew', () => {
  const readme = readFileSync('README.md', 'utf8');
  expect(readme).toBe(withKinds(readme));
});
