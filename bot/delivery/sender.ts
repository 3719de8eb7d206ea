import type { webApi } from '@slack/bolt';
import { z } from 'zod';
import { mentionsAs } from '../mention.js';
import type { Address, Body, OutboxRow } from '../store/ports.js';

type Message = Body & { channel: string; thread_ts?: string | undefined };
type Page = webApi.ViewsPublishArguments;
const PLAIN = { mrkdwn: false, unfurl_links: false, unfurl_media: false } as const;
type Plain = typeof PLAIN;

/** What the sender needs of Slack's Web API client. */
export type Posts = {
  chat: {
    postMessage(message: Message & Plain): Promise<{ ts?: string | undefined }>;
    postEphemeral(message: Message & { user: string }): Promise<unknown>;
    update(message: Body & { channel: string; ts: string }): Promise<unknown>;
  };
  views: {
    publish(page: Page): Promise<unknown>;
  };
};

/** Posts one card; resolves with its Slack timestamp where Slack tells one, and rejects when it was not posted. */
export type Sender = (row: OutboxRow) => Promise<string | undefined>;

class ResponseUrlError extends Error {
  constructor(
    readonly statusCode: number,
    readonly retryAfter: number | undefined,
  ) {
    super(`the response url answered ${statusCode}`);
  }
}

const TIMEOUT_MS = 10_000;

/** Sends a card to where it goes; returns the time stamp of the message, where Slack tells one. */
export function sender(posts: Posts): Sender {
  return ({ address, body }) => sent(address, { ...body, text: escaped(body.text) }, posts);
}

async function sent(address: Address, body: Body, { chat, views }: Posts): Promise<string | undefined> {
  if (address.to === 'response') return respond(address, body);
  if (address.to === 'home') {
    // Its buttons come back with the direct message in which they answer.
    const view = { type: 'home', blocks: body.blocks, private_metadata: address.channel } as Page['view'];
    await views.publish({ user_id: address.user, view });
    return undefined;
  }
  if (address.to === 'card') return updated(address, body, chat);
  if (address.to === 'again' && address.ifThere) return undefined;
  const message = { ...body, channel: address.channel, thread_ts: address.threadTs };
  if (address.to === 'ephemeral') {
    await chat.postEphemeral({ ...message, user: address.user });
    return undefined;
  }
  const posted = await chat.postMessage({ ...message, ...PLAIN });
  return posted.ts;
}

/** What Slack says of a message that is gone, or can be made anew no more. */
const GONE = new Set(['message_not_found', 'cant_update_message', 'edit_window_closed']);
const Refused = z.object({ data: z.object({ error: z.string() }) });

/** A card made anew; where it is gone, posted as a new one, so that no answer is lost. */
async function updated(
  { channel, ts, threadTs, ifThere }: Address & { to: 'card' },
  body: Body,
  chat: Posts['chat'],
): Promise<string | undefined> {
  try {
    await chat.update({ ...body, channel, ts });
    return ts;
  } catch (error) {
    if (!GONE.has(Refused.safeParse(error).data?.data.error ?? '')) throw error;
    return ifThere ? undefined : (await chat.postMessage({ ...body, channel, thread_ts: threadTs, ...PLAIN })).ts;
  }
}

async function respond({ url, inChannel = false }: Address & { to: 'response' }, body: Body): Promise<undefined> {
  const response = await fetch(url, {
    method: 'POST',
    headers: { 'content-type': 'application/json; charset=utf-8' },
    body: JSON.stringify({ response_type: inChannel ? 'in_channel' : 'ephemeral', replace_original: false, ...body }),
    signal: AbortSignal.timeout(TIMEOUT_MS),
  });
  await response.arrayBuffer();
  if (response.ok) return undefined;
  const retryAfter = Number.parseInt(response.headers.get('retry-after') ?? '', 10);
  throw new ResponseUrlError(response.status, Number.isNaN(retryAfter) ? undefined : retryAfter);
}

/** Slack reads `<!channel>` in the text of a message as a ping even when formatting is off. */
const escaped = (text: string): string =>
  mentionsAs(
    text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;'),
    (slackUserId) => `<@${slackUserId}>`,
  );
