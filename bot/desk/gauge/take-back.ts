import { count, say } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import { type Desk, refusal } from '../desk.js';
import { boughtLine } from './bought.js';

const MOST_NAMED = 5;

/** A measurement named by the figures in it, "drop the 6": taken back when only one holds them all. */
export const takeBackDesk: Desk<'take_back'> = async ({ said, id }, at) => {
  const profiles = await at.store.profiles.of(at.maker.id);
  const all = (await Promise.all(profiles.map(({ id }) => at.store.measurements.of(id)))).flat();
  const wanted = figures(said);
  const found = all.filter((one) => (id === undefined ? isIn(wanted, figures(one.said)) : one.id === id));
  const [only, ...others] = found;
  if (only === undefined) {
    const pieces = all.slice(-MOST_NAMED).map((one) => one.said);
    return refusal(at, { code: 'no_such_piece', said, pieces });
  }
  if (others.length > 0) {
    const choices = found.slice(-MOST_NAMED).reverse();
    return {
      reply: {
        kind: 'question',
        asks: say`Which of these ${found.length}?`,
        because: say`Each of them holds ${wanted.join(' and ')}: ${choices.map((one) => one.said).join('; ')}.`,
        examples: ['the first', 'never mind'],
        offers: choices.map((one) => ({
          button: one.said,
          request: { kind: 'take_back', said: one.said, id: one.id },
        })),
      },
      talk: at.talk,
    };
  }
  const profile = profiles.find(({ id }) => id === only.profileId);
  if (profile === undefined) throw new Error('a measurement without its profile');
  const before = await at.store.measurements.of(profile.id);
  await at.store.measurements.withdraw(only.id, at.now);
  const left = before.length - 1;
  const offers = [{ button: 'Put It Back', say: 'undo', request: { kind: 'undo' as const, redo: false } }];
  return {
    reply: {
      kind: 'answer',
      lead: say`Taken back: ${only.said}`,
      lines: [
        say`That leaves ${left === 0 ? 'nothing' : count(left, 'measurement')} there.`,
        ...(await boughtLine(at, profile, before)),
      ],
      examples: [],
      offers,
    },
    talk: withStored(at.talk, `taking back ${only.said}`, [{ did: 'withdrew', id: only.id }]),
  };
};

const figures = (text: string): string[] => text.match(/\d+(?:[.,/ -]\d+)*|[½¼¾⅛⅜⅝⅞]/g) ?? [];

const isIn = (wanted: readonly string[], held: readonly string[]): boolean =>
  wanted.length > 0 && wanted.every((one) => held.includes(one));
