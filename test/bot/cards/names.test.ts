import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Block, blocks } from '../../../bot/cards/blocks.js';
import { LIMITS, shortened } from '../../../bot/cards/limits.js';
import { plainText } from '../../../bot/cards/plain-text.js';
import { AT, MEDIUM, POUCH, type Talk, talk } from '../talk.js';
import { blockFaults } from './block-faults.js';

let open: Talk;
beforeEach(async () => {
  open = await talk();
});
afterEach(() => open.close());

const long = (name: string): string => name.repeat(300).slice(0, 300);

/** A profile under names that only an import or a form could bring, measured once. */
async function measuredUnder(machine: string, yarn: string, times = 1): Promise<void> {
  await open.within(async (bound) => {
    const maker = await bound.makers.held('U1', long('*Nadia* '), AT);
    for (let i = 0; i < times; i++) {
      const profile = await bound.profiles.opened(
        maker.id,
        { name: `${i}${machine}`, needles: 46 },
        `${i}${yarn}`,
        '',
        AT + i,
      );
      await bound.measurements.add({
        id: `${machine.slice(0, 5)} ${i}`,
        profileId: profile.id,
        swatch: `s${i}`,
        state: 'rested',
        form: 'tube',
        rows: { count: 110, overMm: 558.8, how: 'read' },
        stitches: { count: 23, overMm: 171.45, how: 'read' },
        needles: 46,
        massG: undefined,
        unravelled: undefined,
        said: 'as it was',
        note: '',
        day: 20_416,
        workId: '',
        replaces: '',
        at: AT,
      });
    }
  });
}

const NAMES = [
  long('<!channel> '),
  long('*bold* _it_ `code` '),
  long('&<@U1|x> '),
  long('ツ😀 '),
  long('a\nb '),
  long('" \\ '),
];

describe.each(NAMES.map((name) => ({ name, shown: JSON.stringify(name.slice(0, 12)) })))(
  'a name of 300 characters, $shown',
  ({ name }) => {
    test.each(['my gauge', POUCH, 'help', '60 rows in 12 in', 'pouch 11 in wide on the 48', MEDIUM])(
      'breaks nothing in the answer to "%s"',
      async (text) => {
        await measuredUnder(name, name);
        const { card } = await open.say(text);
        const made = blocks(card, 'turn');
        expect(blockFaults(made)).toEqual([]);
        expect(card.lead.length).toBeLessThanOrEqual(LIMITS.lead);
        expect(plainText(card).length).toBeLessThanOrEqual(LIMITS.messageText);
      },
    );
  },
);

test('forty machines with such names still make a list that the platform takes', async () => {
  await measuredUnder(long('<!channel> '), long('*grey* '), 40);
  const { card } = await open.say('my gauge');
  expect(blockFaults(blocks(card, 'turn'))).toEqual([]);
  expect(plainText(card).length).toBeLessThanOrEqual(LIMITS.messageText);
});

test('what a maker typed is quoted as letters, in plain or rich text only', async () => {
  await open.say(MEDIUM);
  const { card } = await open.say('pouch 11 in wide zz<!channel>zz *yy* `code`');
  const holders: string[] = [];
  const look = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    const { type, text } = node as Block;
    if (typeof text === 'string' && text.includes('channel')) holders.push(type);
    Object.values(node).forEach(look);
  };
  look(blocks(card, 'turn'));
  expect(holders.length).toBeGreaterThan(0);
  expect(holders.filter((type) => !['text', 'plain_text', 'raw_text'].includes(type))).toEqual([]);
});

describe('a text that is too long', () => {
  test('is cut with an ellipsis, at the limit exactly', () => {
    expect(shortened('abcdef', 6)).toBe('abcdef');
    expect(shortened('abcdef', 5)).toBe('abcd…');
    expect(shortened('abc  def', 6)).toBe('abc…');
  });
});
