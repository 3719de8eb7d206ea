import { z } from 'zod';
import { forms, formView, lackOf, type View } from './cards/forms/index.js';
import { formKnown, formMeant, saidFor } from './desk/form-known.js';
import { type FormId, type FormSent, FormValues, type Request } from './request.js';
import type { AnswerTo } from './store/ports.js';
import type { Surroundings } from './surroundings.js';
import type { Turn } from './turn.js';
import { whole } from './whole.js';

const Kept = z.object({
  place: z.string(),
  address: z.union([
    z.object({ to: z.literal('post'), channel: z.string(), threadTs: z.string().optional() }),
    z.object({
      to: z.literal('ephemeral'),
      channel: z.string(),
      user: z.string(),
      threadTs: z.string().optional(),
    }),
    z.object({ to: z.literal('response'), url: z.string() }),
  ]),
  /** When it was opened, in ms. */
  at: z.number(),
  hidden: FormValues.default({}),
});

/** What a form carries along: where its answer goes, and values that have no field. */
export type Kept = z.infer<typeof Kept>;

/** What a form carried along; undefined for one that is not ours. */
export function keptIn(metadata: string): Kept | undefined {
  try {
    return Kept.parse(JSON.parse(metadata));
  } catch {
    return undefined;
  }
}

/** A response url lives 30 minutes from the press that opened the form. */
const RESPONSE_MS = 25 * 60_000;

/** Where the answer goes: where the form was opened, or once that no longer takes one, to the maker directly. */
export const addressOf = ({ address, at }: Kept, user: string, now: number): AnswerTo =>
  address.to === 'response' && now - at > RESPONSE_MS ? { to: 'post', channel: user } : address;

type Opening = Pick<Turn, 'slackTeamId' | 'place' | 'user' | 'at'> & {
  address: AnswerTo;
  of: { form?: FormId | undefined } | { pick: { turn: string; index: number } };
};

/** The form asked for by name or by the button of a card, filled in with what was said; undefined where there is none. */
export const opened = (opening: Opening, { store }: Pick<Surroundings, 'store'>): Promise<View | undefined> =>
  store.within(opening.slackTeamId, async (bound) => {
    const { place, user, at, address, of } = opening;
    const maker = await bound.makers.held(user.slackUserId, user.name, at);
    const talk = await bound.conversations.of(place, maker.id, at);
    const request: Request =
      'pick' in of ? whole({ kind: 'pick', ...of.pick }, talk, maker.units) : { kind: 'form', ...of };
    if (request.kind !== 'form') return undefined;
    const known = await formKnown(bound, maker, talk);
    const id = request.form ?? formMeant(talk, known.works.length > 0);
    if (lackOf(id, known) !== undefined) return undefined;
    const values = forms[id].filled(saidFor(id, talk), known);
    const kept = { place, address, at } satisfies Omit<Kept, 'hidden'>;
    return formView(id, forms[id], values, known, kept);
  });

/** The same form drawn anew by what was chosen in it. */
export const redrawn = (
  { id, values }: FormSent,
  { hidden: _, ...kept }: Kept,
  by: Pick<Turn, 'slackTeamId' | 'user' | 'at'>,
  { store }: Pick<Surroundings, 'store'>,
): Promise<View> =>
  store.within(by.slackTeamId, async (bound) => {
    const maker = await bound.makers.held(by.user.slackUserId, by.user.name, by.at);
    const talk = await bound.conversations.of(kept.place, maker.id, by.at);
    return formView(id, forms[id], values, await formKnown(bound, maker, talk), kept);
  });
