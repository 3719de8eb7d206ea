import type { ShareProblem } from '../share-problem.js';
import { AN_EXAMPLE, capital } from './names.js';
import { type Sentence, sentence } from './sentence.js';

/** Names are quoted this far. */
const MOST_QUOTED = 40;
const quoted = (said: string): string => `"${said.slice(0, MOST_QUOTED)}"`;

/** Words for what sharing cannot do. */
export function shareSentence(problem: ShareProblem): Sentence {
  switch (problem.code) {
    case 'no_such_maker':
      return sentence(`I know no maker ${quoted(problem.said)} here`, [
        'I share with people of this workspace: mention them with @, or say the name they go by with me.',
        ...(/\s\S+\s/.test(problem.said.trim())
          ? ['Words that are to go along stand behind a colon, as in "share this with Owen: for the market".']
          : []),
      ]);
    case 'several_makers':
      return sentence(`More than one maker here goes by ${quoted(problem.said)}`, ['Mention the one you mean with @.']);
    case 'with_oneself':
      return sentence('That plan is yours already', ['Say the name of the maker to share it with.']);
    case 'with_the_bot':
      return sentence('Who should have it?', [
        'Say the name of a maker to share it with, choose in the form, or "post this here" in a channel.',
      ]);
    case 'not_in_a_channel':
      return sentence('This is no channel', [
        'Mention me in the channel with "post this here", or say the name of a maker to share it with.',
      ]);
    case 'with_everyone':
      return problem.isChannel
        ? sentence('I share with people one by one, or with this channel', [
            'Say who should have it, or post it here for all who read this channel.',
          ])
        : sentence('I share with people one by one, or with a channel', [
            'Say who should have it, such as two names with "and" between them. For a whole team, mention me in its channel with "post this here".',
          ]);
    case 'another_piece':
      return sentence(`The plan in hand is the ${problem.inHand}, not a ${problem.named}`, [
        `Say "share this" with the name for the ${problem.inHand}; for the other, plan it first and share it then.`,
      ]);
    case 'in_another_channel':
      return sentence('I post in a channel where I am asked to', [
        'Mention me there with "post this here": your last plan is known there too.',
      ]);
    case 'nobody_to_share_back':
      return sentence('The plan in hand is your own', ['Nobody shared it with you, so say who should have it.']);
    case 'nothing_beside':
      return sentence("No one else's plan is beside yours here", [
        'Once you size a plan that was shared with you, I can say why yours comes out as it does.',
      ]);
    case 'nothing_shown':
      return sentence(
        problem.by === undefined
          ? 'No plan is shared with you here'
          : `No plan by ${quoted(problem.by)} is shared with you here`,
        ['Whoever has one can share it with you; a plan of your own needs only a piece and its size.'],
        [AN_EXAMPLE],
      );
    case 'nothing_shared':
      return sentence(
        problem.said === '' ? 'You share no plan now' : `You have shared no plan with ${quoted(problem.said)}`,
        ['Plan a piece, then say who should have it.'],
      );
    case 'share_withdrawn':
      return sentence(
        `${capital(problem.owner)} has withdrawn that plan`,
        ['What you made of it before stays yours. For a plan of your own, say a piece and its size.'],
        [AN_EXAMPLE],
      );
    case 'nothing_changed':
      return sentence('They have the plan as it is', ['Change its size first; then I tell everyone who has it.']);
    case 'no_result':
      return sentence(
        problem.said === undefined
          ? 'No finished piece of a shared plan is here to tell of'
          : `No finished piece of a plan by ${quoted(problem.said)} is here to tell of`,
        [
          'Say "done" with its size once a piece you sized from a shared plan is finished; then I can send it.',
          ...(problem.said === undefined
            ? []
            : ['To show a plan of yours with its rows, plan it, and share it with them and your rows.']),
        ],
        problem.said === undefined ? [] : [`share this with ${problem.said.slice(0, MOST_QUOTED)}, with my rows`],
      );
  }
}
