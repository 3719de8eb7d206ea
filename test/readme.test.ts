import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** Each typed line of the README's conversation with the answer printed under it. */
const conversation = [...readFileSync('README.md', 'utf8').matchAll(/^ {4}(.+)\n\n```text\n([\s\S]+?)```$/gm)].map(
  ([, typed = '', answer = '']) => ({ typed, answer }),
);

test('the conversation in the README is what the program answers, word for word', () => {
  expect(conversation.length).toBeGreaterThanOrEqual(4);
  const input = conversation.map(({ typed }) => `${typed}\n`).join('');
  const { stdout } = spawnSync(process.execPath, ['dist/run/walewright.js', 'ask', '--lines', '--text'], {
    input,
    encoding: 'utf8',
  });
  expect(stdout).toBe(conversation.map(({ answer }) => answer).join(''));
});
