import { createHmac } from 'node:crypto';

export const SECRET = 'a secret for tests';

export type Signing = { secret?: string; timestamp?: number; headers?: Record<string, string> };

/** A request as Slack signs it: an object with `type` url_verification or event_callback as JSON, else as a form. */
export function signedRequest(body: Record<string, unknown>, signing: Signing = {}): RequestInit {
  const { secret = SECRET, timestamp = Math.floor(Date.now() / 1000), headers } = signing;
  const { contentType, text } = encoded(body);
  const signature = createHmac('sha256', secret).update(`v0:${timestamp}:${text}`).digest('hex');
  return {
    method: 'POST',
    body: text,
    headers: {
      'content-type': contentType,
      'x-slack-request-timestamp': String(timestamp),
      'x-slack-signature': `v0=${signature}`,
      ...headers,
    },
  };
}

function encoded(body: Record<string, unknown>): { contentType: string; text: string } {
  const isEvent = body.type === 'event_callback' || body.type === 'url_verification';
  if (isEvent) return { contentType: 'application/json', text: JSON.stringify(body) };
  const form = 'command' in body ? (body as Record<string, string>) : { payload: JSON.stringify(body) };
  return { contentType: 'application/x-www-form-urlencoded', text: new URLSearchParams(form).toString() };
}
