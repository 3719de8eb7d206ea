import { afterEach, beforeEach, expect, test } from 'vitest';
import { card } from '../../../../bot/cards/index.js';
import { plainText } from '../../../../bot/cards/plain-text.js';
import { showGaugeDesk } from '../../../../bot/desk/gauge/show-gauge.js';
import type { Bench } from '../../../../bot/request.js';
import { AT, type Talk, talk } from '../../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
  await open.say('110 rows in 22 in, 46 needles, grey medium yarn');
  await open.say('100 rows in 22 in, 48 needles, oat yarn');
  await open.say('100 rows in 24 in, 48 needles, grey medium yarn');
});
afterEach(() => open.close());

/** The answer to a look-up on this machine, in this yarn. */
const lookedUp = async (on: Bench) => {
  const talk = await open.conversation();
  const { reply } = await open.within(async (store) => {
    const maker = await store.makers.held('U1', 'Nadia', AT);
    return showGaugeDesk(
      { kind: 'show_gauge', on },
      { maker, talk, store, now: AT, newId: () => 'id', openUntil: AT, place: 'dm:D1' },
    );
  });
  return reply;
};

test.each<[Bench, string[]]>([
  [{}, ['46 grey medium', '48 grey medium', '48 oat']],
  [{ machine: '48', needles: 48 }, ['48 grey medium', '48 oat']],
  [{ needles: 46 }, ['46 grey medium']],
  [{ yarn: 'Grey Medium' }, ['46 grey medium', '48 grey medium']],
  [{ machine: '48', yarn: 'oat' }, ['48 oat']],
])('a look-up for %o lists those that match', async (on, names) => {
  const reply = await lookedUp(on);
  if (reply.kind !== 'gauges') throw new Error(reply.kind);
  expect(reply.gauges.map(({ machine, yarn }) => `${machine.name} ${yarn.name}`).sort()).toEqual(names);
});

test.each<[Bench, string]>([
  [{ machine: '72', needles: 72 }, 'No gauge on the 72 yet'],
  [{ yarn: 'silk' }, 'No gauge in silk yet'],
  [{ machine: '46', yarn: 'oat' }, 'No gauge in oat on the 46 yet'],
])('a look-up for %o that matches none says so, and what there is', async (on, lead) => {
  const beside = { name: '', mended: [], leftover: [], skipped: 0 };
  const text = plainText(card([await lookedUp(on)], { units: 'in' }, beside));
  expect(text.split('\n')[0]).toBe(lead);
  for (const known of ['grey medium on the 46', 'oat on the 48', 'grey medium on the 48'])
    expect(text).toContain(known);
});
