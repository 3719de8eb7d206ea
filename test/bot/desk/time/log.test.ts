import { expect, test } from 'vitest';
import { MEDIUM, POUCH, talk } from '../../talk.js';

test('what was logged is told newest first, all of it or that of the piece', async () => {
  const { sayAll, say, close } = await talk();
  await sayAll(MEDIUM, POUCH);
  expect((await say('time log')).card.lead).toBe('No time is logged yet');
  expect((await say('how long did it take?')).card.lead).toBe('No time is logged for the pouch yet');
  await sayAll('start', 'done, 10 7/8', 'took 85 minutes', POUCH, 'start', 'row 40', 'knit 30 min');
  const log = await say('time log');
  expect(log.card.lead).toBe('Logged: 1 h 55 min');
  expect(log.card.body).toEqual(['9 Nov: knit 30 min.', '9 Nov: took 85 minutes.']);
  expect((await say('how long did it take?')).card.lead).toBe('Logged for the pouch: 30 min');
  await close();
});

test('a time without a unit is read as minutes, and said to be', async () => {
  const { sayAll, close } = await talk();
  const { card } = await sayAll(MEDIUM, POUCH, 'start', 'done, 10 7/8', 'took 85');
  expect(card.lead).toBe('Logged for the pouch: 1 h 25 min');
  expect(card.facts.find(({ label }) => label === 'Assumed')?.text).toContain('85 read as minutes');
  await close();
});
