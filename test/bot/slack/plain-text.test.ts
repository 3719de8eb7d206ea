import { expect, test } from 'vitest';
import { plainText } from '../../../bot/slack/plain-text.js';

test.each([
  ['11 &lt; 12 &amp; 13 &gt; 12', '11 < 12 & 13 > 12'],
  ['typed as &amp;lt;', 'typed as &lt;'],
  ['see <https://example.com/a?b=1&amp;c=2>', 'see https://example.com/a?b=1&c=2'],
  ['see <https://example.com|example.com>', 'see example.com'],
  ['mail <mailto:a@example.com|a@example.com>', 'mail a@example.com'],
  ['share with <@U1>', 'share with @U1'],
  ['share with <@U1|owen>', 'share with @U1'],
  ['post in <#C1|bench> or <#C2|>', 'post in #bench or #C2'],
  ['<!here> and <!channel|channel>', 'here and channel'],
  ['<!subteam^S1|@makers> or <!subteam^S2>', 'makers or subteam'],
  ['<!date^1762700000^{date}|9 November>', '9 November'],
  ['  11 in  ', '11 in'],
])('%s is read as %s', (escaped, plain) => {
  expect(plainText(escaped)).toBe(plain);
});

test.each(['<@U0BOT> hat', 'hat <@U0BOT|walewright>'])(
  'the mention of the bot itself is taken out of %s',
  (escaped) => {
    expect(plainText(escaped, 'U0BOT')).toBe('hat');
  },
);

test('another mention stays when that of the bot is taken out', () => {
  expect(plainText('<@U0BOT> ask <@U1>', 'U0BOT')).toBe('ask @U1');
});
