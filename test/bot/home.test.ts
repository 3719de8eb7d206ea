import { v7 } from 'uuid';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Block } from '../../bot/cards/blocks.js';
import { visited } from '../../bot/home.js';
import type { OutboxRow } from '../../bot/store/ports.js';
import { silentLog } from '../../bot/surroundings.js';
import { blockFaults, MOST_ON_HOME, textsOf } from './cards/block-faults.js';
import { AT, MEDIUM, POUCH, type Talk, talk } from './talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
});
afterEach(() => open.close());

const visit = (key = v7(), slackUserId = 'U1') =>
  visited(
    { key, slackTeamId: 'T1', slackUserId, channel: 'D1', at: AT },
    { store: open.store, newId: v7, log: silentLog, now: () => AT },
  );

/** What waits to be sent, marked as sent. */
async function sent(): Promise<OutboxRow[]> {
  const rows = await open.store.outbox.take(AT + 60_000, 1000, 100);
  for (const row of rows) await open.store.outbox.posted(row, AT + 60_000, undefined);
  return rows;
}

const pages = async (): Promise<Block[][]> =>
  (await sent()).filter(({ address }) => address.to === 'home').map(({ body }) => body.blocks as Block[]);

async function page(): Promise<Block[]> {
  const all = await pages();
  if (all.length !== 1 || all[0] === undefined) throw new Error(`${all.length} pages`);
  return all[0];
}

type Button = { text: { text: string }; value: string; accessibility_label?: string };
const buttonsOf = (blocks: readonly Block[]): Button[] =>
  blocks.flatMap(({ type, elements }) => (type === 'actions' ? (elements as Button[]) : []));
const labelsOf = (blocks: readonly Block[]): string[] => buttonsOf(blocks).map(({ text }) => text.text);
const said = (blocks: readonly Block[]): string => textsOf(blocks).join('\n').replaceAll('\u00a0', ' ');

/** Presses a button of Home. */
async function press(blocks: readonly Block[], label: string, key = v7()) {
  const button = buttonsOf(blocks).find(({ text }) => text.text === label);
  if (button === undefined) throw new Error(`no button ${label} among ${labelsOf(blocks)}`);
  const address = { to: 'post', channel: 'D1' } as const;
  return open.take({ request: JSON.parse(button.value).request }, { key, address, onHome: true });
}

describe('a first visit', () => {
  test('is shown three things to try, and the bench once something stands on it', async () => {
    await visit();
    const first = await page();
    expect(said(first)).toContain('Three things to try');
    expect(labelsOf(first)).toEqual(['Record a Gauge', 'Plan a Piece', 'Get Help']);
    await open.say(MEDIUM);
    const then = await page();
    expect(said(then)).not.toContain('Three things to try');
    expect(said(then)).toContain('The 46:\n 20 rows and 13.5 stitches. Rough, 1 piece.');
  });

  test.each(['Record a Gauge', 'Plan a Piece', 'Get Help'])(
    '%s does what its words do in the direct message',
    async (label) => {
      await visit();
      const answer = await press(await page(), label);
      const words = { 'Record a Gauge': 'record a gauge', 'Plan a Piece': 'plan a piece', 'Get Help': 'help' }[label];
      const typed = await open.say(words ?? '');
      expect(answer).toMatchObject({ status: 'answered', card: { lead: typed.card.lead } });
      expect(await sent()).toMatchObject([{ address: { to: 'post', channel: 'D1' } }]);
    },
  );
});

describe('the bench', () => {
  test('shows work in hand with its tally, what is next, gauges, and yarn that runs low', async () => {
    await open.say(MEDIUM);
    await open.say('I have 3 balls of medium, lot 12, 50 g / 105 m');
    await open.say(POUCH);
    await open.say('start');
    await open.say('+10');
    await open.say('used 140 g of medium');
    await open.say('pouch 8 in wide');
    await visit();
    const blocks = await page();
    expect(said(blocks)).toMatch(
      /Pouch on the 46: row 10 of \d+\n\d+ to go, about 2 in at rest so far\. Measure at row/,
    );
    expect(said(blocks)).toMatch(/Next\nStart the pouch: \d+ rows on the 46\./);
    expect(said(blocks)).toMatch(/Running low\nMedium, lot 12:\n 0\.\d balls \(\d+ g\)/);
    expect(labelsOf(blocks)).toEqual([
      ...['+1 Row', '+10 Rows', 'Undo', 'Plan a Piece', 'Record a Gauge', 'Get Help'],
      ...['Start Knitting', 'The Whole Shelf', 'Use Centimetres', 'My Hours', 'My Rates'],
    ]);
    expect(buttonsOf(blocks)[0]?.accessibility_label).toBe('Add one row, to row 11');
    expect(blockFaults(blocks, MOST_ON_HOME)).toEqual([]);
  });

  test('ends with the settings and the words that change each, and keeps to the order of sections', async () => {
    await open.say(MEDIUM);
    await open.say('I have 20 g of medium');
    await open.say(POUCH);
    await visit();
    const before = said(await page());
    const sections = ['Next', 'Gauges, to 4 in', 'Running low', 'Settings'];
    expect(before.split('\n').filter((line) => sections.includes(line))).toEqual(sections);
    expect(before).toContain('Numbers without a unit:\n inches. Say "use cm".');
    expect(before).toContain('Prices:\n no currency yet. Say "prices in euros".');
    expect(before).toContain('Time zone:\n UTC. Say "my time zone is Europe/Vienna".');
    expect(before).toContain('Hours:\n not told yet. Say "2 hours on weekdays".');
    for (const words of [...before.matchAll(/Say "([^"]+)"/g)].map(([, one]) => one ?? '')) await open.say(words);
    const after = said((await pages()).at(-1) ?? []);
    expect(after).toContain('Numbers without a unit:\n centimetres. Say "use inches".');
    expect(after).toContain('Prices:\n EUR. Say "prices in dollars".');
    expect(after).toContain('Time zone:\n Europe/Vienna.');
    expect(after).toContain('Hours:\n 10 h a week.');
  });

  test('shows the days that come, of the batch in hand and of pieces for a day, and opens the batch', async () => {
    await open.say(MEDIUM);
    await open.say('2 hours on weekdays');
    await open.say('12 pouches 11 in wide by 5 december, I knit and I finish');
    await open.say('done 3');
    await open.say('cowl 24 in round by 20 november');
    await open.say('start');
    await visit();
    const blocks = await page();
    expect(said(blocks)).toContain('Batch of 12, pouch: 3 done, to be ready by Saturday 5 December.');
    expect(said(blocks)).toContain('The cowl: to be ready by Friday 20 November.');
    expect(await press(blocks, 'Open the Batch')).toMatchObject({ exchanges: [{ reply: { kind: 'batch' } }] });
  });

  test('what one maker of a batch has done stands on the page of the other', async () => {
    const owen = { user: { slackUserId: 'U2', name: 'Owen' }, place: 'dm:D2' };
    for (const more of [{}, owen]) {
      await open.say(MEDIUM, more);
      await open.say('2 hours on weekdays', more);
    }
    await visit(v7(), 'U2');
    await open.say('12 pouches 11 in wide by 5 december, with Owen');
    expect(said((await pages()).at(-1) ?? [])).toContain('Batch of 12, pouch: 0 done');
    await open.say('done 2');
    const [row] = (await sent()).filter(({ address }) => address.to === 'home');
    expect(row?.address).toMatchObject({ user: 'U2' });
    expect(said(row?.body.blocks as Block[])).toContain('Batch of 12, pouch: 2 done');
  });

  test('a unit first typed in a question stands on the page', async () => {
    await visit();
    await sent();
    await open.say('which machine for a pouch 28 cm wide');
    expect(said(await page())).toContain('centimetres');
  });

  test('units are changed by a button, which the page then offers the other way round', async () => {
    await open.say(MEDIUM);
    await visit();
    await press(await page(), 'Use Centimetres');
    const changed = await page();
    expect(said(changed)).toContain('Gauges, to 10 cm');
    expect(labelsOf(changed)).toContain('Use Inches');
  });

  test('a press of +1 counts, shows the new row on Home, and posts no card', async () => {
    await open.say(MEDIUM);
    await open.say(POUCH);
    await open.say('start');
    await visit();
    await press(await page(), '+1 Row');
    const rows = await sent();
    expect(rows).toMatchObject([{ address: { to: 'home', user: 'U1', channel: 'D1' } }]);
    expect(said(rows[0]?.body.blocks as Block[])).toContain('row 1 of');
  });

  test('ten quick presses count ten rows and make one page', async () => {
    await open.say(MEDIUM);
    await open.say(POUCH);
    await open.say('start');
    await visit();
    const blocks = await page();
    for (let i = 0; i < 10; i++) await press(blocks, '+1 Row');
    expect(said(await page())).toContain('row 10 of');
  });

  test('a press that Slack sends twice counts once', async () => {
    await open.say(MEDIUM);
    await open.say(POUCH);
    await open.say('start');
    await visit();
    const blocks = await page();
    for (let i = 0; i < 2; i++) await press(blocks, '+10 Rows', 'action:do.1:5');
    expect(said(await page())).toContain('row 10 of');
  });

  test('a button of a page whose work has ended is answered in words', async () => {
    await open.say(MEDIUM);
    await open.say(POUCH);
    await open.say('start');
    await visit();
    const blocks = await page();
    await open.say('give it up');
    const answer = await press(blocks, '+1 Row');
    expect(answer).toMatchObject({ card: { lead: 'Nothing is on the machine' } });
  });

  test('a page is made for the one who opened it alone, and not for another maker or before a visit', async () => {
    await open.say(MEDIUM);
    expect(await pages()).toEqual([]);
    await visit(v7(), 'U2');
    expect(said(await page())).not.toContain('Medium');
    await open.say(POUCH);
    expect(await pages()).toEqual([]);
  });

  test('a turn that changes nothing on it makes no page', async () => {
    await open.say(MEDIUM);
    await visit();
    await sent();
    for (const text of ['help', 'my gauge', 'steps', 'thanks', 'use inches']) await open.say(text);
    expect(await pages()).toEqual([]);
    await open.say('use cm');
    expect(said(await page())).toContain('Say "use inches"');
  });

  test('a visit that Slack tells of twice makes one page, and a second visit another', async () => {
    await visit('event:1');
    await visit('event:1');
    expect(await pages()).toHaveLength(1);
    await visit('event:2');
    expect(await pages()).toHaveLength(1);
  });

  test('shows five of each and says how many more there are', async () => {
    for (let needles = 40; needles < 48; needles++) {
      await open.say(`${needles} needles, ${needles} rows in 10 in, 7 in flat, on the ${needles}`);
      await open.say(`pouch 8 in wide on the ${needles}`);
      await open.say('start');
      await open.say(`I have 20 g of yarn${needles}`);
    }
    await visit();
    const blocks = await page();
    expect(said(blocks)).toContain('3 more pieces on machines.');
    expect(labelsOf(blocks).filter((label) => label === '+1 Row')).toHaveLength(5);
    expect(labelsOf(blocks)).toContain('All Gauges');
    expect(blockFaults(blocks, MOST_ON_HOME)).toEqual([]);
  });
});

const long = (name: string): string => name.repeat(300).slice(0, 300);

describe.each([long('<!channel> '), long('*bold* _it_ `code` '), long('&<@U1|x> '), long('ツ😀 '), long('" \\ ')])(
  'with 40 machines and yarns named %#',
  (name) => {
    test('the page stays inside the limits, and names stand in it as letters', async () => {
      await open.within(async (bound) => {
        const maker = await bound.makers.held('U1', name, AT);
        for (let i = 0; i < 40; i++) {
          const profile = await bound.profiles.opened(
            maker.id,
            { name: `${i}${name}`, needles: 46 },
            `${i}${name}`,
            '',
            AT,
          );
          await bound.measurements.add({
            ...{ id: `m${i}`, profileId: profile.id, swatch: `s${i}`, state: 'rested', form: 'tube', needles: 46 },
            ...{
              rows: { count: 110, overMm: 558.8, how: 'read' },
              stitches: { count: 23, overMm: 171.45, how: 'read' },
            },
            ...{
              massG: undefined,
              unravelled: undefined,
              said: '',
              note: '',
              day: 20_416,
              workId: '',
              replaces: '',
              at: AT,
            },
          });
          const lot = await bound.shelf.opened(
            { owner: maker.id, kind: 'yarn', name: `${i}${name}`, dyeLot: name },
            AT,
          );
          await bound.shelf.move({ id: `v${i}`, lotId: lot.id, workId: '', left: 900, aside: 0, said: '', at: AT });
        }
      });
      await open.say('pouches 8, 9, 10, 11 and 12 in wide');
      await open.say(POUCH);
      await open.say('start');
      await visit();
      const blocks = await page();
      expect(blockFaults(blocks, MOST_ON_HOME)).toEqual([]);
      expect(JSON.stringify(blocks).length).toBeLessThan(250_000);
    });
  },
);
