import nock from 'nock';
import { BOT, TEAM } from './payloads.js';

export type Fields = Record<string, unknown>;
type Reply = { status?: number; body?: Fields; headers?: Record<string, string> };

export type SlackApi = {
  /** Expects one call of a Web API method, and resolves with what it was sent. */
  expects(method: string, reply?: Reply): Promise<Fields>;
  /** Expects one post to a response url, and resolves with what it was sent. */
  expectsResponse(url: string, reply?: Reply): Promise<Fields>;
  /** Throws when a call was made that nobody expected, or one expected was not made. */
  close(): void;
};

/** Slack's side of the Web API, its token with these scopes, and no other network than the loopback. */
export function slackApi(scopes: readonly string[] = []): SlackApi {
  const unexpected: string[] = [];
  const note = (request: { method?: string; host?: string; path?: string }) => {
    if (!request.host?.startsWith('127.0.0.1:')) unexpected.push(`${request.method} ${request.host}${request.path}`);
  };
  nock.disableNetConnect();
  nock.enableNetConnect(/^127\.0\.0\.1:/);
  nock.emitter.on('no match', note);

  const api: SlackApi = {
    expects: (method, reply) => expected(`https://slack.com/api/${method}`, { body: OK, ...reply }),
    expectsResponse: (url, reply) => expected(url, reply),
    close() {
      const unused = nock.pendingMocks();
      nock.emitter.off('no match', note);
      nock.cleanAll();
      nock.enableNetConnect();
      if (unexpected.length > 0) throw new Error(`calls that nobody expected: ${unexpected.join(', ')}`);
      if (unused.length > 0) throw new Error(`calls that were not made: ${unused.join(', ')}`);
    },
  };
  api.expects('auth.test', {
    body: { ok: true, user_id: BOT.userId, bot_id: BOT.botId, team_id: TEAM },
    headers: { 'x-oauth-scopes': scopes.join(',') },
  });
  return api;
}

const OK = { ok: true, ts: '1762700001.000200' };

function expected(url: string, { status = 200, body = {}, headers }: Reply = {}): Promise<Fields> {
  const { origin, pathname } = new URL(url);
  return new Promise((resolve) => {
    nock(origin)
      .post(pathname)
      .reply((_, sent) => {
        resolve(fields(sent));
        return [status, body, headers];
      });
  });
}

/** The Web API client sends forms with blocks, views and prompts as JSON; a response url gets JSON. */
function fields(sent: unknown): Fields {
  if (typeof sent !== 'string') return sent as Fields;
  const form = Object.fromEntries(new URLSearchParams(sent));
  const json = Object.entries(form).filter(([name]) => ['blocks', 'view', 'prompts'].includes(name));
  return { ...form, ...Object.fromEntries(json.map(([name, text]) => [name, JSON.parse(text)])) };
}
