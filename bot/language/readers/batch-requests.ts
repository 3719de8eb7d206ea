import type { AwayAsk, Request } from '../../request.js';
import type { Context } from '../context.js';

const SHOW =
  /^(?:(?:where are we|how are we doing|how far are we|how is it going)(?: with (?:the|our|my) batch)?|(?:show )?(?:me )?(?:the|our|my) batch|how(?: i)?s (?:the|our|my) batch(?: going| doing)?)$/;
const REPLAN =
  /^(?:re ?plan|plan again|split (?:it|them) again|deal (?:it |them )?again)(?: (?:the|our|my) batch| it)?$/;
const REMIND = /^remind (?:me|us)(?: (?:of|about) (?:it|this|that|the batch))?(?: in time)?$/;
const STOP =
  /^(?:stop (?:reminding (?:me|us)|(?:the |my )?reminders)|no (?:more )?reminders|(?:dont|do not) remind (?:me|us)(?: again| any ?more)?)$/;
const OF = '(?: of (?:them|the batch))?';
const STAGE = '(?: (knitted|knit|seamed))?';
const DONE = new RegExp(
  `^(?:(?:i |ive |we )?(?:have )?(?:done|finished|made) (\\d+)(?: more)?${OF}|(\\d+)(?: more)?${OF} (?:are |is )?(?:done|finished|made|ready))${STAGE}$`,
);
const SMALL = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');
const AWAY: Record<string, AwayAsk> = {
  today: 'today',
  tomorrow: 'tomorrow',
  'this week': 'this_week',
  'next week': 'next_week',
  'from now on': 'always',
};

/** What a whole message asks of the batch in hand, or of reminders: `done 3`, `re-plan`, `without Owen next week`. */
export function batchRequest(text: string, context: Context): Request | undefined {
  const bare = text
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .replace(/^(?:(?:ok|okay|please|so|now|and) )+/, '')
    .replace(/ please$/, '')
    .replace(/\p{L}+/gu, (word) => (SMALL.includes(word) ? `${SMALL.indexOf(word) + 1}` : word));
  if (REMIND.test(bare)) return { kind: 'remind', act: 'set' };
  if (STOP.test(bare)) return { kind: 'remind', act: 'stop' };
  const { batch } = context;
  if (batch === undefined && !/\bbatch\b|^re ?plan$/.test(bare)) return undefined;
  if (SHOW.test(bare)) return { kind: 'batch', act: 'show' };
  if (REPLAN.test(bare)) return { kind: 'batch', act: 'replan' };
  return batch === undefined ? undefined : (doneIn(bare, context, batch) ?? withoutIn(bare, context));
}

function doneIn(bare: string, { team = [], inHand }: Context, { left }: { left: number }): Request | undefined {
  const names = team.filter((name) => bare.startsWith(`${name} `));
  const [who] = names.sort((a, b) => b.length - a.length);
  const own =
    who === undefined
      ? bare
      : bare.slice(who.length + 1).replace(/^(?:has |did )/, (verb) => (verb === 'did ' ? 'done ' : ''));
  const match = DONE.exec(own);
  if (match === null) return undefined;
  const count = Number(match[1] ?? match[2]);
  // With a piece on the machine a larger number is a row.
  if (inHand !== undefined && count > left) return undefined;
  const stage = match[3] === undefined ? undefined : match[3] === 'seamed' ? ('finish' as const) : ('knit' as const);
  return { kind: 'batch_done', count, ...(who && { who }), ...(stage && { stage }) };
}

function withoutIn(bare: string, { team = [] }: Context): Request | undefined {
  const match = /^without (.+?)(?: (today|tomorrow|this week|next week|from now on))?$/.exec(bare);
  const who = match?.[1];
  if (who === undefined || !['me', ...team].includes(who)) return undefined;
  return { kind: 'batch_without', who, when: AWAY[match?.[2] ?? 'from now on'] ?? 'always' };
}
