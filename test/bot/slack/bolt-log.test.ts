import { expect, test, vi } from 'vitest';
import { boltLog } from '../../../bot/slack/bolt-log.js';

test('warnings and errors of Bolt reach the log as words, and payloads do not', () => {
  const log = { info: vi.fn(), warn: vi.fn(), error: vi.fn() };
  const logger = boltLog(log);
  logger.debug('body', { text: 'secret' });
  logger.info('body', { text: 'secret' });
  logger.warn('slow', { text: 'secret' });
  logger.error('Slack API error', new Error('channel_not_found'));
  expect(log.info).not.toHaveBeenCalled();
  expect(log.warn.mock.calls).toEqual([[{ from: 'bolt' }, 'slow object']]);
  expect(log.error.mock.calls).toEqual([[{ from: 'bolt' }, 'Slack API error Error: channel_not_found']]);
});
