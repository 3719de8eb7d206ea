import type { Meaning, Request } from '../request.js';
import type { Context, Trace } from './context.js';
import { batchRequest } from './readers/batch-requests.js';
import { shortRequest } from './readers/short.js';
import { sharingIn } from './sharing.js';

type Reading = { meanings: Meaning[]; trace: Trace };

/** Meant by a whole message alone: beside another request each is read apart. */
const APART: readonly Request['kind'][] = [
  'undo',
  'looser',
  'set_units',
  'why',
  'what_helps',
  'share',
  'withdraw_share',
  'size_share',
  'leave_share',
  'send_change',
  'send_result',
  'show_results',
  'show_shares',
  'why_apart',
  'remind',
  'show_gauge',
  'show_pieces',
  'show_shelf',
  'where',
  'explain_chance',
  'show_log',
  'give_up',
];
/** Longer messages hold no such request. */
const MOST_CHARACTERS = 300;
const MOST_JOINTS = 6;
const JOINT = /[,.;?!]\s+(?:(?:and|then|but)\s+)?(?:then\s+)?|\s+(?:and|then|&|plus)\s+(?:then\s+)?/giu;

/**
 * Two requests joined, one of which is else a message of its own: `undo that and start`, `share it with Owen and what
 * does it cost`; `never mind, pouch 12 in wide` is the second alone. Undefined unless both are read whole.
 */
export function together(text: string, context: Context, one: (text: string) => Reading): Reading | undefined {
  if (text.length > MOST_CHARACTERS || isOneOfSharing(text, context)) return undefined;
  for (const { index, 0: joint } of [...text.matchAll(JOINT)].slice(0, MOST_JOINTS)) {
    const [before, behind] = [text.slice(0, index), text.slice(index + joint.length)];
    const isDropped = shortRequest(before)?.kind === 'drop';
    if (GIVEN_UP.test(behind) || (isDropped && shortRequest(behind)?.kind === 'thanks')) return DROPPED;
    const kinds = [before, behind].map((part) => apartIn(part, context));
    if (!isDropped && kinds.every((kind) => kind === undefined)) continue;
    // A lone word behind a name may be a name too: `share it with Owen and Cap`.
    const isName = kinds[0] === 'share' && !/\s/.test(behind) && shortRequest(behind) === undefined;
    const read = (isDropped ? [behind] : [before, behind]).map(one);
    if (!isName && read.every(isWhole)) return read.reduce(joined);
  }
  return undefined;
}

/** Said last, `panel. actually never mind`, it is of all that was said before it. */
const GIVEN_UP = /^(?:(?:oh|no|sorry|actually|ok|okay)\W+)*(?:never\s?mind|nvm|forget (?:it|that)|cancel that)\W*$/i;
const DROPPED: Reading = { meanings: [{ kind: 'drop' }], trace: { tokens: [], mended: [], leftover: [] } };

const apartIn = (text: string, context: Context): Request['kind'] | undefined => {
  const kind = (shortRequest(text) ?? batchRequest(text, context) ?? sharingIn(text, context.pieces))?.kind;
  return kind !== undefined && APART.includes(kind) ? kind : undefined;
};

/** `send the size and rows`; the names behind a share go on to the end of whatever is said, and so tell nothing. */
function isOneOfSharing(text: string, { pieces }: Context): boolean {
  const kind = sharingIn(text, pieces)?.kind;
  return kind !== undefined && kind !== 'share' && kind !== 'withdraw_share';
}

const isWhole = ({ meanings, trace }: Reading): boolean =>
  trace.leftover.length === 0 && meanings.every(({ kind }) => kind !== 'unread');

const joined = (a: Reading, b: Reading): Reading => ({
  meanings: [...a.meanings, ...b.meanings],
  trace: {
    tokens: [...a.trace.tokens, ...b.trace.tokens],
    mended: [...a.trace.mended, ...b.trace.mended],
    leftover: [],
  },
});
