import { describe, expect, test } from 'vitest';
import { configFrom } from '../../bot/config.js';

const SLACK = { SLACK_BOT_TOKEN: 'xoxb-1', SLACK_APP_TOKEN: 'xapp-1' };

describe('the environment', () => {
  test('may be empty: then there is no Slack, and the store has its usual place', () => {
    expect(configFrom({})).toEqual({
      config: { storePath: 'data/walewright.sqlite', logLevel: 'info', slack: undefined },
    });
  });

  test('counts an empty setting as none', () => {
    expect(configFrom({ SLACK_BOT_TOKEN: '', PORT: '', LOG_LEVEL: '' })).toEqual(configFrom({}));
  });

  test.each([
    ['a socket', SLACK, { botToken: 'xoxb-1', appToken: 'xapp-1', port: 3000 }],
    [
      'HTTP',
      { SLACK_BOT_TOKEN: 'xoxb-1', SLACK_SIGNING_SECRET: 's', PORT: '8080' },
      { botToken: 'xoxb-1', signingSecret: 's', port: 8080 },
    ],
  ])('reaches Slack by %s', (_way, environment, slack) => {
    expect(configFrom(environment)).toMatchObject({ config: { slack } });
  });
});

describe('a fault in the environment', () => {
  test.each<[string, Record<string, string>]>([
    ['SLACK_BOT_TOKEN', { ...SLACK, SLACK_BOT_TOKEN: 'xoxp-1' }],
    ['SLACK_APP_TOKEN', { ...SLACK, SLACK_APP_TOKEN: '1' }],
    ['SLACK_APP_TOKEN', { SLACK_BOT_TOKEN: 'xoxb-1' }],
    ['SLACK_BOT_TOKEN', { SLACK_SIGNING_SECRET: 's' }],
    ['PORT', { PORT: '99999' }],
    ['PORT', { PORT: 'http' }],
    ['LOG_LEVEL', { LOG_LEVEL: 'loud' }],
  ])('names %s', (name, environment) => {
    expect(configFrom(environment)).toEqual({ faults: [expect.stringMatching(`^${name}`)] });
  });

  test('is told with every other at once, and never with the secret itself', () => {
    const outcome = configFrom({ SLACK_BOT_TOKEN: 'secret-bot', SLACK_APP_TOKEN: 'secret-app', PORT: '-1' });
    expect('faults' in outcome && outcome.faults).toHaveLength(3);
    expect(JSON.stringify(outcome)).not.toContain('secret-');
  });
});
