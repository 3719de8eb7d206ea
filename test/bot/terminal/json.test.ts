import { expect, test } from 'vitest';
import { asJson } from '../../../bot/terminal/json.js';
import { MEDIUM, talk } from '../talk.js';

test('machines compared are told best first, each with its rows, its size across the needles or why not', async () => {
  const open = await talk();
  for (const line of ['needles 40', MEDIUM]) await open.say(line);
  const answered = await open.say('which machine for a tube 22 in long and 165 to 180 mm wide');
  expect(asJson(answered, false)).toMatchObject({
    request: { kind: 'which_machine', ask: { piece: 'plain-tube' } },
    reply: {
      kind: 'machines',
      untold: [],
      machines: [
        {
          machine: '46',
          needles: 46,
          rows: 110,
          landing: { dimension: 'length' },
          across: { dimension: 'width', expectedMm: expect.closeTo(171.45, 6), asked: { inside: true } },
        },
        { machine: '40', borrowedFrom: 'the 46', problems: [{ code: 'needles_set_it', needlesWanted: 46 }] },
      ],
    },
  });
  await open.close();
});
