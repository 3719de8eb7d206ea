import { isSlackUserId, mentionOf } from '../../mention.js';
import type { ShareProblem } from '../../share-problem.js';
import type { Maker } from '../../store/ports.js';
import type { At } from '../desk.js';

const ONESELF = ['me', 'myself', 'self'];
const THE_BOT = ['you', 'yourself', 'bot', 'the bot', 'walewright'];

/** A person mentioned in Slack is one of the workspace, whether or not they ever spoke to the bot. */
const MENTIONED = /^@([UW][A-Z0-9]{8,})$/;

/** Names are shown this far. */
const MOST_SHOWN = 20;

/** A maker's name for others to read, or a mention: Slack tells no name with what is typed in talk, and an id is none. */
export const shownName = ({ name, slackUserId }: Maker): string =>
  name === '' || isSlackUserId(name) ? mentionOf(slackUserId) : name.replace(/\s+/g, ' ').slice(0, MOST_SHOWN);

/** The maker of this workspace whom words name, other than the one who speaks. */
export async function makerMeant(said: string, at: At): Promise<Maker | ShareProblem> {
  const name = said.replace(/^@/, '').trim();
  const key = name.toLowerCase();
  if (ONESELF.includes(key)) return { code: 'with_oneself' };
  const [first, ...others] = await at.store.makers.named(name);
  if (others.length > 0) return { code: 'several_makers', said };
  if (first?.id === at.maker.id) return { code: 'with_oneself' };
  if (first !== undefined) return first;
  if (THE_BOT.includes(key)) return { code: 'with_the_bot' };
  const [, slackUserId] = MENTIONED.exec(said) ?? [];
  return slackUserId === undefined ? { code: 'no_such_maker', said } : at.store.makers.held(slackUserId, '', at.now);
}
