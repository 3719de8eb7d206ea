import type { Surroundings } from '../../bot/surroundings.js';
import type { Turn } from '../../bot/turn.js';

/** Takes a turn as the bot does, but answers with what it heard: journeys about the door need no more. */
export const echoed = ({ key, slackTeamId, at, input, address }: Turn, { store, newId }: Surroundings) =>
  store.within(slackTeamId, async (bound) => {
    if (!(await bound.deliveries.claim(key, at)) || address === undefined) return undefined;
    const text = heard(input);
    await bound.outbox.add(newId(), address, { text, blocks: [] }, at, at + 1_800_000);
    return undefined;
  });

function heard(input: Turn['input']): string {
  if ('form' in input) return `sent: ${input.form.id}`;
  if ('text' in input) return `heard: ${input.text}`;
  return 'pick' in input ? `pressed: ${input.pick.turn} ${input.pick.index}` : `asked: ${input.request.kind}`;
}
