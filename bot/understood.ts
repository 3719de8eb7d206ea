import { pieces } from '../core/index.js';
import type { Known } from './cards/forms/index.js';
import type { Conversation } from './conversation.js';
import { leftOf } from './desk/batch/batch-parts.js';
import { formKnown } from './desk/form-known.js';
import { formRequest } from './form-sent.js';
import type { Context } from './language/context.js';
import { type Reading, read } from './language/read.js';
import { type FormSent, isOfPiece, type Meaning, type Request } from './request.js';
import type { Bound, Maker, Profile } from './store/ports.js';

/** What a maker typed, pressed or sent. */
export type Input = {
  /** The words typed, mentions of the bot taken out; the button pressed; a request made whole by a page; or the form sent. */
  input: { text: string } | { pick: { turn: string; index: number } } | { request: Request } | { form: FormSent };
  /** A slash command narrows how bare words are read; undefined in talk. */
  command?: '/rows' | '/gauge' | '/walewright' | undefined;
};

/** What words are read by: the days in them, and the maker's profiles. */
type By = { due: Context['due']; profiles: readonly Profile[] };

/** What the input of a turn means; for a form with what it was read against. */
export async function understood(
  bound: Bound,
  maker: Maker,
  talk: Conversation,
  { input, command }: Input,
  by: By,
): Promise<Reading & { known?: Known }> {
  if ('text' in input) return read(input.text, await contextOf(bound, maker, talk, { input, command }, by));
  const untraced = (meaning: Meaning): Reading => ({
    meanings: [meaning],
    trace: { tokens: [], mended: [], leftover: [] },
  });
  if ('pick' in input) return untraced({ kind: 'pick', ...input.pick });
  if ('request' in input) return untraced(input.request);
  const known = await formKnown(bound, maker, talk);
  return { ...untraced(formRequest(input.form, known)), known };
}

async function contextOf(
  bound: Bound,
  maker: Maker,
  talk: Conversation,
  { input, command }: Input,
  { due, profiles }: By,
): Promise<Context> {
  const names = (of: (profile: (typeof profiles)[number]) => string) =>
    [...new Set(profiles.map(of).filter((name) => name !== ''))].sort((a, b) => b.length - a.length).slice(0, 50);
  const waiting = isOfPiece(talk.pending?.request) ? talk.pending.request.ask : undefined;
  return {
    pieces,
    units: maker.units,
    machines: names((p) => p.machine.name.toLowerCase()),
    yarns: names((p) => p.yarn.name.toLowerCase()),
    onShelf: (await bound.shelf.of(maker.id)).map(({ name }) => name.toLowerCase()),
    inHand: await workInHand(bound, maker, talk),
    ...(await teamOf(bound, maker, textOf(input))),
    swatchRows: /\bsame\b/i.test(textOf(input)) ? await rowsRecordedLast(bound, profiles[0]?.id) : undefined,
    bench: (waiting ?? talk.subject)?.on,
    subjectPiece: waiting?.piece ?? talk.subject?.piece,
    copies: (waiting ?? talk.subject)?.copies,
    rowsMake: waiting === undefined ? talk.rowsMake : undefined,
    sizes: talk.subject?.sizes,
    // A size is chosen from those in hand, as it is where nothing waits.
    holes: talk.pending?.holes.filter((hole) => hole !== 'which_size') ?? [],
    offered: talk.offered.at(-1)?.named ? talk.offered.at(-1)?.says : [],
    held: waiting?.words,
    command,
    onCost: talk.onCost,
    onHelp: talk.onHelp,
    due,
  };
}

/** Words that may lead to a maker or to the batch in hand. */
const OF_TEAM =
  /@|\b(?:with|without|between|among|amongst|knits?|finish(?:es|ed)?|batch|half|done|did|made|ready|where|how|plan|re-?plan|split|deal)\b/i;

/** The makers of the workspace and the batch in hand, for words that may speak of them. */
async function teamOf(bound: Bound, maker: Maker, text: string): Promise<Pick<Context, 'team' | 'batch'>> {
  if (!OF_TEAM.test(text)) return {};
  const makers = await bound.makers.all();
  const open = await bound.batches.openOf(maker.id);
  return {
    team: makers.flatMap(({ name, slackUserId }) =>
      [name, slackUserId].filter((one) => one !== '').map((one) => one.toLowerCase()),
    ),
    batch: open && { left: leftOf(open) },
  };
}

/** Rows of the swatch recorded last: the same one is told by its length alone. */
async function rowsRecordedLast(bound: Bound, profileId: string | undefined): Promise<number | undefined> {
  const measured = profileId === undefined ? [] : await bound.measurements.of(profileId);
  return measured.findLast(({ rows, workId }) => rows !== undefined && workId === '')?.rows?.count;
}

/** The work that bare counts and lengths of this talk are about. */
async function workInHand(bound: Bound, maker: Maker, talk: Conversation): Promise<Context['inHand']> {
  const open = await bound.works.open(maker.id);
  const work = open.find(({ id }) => id === talk.workId) ?? open[0];
  const plan = work && (await bound.plans.get(work.planId, maker.id));
  if (work === undefined || plan === undefined) return undefined;
  const { request } = talk.pending ?? {};
  const counts = request?.kind === 'lost_count' ? request.counts.map(({ rows }) => rows) : undefined;
  return { piece: plan.piece, rows: work.rows, stopAt: work.stopAt, counts };
}

/** What was typed, in a message or in the fields of a form. */
export const textOf = (input: Input['input']): string =>
  'text' in input ? input.text : 'form' in input ? Object.values(input.form.values).join('; ') : '';
