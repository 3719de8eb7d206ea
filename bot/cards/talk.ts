import { type Printing, printed } from '../../core/index.js';
import { machineName } from '../desk/names.js';
import { pieceExample } from '../examples.js';
import { isSlackUserId } from '../mention.js';
import type { ReplyOf } from '../reply.js';
import { assumedFact } from './assumed.js';
import { type Card, plainCard } from './card.js';
import { capital, changedLine } from './names.js';
import { sentenceFor, wayLine } from './sentences.js';

/** Phrases to be listed, each in quotes when one of them holds a comma of its own. */
const sayable = (phrases: readonly string[]): string[] =>
  phrases.map((phrase) => (phrases.some((one) => one.includes(',')) ? `"${phrase}"` : phrase));

/** One question, why it is asked, and the answers that can be typed. */
export const questionCard = (reply: ReplyOf<'question'>, printing: Printing): Card =>
  plainCard(printed(reply.asks, printing), {
    body: [...changedLine(reply.changed ?? [], printing), printed(reply.because, printing)],
    offers: reply.offers,
    sayings: sayable(reply.examples),
  });

/** All faults of a message together, the first leading, then what would work. */
export function problemCard(reply: ReplyOf<'problem'>, printing: Printing, stored: boolean): Card {
  const [first, ...others] = reply.problems.map((problem) => sentenceFor(problem, printing));
  // Numbered where "the first" picks one.
  const areNumbered = reply.offers.some(({ say = '' }) => say.startsWith('the ')) || reply.ways.length > 1;
  const ways = reply.ways.map((way, i) =>
    areNumbered ? wayLine(i, way, printing) : `${capital(printed(way, printing))}.`,
  );
  return plainCard(first?.lead ?? 'That cannot be', {
    body: [
      ...(first?.body ?? []),
      ...others.map(({ lead, body }) => `${lead}. ${body.join(' ')}`),
      ...(ways.length === 0 ? [] : [`What would work. ${ways.join(' ')}`]),
      ...(stored ? [] : ['Nothing was stored.']),
    ],
    facts: assumedFact(reply.assumed ?? [], printing),
    offers: reply.offers.map((offer, i) => ({ ...offer, button: buttonOf(reply, i, printing) ?? offer.button })),
    sayings: sayable([...reply.offers.flatMap(({ say }) => say || []), ...(first?.sayings ?? [])]),
  });
}

const buttonOf = (reply: ReplyOf<'problem'>, index: number, printing: Printing): string | undefined => {
  const way = reply.ways[index];
  return way && capital(printed(way, printing));
};

export const answerCard = (reply: ReplyOf<'answer'>, printing: Printing): Card =>
  plainCard(printed(reply.lead, printing), {
    body: reply.lines.map((line) => printed(line, printing)),
    offers: reply.offers,
    sayings: sayable([...reply.offers.flatMap(({ say }) => say || []), ...reply.examples]),
  });

/** Slack tells no name with an event, and an id is none. */
const isNameless = (name: string): boolean => name === '' || isSlackUserId(name);

/** What to try; on a first visit, what I am and what I need once. */
export function helpCard(
  { first, examples, next, machine, yarn = 'grey wool', offers }: ReplyOf<'help'>,
  { name }: { name: string },
  printing: Printing,
): Card {
  const measured = pieceExample(printing.units);
  const rows = examples
    .slice(0, 3)
    .map((words) => `"${words}"`)
    .join(', ');
  if (first) {
    return plainCard("Tell me what a piece must measure and I'll tell you how many rows to knit", {
      body: ['I count in your own gauge, so I need one piece you have measured. I ask for it once.'],
      facts: [
        { label: 'Try', text: `"${measured}"` },
        { label: 'Or', text: rows },
      ],
      foot: ['What you tell me here is yours. Others see it only when you share it.'],
    });
  }
  const you = isNameless(name) ? 'you' : `you, ${name}`;
  return plainCard(
    next === undefined ? `What I can do for ${you}` : `Next for ${you}: row ${next.rows} of ${next.stopAt}`,
    {
      kept: true,
      facts: [
        {
          label: 'Rows',
          text: `${rows}, "make it 12", "on ${machineName({ name: machine ?? '48' })}", "which machine", "in stripes of 4 red 2 cream"`,
        },
        ...(next === undefined ? [] : [{ label: 'At the machine', text: '"+10", "where am i", "lost count", "done"' }]),
        { label: 'Gauge', text: `"${measured}", "my gauge"; shelf: "I have 3 balls of ${yarn}, lot 12", "my shelf"` },
        { label: 'Cost and time', text: '"what does it cost", "my rates", "how long will it take", "took 85 minutes"' },
        {
          label: 'Together',
          text: '"share this with Owen", "what is shared with me", "12 by 5 December", "split with Owen", "remind me"',
        },
        { label: 'Any time', text: '"steps", "checklist", "undo", "never mind", "use inches"' },
      ],
      offers,
      foot: ["I can't see your machine, promise a width (needles and tension set it) or tell you what a law allows."],
    },
  );
}
