import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { pieces } from '../../../../core/index.js';
import { replyOf, type Talk, talk } from '../../talk.js';

/** Medium yarn on 46 needles, and bulky on 48. */
const BENCHES = ['46 needles, 110 rows, 55 cm long, 17.15 cm flat', '48 needles, 100 rows, 65 cm long, 22.8 cm flat'];

let open: Talk;
beforeEach(async () => {
  open = await talk();
  for (const bench of BENCHES) await open.say(bench);
});
afterEach(() => open.close());

const factOf = (answer: Awaited<ReturnType<Talk['say']>>, fact: string): string =>
  answer.card.facts.find(({ label }) => label === fact)?.text ?? '';

const replyAfter = (answer: Awaited<ReturnType<Talk['say']>>) => answer.exchanges.at(-1)?.reply;

/** What a size in its range may meet on a machine. */
const OF_NEEDLES = ['needles_set_it', 'too_many_needles'];

/** The answer on the first bench that takes it. */
async function plannedSomewhere(text: string) {
  const on48 = await open.say(`${text} on the 48`);
  return on48.exchanges.at(-1)?.reply.kind === 'plan' ? on48 : open.say(`${text} on the 46`);
}

describe.each(pieces.map((piece) => [piece.label, piece] as const))('%s', (_, piece) => {
  test('offers a size to change it to, where rows make one that is asked for, and reads it as that', async () => {
    const answer = await plannedSomewhere(piece.example);
    const before = replyOf(answer, 'plan');
    const { dimension } = before.plan.landing;
    const say = answer.card.sayings.find((words) => words.startsWith('make it'));
    expect(say !== undefined).toBe(dimension in piece.asks);
    if (say === undefined) return;
    const again = await open.say(say);
    const changed = replyOf(again, 'plan');
    const [, said] = /make it (\d+ (?:cm|in)) /.exec(say) ?? [];
    expect(changed.ask.values[dimension]).toMatchObject({ is: 'length', said });
    expect(again.card.facts.map(({ label }) => label)).not.toContain('Left out');
  });

  test('asks for what it needs with examples that answer', async () => {
    const first = replyOf(await open.say(`a ${piece.words[0]} on the 46`), 'question');
    for (const example of first.examples.slice(0, -1)) {
      await open.say(`a ${piece.words[0]} on the 46`);
      let reply = replyAfter(await open.say(example));
      for (let asked = 0; reply?.kind === 'question'; asked++) {
        expect(asked).toBeLessThan(piece.needs.length);
        reply = replyAfter(await open.say(reply.examples[0] ?? ''));
      }
      const codes = reply?.kind === 'problem' ? reply.problems.map(({ code }) => code) : [];
      expect(codes.filter((code) => !OF_NEEDLES.includes(code))).toEqual([]);
    }
  });
});

describe('a person', () => {
  test('brings the sizes that the piece has a use for, and these alone are told', async () => {
    const wrists = await open.say('wrist warmers for a woman 18 cm long');
    expect(factOf(wrists, 'Assumed')).toContain('a hand girth of 18.5 cm, the mean of women');
    expect(factOf(wrists, 'Assumed')).not.toContain('calf girth');
    const legs = await open.say('leg warmers for a woman 35 cm long');
    expect(factOf(legs, 'Assumed')).toContain('a calf girth of 37.5 cm, a heel girth of 31 cm');
    expect(factOf(legs, 'Assumed')).not.toContain('hand girth');
    const calf = await open.say('warmers for a woman 35 cm long, calf 36 cm');
    expect(factOf(calf, 'Assumed')).toContain('narrower than the calf');
  });

  test('changed is told with the size', async () => {
    await open.say('headband for a 52 cm head');
    expect((await open.say('make it for a woman')).card.body[0]).toBe('Changed: head 56 cm, woman.');
  });
});

test('a part wanted without its size has the usual one, or is told to want one', async () => {
  const scarf = await open.say('scarf 150 cm long with a fringe');
  expect(factOf(scarf, 'Assumed')).toContain('fringe of 12 cm, as is usual');
  const sleeve = await open.say('mug sleeve 26 cm round and 9 cm tall with a handle');
  expect(factOf(sleeve, 'Left out')).toContain('handle: say its size');
});

test('a diameter is told beside the girth that was made of it', async () => {
  const sleeve = await open.say('sleeve for a jar 8 cm across and 9 cm tall');
  expect(factOf(sleeve, 'Assumed')).toContain('8 cm across read as 25 cm round');
});

test('pairs are told as pairs, and a number that makes none is left out', async () => {
  const two = await open.say('4 wrist warmers for a woman 18 cm long');
  expect(replyOf(two, 'plan').plan.pieces).toBe(2);
  expect(factOf(two, 'Yarn')).toContain('each pair; for both pairs');
  const odd = await open.say('3 wrist warmers for a woman 18 cm long');
  expect(factOf(odd, 'Left out')).toContain('3: two are knitted as a pair, so say how many pairs');
});

describe('a bare size for the plan in hand', () => {
  test('is of what the rows make, else of the one size it can be, and the card says which', async () => {
    await open.say('hat for a 50 cm head on the 48');
    expect((await open.say('make it 20 cm')).card.body[0]).toBe('Changed: depth, 20 cm.');
    expect((await open.say('no, 21 cm')).card.body[0]).toBe('Changed: depth, 21 cm.');
    expect((await open.say('make it 48 cm')).card.body[0]).toBe('Changed: head, 48 cm.');
  });

  test('is of the plan that undo brings back', async () => {
    await open.say('hat for a 50 cm head on the 48');
    await open.say('scarf 150 cm long');
    await open.say('undo');
    expect((await open.say('make it 20 cm')).card.body[0]).toBe('Changed: depth, 20 cm.');
  });
});

test('a finished size round is that of the piece, where what is asked for is the girth of what it goes on', async () => {
  await open.say('hat for a 50 cm head on the 48');
  await open.say('start');
  const done = replyOf(await open.say('done, came out 44 cm round and 18 cm deep'), 'finished');
  expect(done.size).toMatchObject({ adjective: 'deep', mm: 180 });
  expect((await open.say('my measurements')).card.body.join(' ')).toContain('44 cm round');
});
