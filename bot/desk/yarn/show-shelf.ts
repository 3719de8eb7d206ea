import { say } from '../../../core/index.js';
import type { Lot } from '../../store/ports.js';
import type { Desk } from '../desk.js';

/** What is on the maker's shelf, or on that of the team. */
export const showShelfDesk: Desk<'show_shelf'> = async ({ team = false }, at) => {
  const held = (await at.store.shelf.of(at.maker.id)).filter(({ left }) => left > 0);
  const isShown = ({ owner }: Lot): boolean => (owner === '') === team;
  const lots = held.filter(isShown);
  const others = held.length - lots.length;
  if (lots.length > 0)
    return { reply: { kind: 'shelf', whose: team ? 'team' : 'own', lots, others, offers: [] }, talk: at.talk };
  const elsewhere =
    others === 0
      ? []
      : [team ? say`Your own shelf is not: say "my shelf".` : say`That of the team is not: say "team shelf".`];
  return {
    reply: {
      kind: 'answer',
      lead: team ? say`The team's shelf is empty` : say`Your shelf is empty`,
      lines: [say`Tell me what you have, and I set aside what a piece takes when you start it.`, ...elsewhere],
      examples: team
        ? ['3 balls of grey wool, lot 12, for the team']
        : ['I have 3 balls of grey wool, lot 12', '24 rings'],
      offers: [],
    },
    talk: at.talk,
  };
};
