import type { Piece } from '../../core/index.js';
import type { Request } from '../request.js';
import { shareQuestion } from './readers/share-questions.js';

const IT = '(?:it|this|that|mine|(?:this|that|the|my) (?<what>\\p{L}[\\p{L} -]{0,30}?))';
const ROWS = '(?:my )?(?:own )?(?:rows(?: and needles)?|needles(?: and rows)?|counts|gauge)';

/** Before what is asked for. */
const POLITE =
  "(?:please|ok|okay|now),? |(?:(?:can|could|will|would) you|(?:can|may|could) i|(?:i|we)(?:['’]d| would)? (?:want|like) to|let['’]?s|let me|i['’]ll) (?=share|show|send|post|give|pass|please|size|see|withdraw|unshare|stop)";

const BEFORE = new RegExp(`^(?:${POLITE})+`, 'iu');

const PLAN_WORDS = ['plan', 'piece', 'size', 'one', 'share'];

const HERE = /^(?:here|in here|(?:in |to |with )?(?:the|this) (?:channel|thread)|in (?:the|this) (?:channel|thread))$/;

const SHARE = new RegExp(
  `^(?:share|show|send|post|put|give|pass)(?: ${IT})?(?: on)?(?:,? with ${ROWS},?)? (?:with|to|in(?= <?#)) (?<who>.+)$`,
  'iu',
);
/** `send Owen the cowl`. */
const SEND_WHO = new RegExp(
  `^(?:send|show|give) (?!(?:me|us|them|it|this|that|the|my)\\b)(?<who>@?[\\p{L}\\d'-]+) ${IT}$`,
  'iu',
);
const SHARE_ROWS = new RegExp(`^(?:share|show|send) ${ROWS} (?:with|to) (?<who>.+)$`, 'iu');
const POST = new RegExp(`^(?:share|show|send|post|put)(?: ${IT})? (?<where>(?:in |to |with )?\\S.*)$`, 'iu');
const WITH_ROWS = new RegExp(`,? (?:and |along )?with ${ROWS}$`, 'iu');
const SIZE_ONLY = /,? (?:the )?(?:size only|only the size|without (?:my )?(?:rows|needles|gauge)|no rows)$/iu;

const WITHDRAW = new RegExp(
  `^(?:take back|withdraw|unshare|stop sharing)(?: ${IT})?(?: (?:with|from) (?<who>.+))?$`,
  'iu',
);

/** Without a name, or with that of the bot itself, which is taken out of what it hears. */
const WITH_NOBODY: Request = { kind: 'share', with: ['you'], rows: false, sure: false };

const FORMS: [RegExp, Request][] = [
  [/^share(?: (?:it|this|that|the plan))?(?: with)?$/i, WITH_NOBODY],
  [
    /^(?:send|share|pass on) (?:the |my |this )?(?:changes?|update)(?: to (?:them|everyone|all))?$/i,
    { kind: 'send_change' },
  ],
  [/^(?:size|work|fit) (?:it|this|that|the plan) (?:to|for|in|out in) my (?:own )?gauge$/i, { kind: 'size_share' }],
  [
    /^(?:do not|don['’]?t) (?:share|show|send|post) (?:it|this|that|the plan)(?: (?:with|to) .+| here)?$/i,
    { kind: 'drop' },
  ],
  [
    /^(?:did i share (?:it|this|that|the plan)|is (?:it|this|that|the plan) shared)(?: with .+)?$|^(?:who(?:m)? (?:did|have) i shared? (?:it|this|that|the plan) with|with whom (?:did|have) i shared? (?:it|this|that|the plan)|whom? is (?:it|this|that|the plan) shared with)$/i,
    { kind: 'show_results' },
  ],
  [/^not now$/i, { kind: 'leave_share' }],
  [/^take (?:the|this|that) change$/i, { kind: 'size_share', change: true }],
  [/^keep (?:mine|my own|my (?:rows|size|plan))$/i, { kind: 'leave_share', keep: true }],
  [
    /^(?:(?:show |give )?(?:me )?(?:the |our )?results|how did (?:it|they|that|everyone|we) (?:land|come out|turn out)|who (?:else )?has it)$/i,
    { kind: 'show_results' },
  ],
  [/^(?:send|share|tell) (?:them )?(?:the|my) size$/i, { kind: 'send_result', rows: false }],
  [
    /^(?:(?:send|share|tell) (?:them )?(?:the |my )?size and|(?:send|tell) them) (?:the |my )?(?:rows|rows and needles)$/i,
    { kind: 'send_result', rows: true },
  ],
];

/** To whoever shared it: `share it back to her, with my rows`. */
const BACK = new RegExp(`^(?:share|send|show)(?: ${IT}| my size)? back(?: (?:to|with) (?:her|him|them))?$`, 'iu');

/** Words that go along: `share this with Owen: for Saturday`, `... and say we need two`. */
const NOTED = [
  /^(?<head>.+?)[,;]?\s+(?:(?:and|with)\s+)?(?:(?:add|write)\s+)?(?:an?\s+|the\s+)?(?:note|message)\s*[:,]\s*(?<note>\S.*)$/isu,
  /^(?<head>[^:]+?)\s*:\s+(?<note>\S.*)$/su,
  /^(?<head>.+?)[,;]?\s+[-–—]+\s+(?<note>\S.*)$/su,
  /^(?<head>.+?)[,;]?\s+(?<note>["“].+["”]|\(.+\))$/su,
  /^(?<head>.+?),?\s+(?:and\s+(?:say|tell\s+(?:them|him|her)|write)|saying)(?:\s+that)?[:,]?\s+(?<note>\S.*)$/isu,
];

/** A text and the note at its end, out of its quotes. */
function noted(text: string): { head: string; note: string } | undefined {
  const groups = NOTED.map((form) => form.exec(text)?.groups).find((found) => found !== undefined);
  if (groups?.head === undefined || groups.note === undefined) return undefined;
  return { head: groups.head, note: groups.note.replace(/^["“'(](.*)["”')]$/su, '$1').trim() };
}

/** What came out, told to one by name: `tell Nadia my rows`. */
const TELL =
  /^(?<how>send|tell|show) (?!me\b|us\b|them\b|it\b|the\b|my\b)(?<who>@?[\p{L}\d'-]+) (?:(?:the|my) )?(?<what>size|(?:size and (?:(?:the|my) )?)?rows(?: and needles)?)$/iu;

/** Longer texts are of more than sharing. */
const MOST_CHARACTERS = 300;
/** With the words that go along. */
const MOST_NOTED = 1500;

/** Names joined: `Owen and Lotte`. */
const names = (who: string): string[] =>
  who
    .split(/,|&|\band\b/iu)
    .map((name) => name.trim().slice(0, 80))
    .filter((name) => name !== '')
    .slice(0, 10);

const share = (who: string, rows: boolean, piece?: string): Request | undefined => {
  const all = names(who);
  return all.length === 0 ? undefined : { kind: 'share', with: all, rows, sure: false, ...(piece && { piece }) };
};

const IS_SHARE = new RegExp(`^(?:${POLITE})*(?:share|show|send|post|put|give|pass)\\b`, 'iu');

/** A share with words that go along to the end of the message. */
export function sharingNoted(text: string, pieces: readonly Piece[]): Request | undefined {
  const { head, note } = (IS_SHARE.test(text) && text.length <= MOST_NOTED && noted(text)) || {};
  const found = head === undefined ? undefined : sharingIn(head, pieces);
  return found?.kind === 'share' ? { ...found, note } : undefined;
}

/** A message that is all about sharing a plan: `share this with Owen`, `take the change`, `how did it land`. */
export function sharingIn(text: string, pieces: readonly Piece[]): Request | undefined {
  const pieceOf = (what: string): string | undefined =>
    pieces.find(({ label, words }) => [label.toLowerCase(), ...words].includes(what.toLowerCase()))?.id;
  const isPlan = (what = 'plan'): boolean => PLAN_WORDS.includes(what.toLowerCase()) || pieceOf(what) !== undefined;
  if (text.length > MOST_CHARACTERS) return undefined;
  const plain = text.replace(BEFORE, '').replace(/(?:,? please)?[\s.!?:]*$/i, '');
  const form = FORMS.find(([words]) => words.test(plain))?.[1] ?? shareQuestion(plain, pieceOf);
  if (form !== undefined) return form;
  const { how, who: to, what = '' } = TELL.exec(plain)?.groups ?? {};
  const isRows = /rows/i.test(what);
  if (to !== undefined && !isPlan(to))
    return how?.toLowerCase() === 'show' ? share(to, isRows) : { kind: 'send_result', rows: isRows, to };
  const taken = WITHDRAW.exec(plain);
  if (taken !== null && isPlan(taken.groups?.what) && !/^take back(?: (?:it|that|this))?$/i.test(plain))
    return {
      kind: 'withdraw_share',
      ...(taken.groups?.who && { with: taken.groups.who }),
      ...(taken.groups?.what && pieceOf(taken.groups.what) && { piece: pieceOf(taken.groups.what) }),
    };
  const ofRows = SHARE_ROWS.exec(plain);
  if (ofRows?.groups?.who) return share(ofRows.groups.who, true);
  const bare = plain.replace(WITH_ROWS, '').replace(SIZE_ONLY, '');
  const rows = WITH_ROWS.test(plain) || new RegExp(`with ${ROWS},? (?:with|to) `, 'iu').test(plain);
  const back = BACK.exec(bare);
  if (back !== null && isPlan(back.groups?.what)) return { kind: 'share', with: 'back', rows, sure: false };
  const post = POST.exec(bare)?.groups;
  const named = post?.what && pieceOf(post.what);
  if (isPlan(post?.what) && HERE.test(post?.where ?? ''))
    return { kind: 'share', with: 'here', rows, sure: false, ...(named && { piece: named }) };
  const shared = (SHARE.exec(bare) ?? SEND_WHO.exec(bare))?.groups;
  return shared?.who !== undefined && isPlan(shared.what)
    ? share(shared.who, rows, shared.what && pieceOf(shared.what))
    : undefined;
}

const BEHIND =
  /^(?<plan>.+?)(?:[,;.]|\s)\s*(?:(?:and|then|and then|please)\s+)?(?<tail>(?:share|show|send|post)\b.+)$/isu;

/** The plan in the middle: `share a pouch 11 in wide with Owen`, `share with Owen: a pouch 11 in wide`. */
const AROUND = [
  /^(?:share|send) (?<plan>an? .*\d.*?) (?:with|to) (?<who>\D+)$/isu,
  /^(?:share|send) (?:with|to) (?<who>@?[\p{L}\d'-]+)[:,]? (?<plan>an? .*\d.*)$/isu,
  /^(?:share|send) (?:with|to) (?<who>@?[\p{L}\d'-]+): (?<piece>[\p{L} -]+?) (?<size>\d.*)$/isu,
];

/** A share and the plan in one message: `pouch 11 in wide, share it with Owen`; the plan is read by itself. */
export function sharingBehind(text: string, pieces: readonly Piece[]): { plan: string; share: Request } | undefined {
  if (text.length > MOST_CHARACTERS) return undefined;
  const around = AROUND.map((form) => form.exec(text)?.groups).find((groups) => groups !== undefined);
  const isKnown = around?.piece === undefined || pieces.some(({ words }) => words.includes(around.piece ?? ''));
  const { plan, tail, who, piece, size } = (isKnown ? around : undefined) ?? BEHIND.exec(text)?.groups ?? {};
  return withPlan(plan ?? (piece && `${piece} ${size}`), tail ?? `share this with ${who}`, pieces);
}

function withPlan(plan: string | undefined, tail: string, pieces: readonly Piece[]) {
  const share = plan === undefined ? undefined : (sharingNoted(tail, pieces) ?? sharingIn(tail, pieces));
  return plan !== undefined && share?.kind === 'share' ? { plan, share } : undefined;
}
