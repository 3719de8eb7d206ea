import { webApi } from '@slack/bolt';
import { expect, test } from 'vitest';
import { failure } from '../../../bot/delivery/failure.js';

const platform = (error: string, more = {}) => new webApi.WebAPIPlatformError({ ok: false, error, ...more });

test('a rate limit is waited for as long as Slack says', () => {
  expect(failure(new webApi.WebAPIRateLimitedError(30))).toEqual({
    kind: 'limited',
    why: 'rate limit',
    retryAfterMs: 30_000,
  });
});

test.each([
  ['a lost connection', new webApi.WebAPIRequestError(new Error('ECONNRESET')), 'WebAPIRequestError'],
  ['a server error', new webApi.WebAPIHTTPError(503, 'Service Unavailable', {}), 'HTTP 503'],
  ['a fault that Slack admits', platform('internal_error'), 'internal_error'],
  ['a page instead of JSON', platform('<html>Bad Gateway</html>'), 'not an answer of Slack'],
  ['something that is no error', undefined, 'unknown'],
])('%s passes, and is tried again', (_, error, why) => {
  expect(failure(error)).toEqual({ kind: 'passing', why });
});

test.each(['channel_not_found', 'not_in_channel', 'account_inactive'])(
  '%s lasts, and the host is told what to do',
  (code) => {
    expect(failure(platform(code))).toEqual({ kind: 'lasting', why: code, advice: expect.any(String) });
  },
);

test('a card that Slack cannot lay out lasts', () => {
  expect(failure(platform('invalid_blocks'))).toEqual({ kind: 'lasting', why: 'invalid_blocks', advice: undefined });
});

test('a missing scope is named, with the line of the manifest that it belongs in', () => {
  expect(failure(platform('missing_scope', { needed: 'chat:write' }))).toEqual({
    kind: 'lasting',
    why: 'missing_scope',
    advice: 'add "chat:write" to oauth_config.scopes.bot in the app manifest and install the app again',
  });
});
