import type { BlockAction, ViewOutput, ViewSubmitAction } from '@slack/bolt';
import { OPENS } from '../cards/blocks.js';
import { CALLBACK, faultsByField, REDRAWS } from '../cards/forms/index.js';
import { addressOf, type Kept, keptIn, opened, redrawn } from '../form.js';
import { withoutMarks } from '../mention.js';
import { FormId, type FormSent, type FormValues } from '../request.js';
import type { AnswerTo } from '../store/ports.js';
import type { Turn } from '../turn.js';
import { pressTurn } from './actions.js';
import type { Door, SlackApp } from './door.js';

/** Where a form is asked for; its answer goes to `address`. */
type Opening = Pick<Turn, 'slackTeamId' | 'place' | 'user'> & { address: AnswerTo };

/** A form by its id, the one that the talk calls for, or the one behind a button. */
type FormAsked = { form?: FormId | undefined } | { pick: { turn: string; index: number } };

/**
 * Opens a form on a trigger, which lives three seconds. False where it did not open, for the door to answer as if no
 * trigger had come.
 */
export async function openForm(door: Door, triggerId: string, opening: Opening, of: FormAsked): Promise<boolean> {
  try {
    const view = await opened({ ...opening, at: door.now(), of }, door);
    if (view === undefined) return false;
    await door.views.open({ trigger_id: triggerId, view: view as never });
    return true;
  } catch (error) {
    door.log.warn({ place: opening.place.split(':')[0], error: String(error) }, 'form not opened');
    return false;
  }
}

const BUTTON = new RegExp(`^${OPENS.replaceAll('.', '\\.')}`);
const FORM = new RegExp(`^${CALLBACK.replaceAll('.', '\\.')}`);

/** The bot itself among people chosen, by the word that talk has for it. */
const THE_BOT = 'you';

const APOLOGY =
  'That went wrong on my side; nothing was stored. What you typed is still here: send it again in a minute.';

/** Forms: the buttons that open them, the choices that draw them anew, and what is sent. */
export function hearForms(app: SlackApp, door: Door): void {
  app.action<BlockAction>({ type: 'block_actions', action_id: BUTTON }, async ({ body, context, ack }) => {
    const turn = pressTurn(body, context.teamId, door.now());
    const { address } = turn ?? {};
    if (turn !== undefined && address !== undefined && 'pick' in turn.input) {
      const isOpen = await openForm(door, body.trigger_id, { ...turn, address }, turn.input);
      if (!isOpen) await door.taken(turn);
    }
    await ack();
    door.wake();
  });

  app.action<BlockAction>({ type: 'block_actions', action_id: REDRAWS }, async ({ body, context, ack }) => {
    const { view } = body;
    const sent = view && sentIn(view);
    if (view !== undefined && sent !== undefined)
      await redraw(door, view, sent, turnBy(body, context.teamId, door.now()));
    await ack();
  });

  app.view<ViewSubmitAction>({ type: 'view_submission', callback_id: FORM }, async ({ body, view, context, ack }) => {
    const sent = sentIn(view, context.botUserId);
    if (sent === undefined) return ack();
    const by = turnBy(body, context.teamId, door.now());
    const first = view.blocks.find(({ type }) => type === 'input')?.block_id ?? '';
    const errors = await faultsOf(door, view.id, sent, by, first);
    await (errors === undefined ? ack() : ack({ response_action: 'errors', errors }));
    door.wake();
  });
}

type By = Pick<Turn, 'slackTeamId' | 'user' | 'at'>;
type Sent = { form: FormSent; kept: Kept };

const turnBy = ({ user }: { user: { id: string; name?: string } }, slackTeamId: string, at: number): By => ({
  slackTeamId,
  user: { slackUserId: user.id, name: user.name ?? '' },
  at,
});

/** The faults of a form by field, or undefined once its answer is on its way. A form that is sent twice acts once. */
async function faultsOf(door: Door, viewId: string, { form, kept }: Sent, by: By, first: string) {
  const address = addressOf(kept, by.user.slackUserId, by.at);
  try {
    const turn: Turn = { key: `view:${viewId}`, ...by, place: kept.place, address, input: { form } };
    const answered = await door.taken(turn);
    if (answered?.status === 'apologised') return { [first]: APOLOGY };
    return answered?.status === 'refused' ? faultsByField(answered.faults, first) : undefined;
  } catch (error) {
    door.log.error({ key: `view:${viewId}`, error: String(error) }, 'form not stored');
    return { [first]: APOLOGY };
  }
}

/** A choice that fails to draw the form anew leaves it as it is: it can still be sent. */
async function redraw(door: Door, { id, hash }: ViewOutput, { form, kept }: Sent, by: By): Promise<void> {
  try {
    const view = await redrawn(form, kept, by, door);
    await door.views.update({ view_id: id, hash, view: view as never });
  } catch (error) {
    door.log.warn({ form: form.id, error: String(error) }, 'form not drawn anew');
  }
}

/** What the fields of a view hold, over the values that it carries unseen; undefined for one that is not ours. */
function sentIn({ callback_id, private_metadata, state }: ViewOutput, botUserId?: string): Sent | undefined {
  const id = FormId.safeParse(callback_id.slice(CALLBACK.length));
  const kept = keptIn(private_metadata);
  if (!id.success || kept === undefined) return undefined;
  const typed: FormValues = {};
  for (const [block, elements] of Object.entries(state.values))
    for (const { value, selected_option, selected_users } of Object.values(elements)) {
      const people = selected_users?.map((id) => (id === botUserId ? THE_BOT : id)).join(',');
      typed[block] = withoutMarks(selected_option?.value ?? people ?? value ?? '');
    }
  return { form: { id: id.data, values: { ...kept.hidden, ...typed } }, kept };
}
