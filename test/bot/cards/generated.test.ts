import { describe, expect, test } from 'vitest';
import { blocks } from '../../../bot/cards/blocks.js';
import { plainCard } from '../../../bot/cards/card.js';
import { card } from '../../../bot/cards/index.js';
import { LIMITS } from '../../../bot/cards/limits.js';
import { plainText } from '../../../bot/cards/plain-text.js';
import type { Reply } from '../../../bot/reply.js';
import { blockFaults, textsOf } from './block-faults.js';
import { shown } from './samples.js';

const MANY = 200;
/** What a maker gives names to, or types. */
const NAMED = ['name', 'said', 'note', 'yarn', 'dyeLot', 'colour', 'owner', 'who', 'lot'];
/** Lists that grow with what a maker has or says. */
const LISTS = [
  ...['gauges', 'measurements', 'lots', 'sizes', 'putUps', 'untold', 'remedies', 'lines', 'notes', 'assumed', 'steps'],
  ...['changed', 'examples', 'problems', 'makers', 'pieces', 'rates', 'off', 'repeat', 'parts', 'ranked', 'stripes'],
];

type Names = { title: string; of: (i: number) => string };
const NAMES: Names[] = [
  { title: 'pings', of: (i) => `${i} ${'<!channel> <@U1|x> '.repeat(20)}`.slice(0, 300) },
  { title: 'marks', of: (i) => `${i} ${'*bold* _it_ `code` & < > " \\ '.repeat(20)}`.slice(0, 300) },
  { title: 'wide letters', of: (i) => `${i} ${'ツ😀 '.repeat(90)}`.slice(0, 300) },
];

/** The same reply under such names, each list of its own as long as 200; lists in what is listed stay as they are. */
function grown(reply: Reply, names: Names): Reply {
  let made = 0;
  const named = (value: unknown, key: string, isInList: boolean): unknown => {
    if (typeof value === 'string') return NAMED.includes(key) ? names.of(++made) : value;
    if (Array.isArray(value)) {
      const isLong = !isInList && LISTS.includes(key) && value.length > 0;
      return Array.from({ length: isLong ? MANY : value.length }, (_, i) => named(value[i % value.length], key, true));
    }
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, named(inner, name, isInList)]));
  };
  return named(reply, '', false) as Reply;
}

const REPLIES = (await shown()).flatMap(({ answer }) => answer.exchanges.map(({ reply }) => reply));
const codeOf = (reply: Reply): string =>
  reply.kind === 'problem' ? `${reply.kind} ${reply.problems.map(({ code }) => code).join()}` : reply.kind;
const SEVERAL = 2;
/** A few replies of every kind, and of every problem. */
const SOME = [...new Set(REPLIES.map(codeOf))].flatMap((title) =>
  REPLIES.filter((reply) => codeOf(reply) === title)
    .slice(-SEVERAL)
    .map((reply, i) => ({ title: `${title} ${i + 1}`, reply })),
);
const BESIDE = { mended: [], leftover: [], skipped: 0, waits: false };

describe.each(NAMES)('under names of $title, with lists of 200', (names) => {
  test.each(SOME)('$title keeps to the limits of blocks and of text', ({ reply }) => {
    const large = grown(reply, names);
    const made = card([large], { units: 'cm' }, { ...BESIDE, name: names.of(0) });
    const drawn = blocks(made, '0190c3c4-1111-7000-8000-000000000000');
    expect(blockFaults(drawn)).toEqual([]);
    expect(made.lead.length).toBeLessThanOrEqual(LIMITS.lead);
    expect(plainText(made).length).toBeLessThanOrEqual(LIMITS.messageText);
    const { rows = [] } = made.table ?? {};
    if (rows.length > 99) expect(textsOf(drawn)).toContain(`and ${rows.length - 98} more`);
    expect(made.offers.length).toBeLessThanOrEqual(LIMITS.actionElements);
    expect(textsOf(drawn).join('')).not.toMatch(/undefined|NaN|\[object/);
  });
});

test('a table of more rows than the platform takes says how many it leaves out', () => {
  const rows = Array.from({ length: MANY }, (_, i) => [`yarn ${i}`, '1']);
  const made = plainCard('200 yarns', { table: { columns: ['Yarn', 'Balls'], rows } });
  const drawn = blocks(made, 'turn');
  expect(blockFaults(drawn)).toEqual([]);
  expect(textsOf(drawn)).toContain('yarn 97');
  expect(textsOf(drawn)).not.toContain('yarn 98');
  expect(textsOf(drawn)).toContain('and 102 more');
});
