import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Answer, codesOf, MEDIUM, replyOf, type Talk, talk } from '../../talk.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
  await open.say(MEDIUM);
});
afterEach(() => open.close());

const fact = ({ card }: Answer, label: string) => card.facts.find((one) => one.label === label)?.text;
const rowsOf = (answer: Answer) => replyOf(answer, 'plan').plan.rows;
const PHONE = 'pouch for a phone 163 x 78 x 9 mm';

describe('a piece for a thing that it must take', () => {
  test('is planned the way up that fits, in the unit the thing was told in', async () => {
    const answer = await open.say(PHONE);
    expect(answer.card.body.join(' ')).toMatch(/19.5 cm wide.*Lying down, since upright it needs 17.5 cm of height/);
    expect(fact(answer, 'Assumed')).toContain('1 cm of room to slip it in, its long side across');
  });

  test('may be turned by a word, where the needles allow it', async () => {
    await open.say(PHONE);
    const refused = await open.say('upright');
    expect(codesOf(refused)).toEqual(['contents_too_big']);
    expect(refused.card.body.join(' ')).toContain('About 48 needles would take it.');
    expect(rowsOf(await open.say('on the 48, 48 needles'))).toBe(41);
    expect(fact(await open.say('upright'), 'Chance')).toContain(
      '17.5 cm that what goes in needs: about an even chance (53%)',
    );
    expect((await open.say('lying')).card.body[0]).toBe('Changed: way up, lying down.');
  });

  test('asks which piece when none was named, and takes the thing over', async () => {
    expect((await open.say('it must take a passport 12.5 x 8.8 x 0.7 cm')).card.lead).toBe('Which piece is it for?');
    expect(rowsOf(await open.say('a pouch'))).toBe(45);
  });

  test('says that sides without a unit were read in millimetres, where only those can be meant', async () => {
    expect(fact(await open.say('pouch for a phone 163 x 78 x 9'), 'Assumed')).toContain(
      'a phone 163 x 78 x 9 read in mm',
    );
  });

  test('waits for the unit where the sides fit in more than one, and reads them in it', async () => {
    const fresh = await talk();
    await fresh.say('20 rows x 14 sts over 10 cm, 46 needles');
    const { card } = await fresh.say('use inches');
    expect(card.lead).toBeDefined();
    expect(fact(await fresh.say('pouch for a book 7 x 4 x 1'), 'Assumed')).toContain('a book 7 x 4 x 1 read in inches');
    await fresh.close();
  });

  test('gives way to a width asked for later, which says so', async () => {
    await open.say(PHONE);
    expect((await open.say('make it 21 cm wide')).card.body[0]).toBe(
      'Changed: contents no longer asked for; width, 21 cm.',
    );
  });
});

describe('a closure refused', () => {
  test('leaves the size as it is, and a later size leaves it refused', async () => {
    await open.say('pouch 11 in wide');
    expect((await open.say('no zip')).card.body[0]).toBe('Changed: closure, none.');
    expect(fact(await open.say('make it 12 in'), 'Notions')).toBeUndefined();
    expect(rowsOf(await open.say('9 in zip'))).toBeGreaterThan(109);
  });
});

test('a strap by what carries it is told with the drop it was read as', async () => {
  const answer = await open.say('pouch 28 cm wide with a hand strap');
  expect(fact(answer, 'Assumed')).toContain('hand strap read as 12.5 cm');
  expect((await open.say('with a hip strap')).card.body[0]).toBe('Changed: strap drop, hip strap (55 cm).');
});

test('a length out of range says why', async () => {
  const { card } = await open.say('drawstring bag 20 cm tall with a flap of 40 cm');
  expect(card.body.slice(0, 2).join(' ')).toMatch(
    /^A flap is no longer than what it hangs on\. It must be between 2 cm and/,
  );
});
