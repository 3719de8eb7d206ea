import type { Printing } from '../../core/index.js';
import type { AnyProblem } from '../problems.js';
import { MOST_SIZES } from '../request.js';
import { AN_EXAMPLE } from './names.js';
import { type Sentence, sentence } from './sentence.js';
import { nextSteps } from './standing.js';

const TRY = [AN_EXAMPLE, '110 rows in 22 in, 46 needles, 6 3/4 flat', 'help'];

/** The lead is one line on a phone. */
const MOST_SAID = 50;

const told = (words: string): string[] => (words === '' ? [] : [`You said "${words}".`]);

/** Words for a message, or a part of one, of which nothing could be made. */
export function unreadSentence(
  { why, words, standing }: AnyProblem & { code: 'unread' },
  printing: Printing,
): Sentence {
  const next = nextSteps(standing, printing);
  const line = next.line === undefined ? [] : [next.line];
  switch (why) {
    case 'empty':
      return sentence('Tell me a piece and its size', ['I answer with the rows to knit, in your own gauge.'], TRY);
    case 'nothing':
      return sentence(
        words === '' ? 'I did not find a piece or a measurement in that' : `I did not understand "${words}"`,
        line.length > 0 ? line : ['I read sizes of pieces, and what you have measured.'],
        next.sayings,
      );
    case 'not_made':
    case 'no_plan':
      return sentence(
        'There is no plan here yet that this could change',
        [...told(words), 'Tell me the piece and its size first.', ...line],
        next.sayings,
      );
    case 'no_work':
      return sentence(
        'Nothing is on the machine that this could be of',
        [...told(words), 'Plan a piece and say "start": then I count its rows and read its length.', ...line],
        next.sayings,
      );
    case 'words':
      return sentence(
        `I did not understand "${words}"`,
        ['I need a length there, in inches or centimetres, such as "11 in".', ...line],
        next.sayings,
      );
    case 'too_long':
      return sentence(
        'That is longer than I can read',
        [`It begins "${words}". Say the piece and its size in a line or two.`],
        TRY,
      );
    case 'too_many_sizes':
      return sentence(
        `I read more sizes than the piece has: "${words}"`,
        [
          'Rows set one direction and needles the other, so two sizes are all I can use. Name each, such as "11 in wide, 6 3/4 tall".',
          'A thing that must go in has three: say "to take 163 x 78 x 9 mm".',
        ],
        TRY.slice(0, 1),
      );
    case 'too_many_at_once':
      return sentence(`I read more than ${MOST_SIZES} sizes`, [
        `I plan up to ${MOST_SIZES} in one go, and read "${words}". Ask for the rest in a message of its own.`,
      ]);
    case 'contradiction':
      return sentence(
        `Two figures contradict each other: ${words}`,
        ['Tell me the one that you measured.'],
        ['110 rows in 22 in'],
      );
    case 'hours':
      return sentence(
        `Hours: I read "${words.slice(0, MOST_SAID)}"`,
        ['I need the days, and how long or from when to when on each.'],
        ['2 hours on weekdays', 'Mon to Fri 19:00 to 21:00', 'not on Sundays'],
      );
    case 'guess':
      return sentence(
        `That sounds like a guess: "${words}"`,
        ['A guess would make every later answer look surer than it is. Measure it, and tell me what the ruler says.'],
        ['110 rows in 22 in'],
      );
    case 'bare_gauge':
      return sentence(
        `${words}: ${words.replace(/^.*?(?=\S+$)/s, '')} what, over how much?`,
        ['A gauge is a count and a length: rows over a length, or needles and a flat width. Nothing was changed.'],
        ['5 rows to the inch', '110 rows in 22 in, 46 needles, 6 3/4 flat'],
      );
    case 'which_number': {
      const number = words.replace(/\D+/g, '');
      const isStart = /^\D*(?:start|begin)/i.test(words);
      if (/left$/i.test(words))
        return sentence(
          `${number} what are left?`,
          ['It may be grams or metres of yarn, balls, or rows.'],
          [`${number} g left`, `${number} m left`, 'where am I'],
        );
      return sentence(
        `I cannot tell what the ${number} is: "${words.slice(0, MOST_SAID)}"`,
        [isStart ? 'It may be a row to start at, or how many of them.' : 'It may be a price, a machine or a size.'],
        isStart
          ? ['start', `two of them`, `row ${number}`]
          : [`cost at ${number}`, `on the ${number}`, `make it ${number}`],
      );
    }
    case 'which_stripes':
      return sentence(
        'Which stripes should it have?',
        ['Say the rows or the height of each colour, in order; the repeat follows from them.'],
        ['stripes of 4 red 2 cream', '2 cm stripes in red and white', 'even stripes of 3 colours'],
      );
    case 'colour_alone':
      return sentence(
        `In ${words}: a colour alone changes no rows`,
        [
          'The plan holds in any colour of its yarn. Another yarn goes by its own name, and two colours or more are stripes.',
          ...line,
        ],
        [`stripes of 4 ${words} 2 ${words === 'white' ? 'red' : 'white'}`, ...next.sayings],
      );
    case 'whom_with':
      return sentence(
        `Pieces made with ${words}: how many, and by when?`,
        [
          'I deal several pieces between makers who have talked to me, by the hours that each has. Someone new says hello to me first.',
          ...line,
        ],
        ['12 with Owen by 5 December', ...next.sayings],
      );
    case 'two_sides':
      return sentence(
        `How thick is it: ${words}?`,
        ['A thing that must go in has three sides: say them all. Or say the size of the piece itself.', ...line],
        [`${words}, ${printing.units === 'cm' ? '1 cm' : '1/2 in'} thick`, AN_EXAMPLE],
      );
    case 'one_weight':
      return sentence(
        `One weight tells no use: ${words}`,
        [
          'Yarn used is what the cone lost, so say what it weighed before too. Yarn left is weighed without the empty cone.',
        ],
        ['cone 460 g before, 412 g after', '38 g left'],
      );
    case 'which_yarn':
      return sentence(`I cannot tell which yarn: ${words}`, ['Say the yarn by its whole name.']);
    case 'which_other':
      return sentence(
        words === '' ? 'I know of no other' : `Which do you mean: ${words}?`,
        ['Say it by its name. What you measure on a machine or in a yarn, I know it by.'],
        ['my gauge'],
      );
    case 'relative':
      return sentence(
        `How much ${words}?`,
        [`Say by how much, such as "2 cm ${words}", or say the size itself.`],
        ['make it 12'],
      );
    case 'no_size_yet':
      return sentence(
        `You told me no ${words} yet`,
        ['Say the size itself; then I can change it by an amount.'],
        ['make it 12'],
      );
    case 'no_size':
      return sentence(
        'I find no piece with a size in that message',
        [
          'Of what others write I take only the size of a piece: what they measured or counted is theirs. What you say yourself I read whole.',
        ],
        TRY.slice(0, 1),
      );
    case 'of_bot':
      return sentence(
        'An app wrote that message',
        ['I read what people write. Copy the size out of it and say it to me yourself.'],
        TRY.slice(0, 1),
      );
    case 'edited':
      return sentence(
        'That edit changes nothing',
        [
          'I read your last message again for 10 minutes, until a button is pressed. An undo stays, and so does what others were told.',
          'Say what should be different.',
        ],
        ['undo', ...TRY.slice(0, 1)],
      );
    case 'expired':
      return sentence(
        'That card has moved on',
        ['Its buttons no longer know what they stood for. Ask again, and you get a fresh one.'],
        TRY.slice(0, 1),
      );
  }
}
