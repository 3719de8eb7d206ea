import { say } from '../../../core/index.js';
import { withStored } from '../../conversation.js';
import type { Effect } from '../../effect.js';
import type { Desk } from '../desk.js';
import { putBack } from '../effects.js';
import { UNDO } from '../offers.js';

const MOST_OFFERED = 4;

/** The currency that prices without one are in. */
export const setCurrencyDesk: Desk<'set_currency'> = async ({ currencies, said }, at) => {
  const [code = '', ...others] = currencies;
  if (others.length > 0)
    return {
      reply: {
        kind: 'question',
        asks: say`Which ${said}?`,
        because: say`It could be ${currencies.join(', ')}. Nothing is changed yet.`,
        examples: [`prices in ${code}`, 'never mind'],
        offers: currencies.slice(0, MOST_OFFERED).map((one) => ({
          button: one,
          say: `prices in ${one}`,
          request: { kind: 'set_currency', currencies: [one], said: one },
        })),
      },
      talk: at.talk,
    };
  const effect: Effect = { did: 'set_currency', makerId: at.maker.id, before: at.maker.currency ?? null, after: code };
  await putBack([effect], at.store, at.now);
  return {
    reply: {
      kind: 'answer',
      lead: say`From now on I read prices in ${code}`,
      lines: [say`A price with another currency beside it is kept in that one.`],
      examples: [],
      offers: [UNDO],
    },
    talk: withStored(at.talk, `prices in ${code}`, [effect]),
  };
};
