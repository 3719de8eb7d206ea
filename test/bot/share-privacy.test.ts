import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Turn } from '../../bot/turn.js';
import { AT, type Talk, talk } from './talk.js';

/** Two makers in each of two workspaces of one store, who go by the same names there. */
const MAKERS: readonly (Partial<Turn> & { slackTeamId: string; user: Turn['user'] })[] = ['T1', 'T2'].flatMap(
  (team) => [
    { slackTeamId: team, user: { slackUserId: 'U1', name: 'Nadia' }, place: 'dm:D1' },
    { slackTeamId: team, user: { slackUserId: 'U2', name: 'Owen' }, place: 'dm:D2' },
  ],
);

const SECRETS = ['46 needles, 110 rows, 22 in long, 6 3/4 flat', '40 needles, 97 rows, 22 in long, 6 1/2 flat'];
const ROWS_TOO = ['share this with Owen, with my rows', 'yes'];

/** What makers say to each other's cards, without ever choosing to show their rows. */
const WORDS: readonly (readonly string[])[] = [
  ['rows for a pouch 11 in wide'],
  ['rows for a pouch 11 in wide'],
  ['make it 12'],
  ['share this with Owen'],
  ['share this with Nadia'],
  ['size it to my gauge'],
  ['size it to my gauge'],
  ['take the change'],
  ['keep mine'],
  ['not now'],
  ['send the change'],
  ['withdraw it'],
  ['undo'],
  ['put it back'],
  ['how did it land'],
  ['start'],
  ['done, 10 7/8', 'yes'],
  ['send the size'],
  ['share it back'],
  ['share this with Nadia: for the market'],
  ['what is shared with me'],
  ['what have I shared'],
  ['show me the shared plan'],
  ['size the pouch Nadia shared'],
  ['why is mine taller'],
  ['why do I need more rows'],
  ['unshare everything', 'yes'],
  ['my gauge'],
  ['steps'],
];

type Said = { who: number; words: readonly string[] };

/** All that anyone but one maker is told, by answer and by card, when that maker's gauge is the one given. */
async function toldOthers(said: readonly Said[], secretive: number, secret: string): Promise<string[]> {
  const open = await talk();
  const told: string[] = [];
  const say = async (who: number, text: string): Promise<void> => {
    const maker = MAKERS[who];
    const direct = { to: 'post', channel: `D of ${maker?.user.slackUserId}` } as const;
    await open.say(text, { ...maker, address: direct });
    for (const { slackTeamId, address, body } of await lettersOf(open)) {
      const reader = address.to === 'post' ? address.channel.replace('D of ', '') : '';
      const isTheirs = slackTeamId === MAKERS[secretive]?.slackTeamId && reader === MAKERS[secretive]?.user.slackUserId;
      if (!isTheirs) told.push(`${slackTeamId} ${reader}: ${body.text}`);
    }
  };
  for (const who of MAKERS.keys()) await say(who, who === secretive ? secret : (SECRETS[0] ?? ''));
  for (const { who, words } of said) for (const text of words) await say(who, text);
  await open.close();
  return told;
}

async function lettersOf(open: Talk) {
  const rows = await open.store.outbox.take(AT + 1e6, 1, 100);
  for (const row of rows) await open.store.outbox.posted(row, AT, undefined);
  return rows;
}

const saids = fc.array(fc.record({ who: fc.nat({ max: MAKERS.length - 1 }), words: fc.constantFrom(...WORDS) }), {
  minLength: 8,
  maxLength: 24,
});

test('whatever two makers in two workspaces do, no gauge changes a word that another is told', async () => {
  await fc.assert(
    fc.asyncProperty(saids, fc.constantFrom(0, 1), async (said, secretive) => {
      const [told, otherwise] = [
        await toldOthers(said, secretive, SECRETS[0] ?? ''),
        await toldOthers(said, secretive, SECRETS[1] ?? ''),
      ];
      expect(otherwise).toEqual(told);
    }),
    { numRuns: 25, seed: 20261126 },
  );
}, 120_000);

test('once the rows are shared they do, in the one workspace', async () => {
  const words = ['rows for a pouch 11 in wide', ...ROWS_TOO];
  const said: Said[] = words.map((text) => ({ who: 0, words: [text] }));
  const [told, otherwise] = [await toldOthers(said, 0, SECRETS[0] ?? ''), await toldOthers(said, 0, SECRETS[1] ?? '')];
  expect(otherwise).not.toEqual(told);
  expect(otherwise.filter((line) => line.startsWith('T2'))).toEqual(told.filter((line) => line.startsWith('T2')));
});
