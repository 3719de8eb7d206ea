import { expect, test } from 'vitest';
import { kindsOf, MEDIUM, replyOf, talk } from '../../talk.js';

test('"ok start the first one" plans the first way that was offered, then starts it', async () => {
  const { sayAll, close } = await talk();
  const started = await sayAll(MEDIUM, 'hat for a woman', 'ok start the first one');
  expect(kindsOf(started)).toEqual(['plan', 'work']);
  expect(replyOf(started, 'work').work).toMatchObject({ label: 'Hat', rows: 0 });
  await close();
});

test.each(['ok', 'perfect', 'sure', 'yes please'])('"%s" is a yes where one was asked for', async (yes) => {
  const { sayAll, close } = await talk();
  const answered = await sayAll(MEDIUM, MEDIUM, yes);
  expect(kindsOf(answered)).toEqual(['gauge']);
  await close();
});
