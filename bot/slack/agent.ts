import type { webApi } from '@slack/bolt';
import { failure } from '../delivery/failure.js';
import type { Prompt } from '../prompts.js';
import type { Log } from '../surroundings.js';

/** What Slack shows of an agent beside its answers. Nothing depends on it: what it refuses is logged and left. */
export type Agent = {
  /** Puts prompts into the Messages tab. */
  prompt(channel: string, prompts: readonly Prompt[]): Promise<void>;
  /** Shows, while `work` takes over a second, that it is being worked on. Resolves and rejects as `work` does. */
  working<T>(channel: string, threadTs: string, work: Promise<T>): Promise<T>;
};

export const agentScope = 'assistant:write';

const SLOW_MS = 1000;
const TITLE = 'At your bench';

/** What Slack's agent view shows of us; where it cannot be shown, only the log says so. */
export function agent({ assistant, agents }: webApi.WebClient, log: Log): Agent {
  const tried = async (call: Promise<unknown>): Promise<void> => {
    await call.catch((error: unknown) => log.info({ why: failure(error).why }, 'agent view not shown'));
  };
  return {
    prompt: (channel, [first, ...more]) =>
      first === undefined
        ? Promise.resolve()
        : tried(
            assistant.threads.setSuggestedPrompts({ channel_id: channel, title: TITLE, prompts: [first, ...more] }),
          ),

    async working(channel, threadTs, work) {
      const status = (status: string) =>
        tried(agents.sessions.setStatus({ channel_id: channel, thread_ts: threadTs, status }));
      let shown: Promise<void> | undefined;
      const slow = setTimeout(() => {
        shown = status('processing');
      }, SLOW_MS);
      try {
        return await work;
      } finally {
        clearTimeout(slow);
        shown?.then(() => status('active'));
      }
    },
  };
}

/** For a workspace whose Slack has no agents, or that did not allow them. */
export const noAgent: Agent = { prompt: async () => {}, working: (_channel, _threadTs, work) => work };
