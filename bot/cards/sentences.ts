import {
  type Given,
  otherUnits,
  type Printing,
  panelsInWords,
  plainNumber,
  printed,
  printedLength,
  printedOthers,
  printedRange,
  TENSION_REACH,
  type Tight,
  type Window,
  type Words,
} from '../../core/index.js';
import type { AnyProblem } from '../problems.js';
import { batchSentence } from './batch-sentences.js';
import { costSentence } from './cost-sentences.js';
import { AN_EXAMPLE, capital, dayInWords, joined } from './names.js';
import { type Sentence, sentence } from './sentence.js';
import { shareSentence } from './share-sentences.js';
import { shelfSentence } from './shelf-sentences.js';
import { stripeSentence } from './stripe-sentences.js';
import { timeSentence } from './time-sentences.js';
import { unreadSentence } from './unread-sentences.js';
import { yarnSentence } from './yarn-sentences.js';

/** What is said in place of a count that cannot be. */
const COUNTS: Readonly<Record<string, string>> = { Needles: '46 needles', Row: 'row 40', 'Stop row': 'stop at 40' };

/** Words for every problem there is; a code without its sentence does not compile. */
export function sentenceFor(problem: AnyProblem, printing: Printing): Sentence {
  const { units } = printing;
  const long = (mm: number): string => printedLength(mm, units);
  const span = (window: Window): string => printedRange(window.loMm, window.hiMm, units);
  switch (problem.code) {
    case 'missing':
      return sentence(
        `I need the ${joined(
          problem.anyOf.map(({ label }) => label.toLowerCase()),
          'or',
        )}`,
        ['That sets the rows.'],
        [long(280)],
      );
    case 'length_out_of_range':
      return sentence(`${problem.field.label}: I read ${exact(problem.givenMm, units)}`, [
        ...('why' in problem ? [`${capital(printed(problem.why, printing))}.`] : []),
        `It must be between ${long(problem.minMm)} and ${long(problem.maxMm)}.${'why' in problem ? '' : ' Say it again with its unit.'}`,
      ]);
    case 'count_out_of_range':
      return sentence(`${problem.field.label}: I read ${plainNumber(problem.given)}`, [
        `It must be between ${problem.min} and ${problem.max}. Say it again.`,
      ]);
    case 'percent_out_of_range':
      return sentence(`${problem.field.label}: I read ${plainNumber(problem.given)}%`, [
        `It must be between ${problem.min}% and ${problem.max}%.`,
      ]);
    case 'not_whole':
    case 'count_not_whole': {
      const label = problem.code === 'not_whole' ? problem.field.label : problem.label;
      return sentence(`${label}: I read ${plainNumber(problem.given)}`, [
        `It must be a whole number, such as ${Math.max(1, Math.round(problem.given))}.`,
      ]);
    }
    case 'wrong_kind': {
      const [wanted, example] =
        problem.wanted === 'contents'
          ? ['three lengths', '25 x 17 x 1 cm']
          : [`a ${problem.wanted}`, problem.wanted === 'length' ? long(280) : '46'];
      return sentence(`${problem.field.label}: I read ${givenWords(problem.given, printing)}`, [
        `I need ${wanted} here, such as ${example}.`,
      ]);
    }
    case 'unknown_choice':
      return sentence(`${problem.field.label}: I read "${problem.given}"`, [
        `It can be ${joined(problem.options, 'or')}.`,
      ]);
    case 'empty_window':
      return sentence(
        `${problem.field.label}: I read ${exact(problem.window.loMm, units)} to ${exact(problem.window.hiMm, units)}`,
        ['The first must be smaller than the second, and both more than nothing. Say the smaller one first.'],
      );
    case 'unknown_field':
      return sentence(`This piece has no ${problem.field.label.toLowerCase()}`, [
        `It takes ${joined(problem.takes.map(({ label }) => label.toLowerCase()))}.`,
      ]);
    case 'closure_too_long':
      return sentence(`A closure of ${long(problem.closureMm)} does not fit ${span(problem.window)}`, [
        `With its rings and 1/2 in of ease it needs at least ${long(problem.needsMm)} of width.`,
      ]);
    case 'ring_too_big':
      return sentence(`A ring of ${long(problem.ringMm)} is too big for a piece ${long(problem.heightMm)} tall`, [
        'Keep a ring under a third of the height.',
      ]);
    case 'contents_too_big': {
      const [first, ...others] = problem.tight;
      const room = ({ way, field, needsMm, mostMm }: Tight): string =>
        `${way === 'upright' ? 'Upright' : 'Lying down'} it needs ${long(needsMm)} of ${field.label.toLowerCase()}, and ${long(mostMm)} is the most.`;
      const wanted = problem.tight.flatMap(({ needles }) => needles?.wanted ?? []);
      return sentence(
        `${first.field.label}: what goes in needs ${long(first.needsMm)}, and ${first.needles === undefined ? 'it may have' : `${first.needles.has} needles make`} ${long(first.mostMm)}`,
        [
          ...[first, ...others].map(room),
          ...(wanted.length === 0 ? [] : [`About ${Math.min(...wanted)} needles would take it.`]),
        ],
      );
    }
    case 'too_many_needles':
      return sentence(`Needles: a panel would take ${problem.given}, where ${problem.max} is the most`, [
        `Of ${problem.machine} needles two stay free beside a panel. A machine of ${problem.given + 2} needles or more would take it.`,
      ]);
    case 'needles_set_it':
      return sentence(
        `${problem.field.label}: your ${problem.needles} needles make ${long(problem.expectedMm)}, not ${span(problem.window)}`,
        [needlesWould(problem, printing)],
      );
    case 'no_row_gauge':
      return sentence(
        'I have no rows of yours to count in',
        ['Measure one piece and tell me its rows and length.'],
        ['110 rows in 22 in'],
      );
    case 'no_stitch_gauge':
      return sentence(
        `${problem.field.label}: I have no stitch width of yours`,
        ['Tell me the needles and flat width of a tube you measured.'],
        ['46 needles, 6 3/4 in flat'],
      );
    case 'unread':
      return unreadSentence(problem, printing);
    case 'not_made':
      return sentence(
        `I cannot work out ${problem.said}`,
        [
          `That takes ${problem.lacks}, and all I count are straight rows. The nearest I can size: ${problem.nearest.toLowerCase()}.`,
        ],
        [problem.example, 'help'],
      );
    case 'not_a_length':
      return sentence(`${problem.label}: I read ${problem.said}, which is a weight`, [
        'I need a length here, in inches or centimetres. Say it again with its unit.',
      ]);
    case 'not_a_weight':
      return sentence(`${problem.label}: I read ${problem.said}`, [
        'I need a weight above nothing here, in grams or ounces, such as "27 g".',
      ]);
    case 'day_ahead':
      return sentence(`Measured: I read ${problem.said}, which is still to come`, [
        'A measurement is of today or a day before. Say the day again, or leave it out.',
      ]);
    case 'before_yarn':
      return sentence(
        `Measured: I read ${problem.said}, before ${problem.yarn === '' ? 'your yarn' : problem.yarn} was yours`,
        [`That lot came on ${dayInWords(problem.since)}. Say another day, or give the older lot a name of its own.`],
      );
    case 'moved_on':
      return sentence(
        `${problem.said}: that has moved on since`,
        ['Something was changed after it, from another place. Say what you want now.'],
        ['where am I'],
      );
    case 'no_work':
      return sentence('Nothing is on the machine', ['Plan a piece and say "start"; then I count its rows.'], ['start']);
    case 'nothing_to_correct':
      return sentence(`I have nothing that ${problem.said} could put right`, [
        'A correction replaces a figure of the last measurement. Say the whole measurement again.',
      ]);
    case 'no_such_piece':
      return sentence(
        problem.said === '' ? 'Nothing is measured there yet' : `No measurement of yours has ${problem.said}`,
        problem.pieces.length === 0
          ? ['Measure a piece and tell me.']
          : [`The last were: ${problem.pieces.join('; ')}.`],
        ['my gauge'],
      );
    case 'length_not_positive':
      return sentence(`${problem.label}: I read ${problem.said}`, [
        'It must be more than nothing. Measure it again, and say it with its unit.',
      ]);
    case 'count_outside':
      return sentence(
        `${problem.label}: I read ${problem.said ?? plainNumber(problem.given)}`,
        [`It must be between ${plainNumber(problem.min)} and ${plainNumber(problem.max)}. Count again.`],
        [COUNTS[problem.label] ?? '110 rows in 22 in'],
      );
    case 'spacing_outside':
      return sentence(
        `That would make each ${problem.label} ${problem.givenMm < 0.1 ? 'under 0.1' : plainNumber(problem.givenMm, 1)} mm`,
        [
          `From the finest yarn to the thickest it lies between ${problem.minMm} and ${problem.maxMm} mm. Check the count, the length and its unit.`,
        ],
        ['110 rows in 22 in'],
      );
    case 'nothing_measured':
      return sentence(
        'I found nothing measured in that',
        ['A gauge is a count and a length: rows over a length, or needles and a flat width.'],
        ['110 rows in 22 in, 46 needles, 6 3/4 flat'],
      );
    case 'nothing_to_undo':
      return sentence(problem.redo ? 'Nothing has been taken back here' : 'There is nothing here to take back', [
        'I take back what was stored last in this talk, one step at a time.',
      ]);
    case 'of_time':
    case 'timed_already':
    case 'no_clock':
    case 'bad_hours':
    case 'no_such_zone':
      return timeSentence(problem);
    case 'of_batch':
    case 'not_in_team':
    case 'no_gauge_of':
    case 'no_batch':
    case 'no_reminders':
    case 'nothing_to_remind':
    case 'done_outside':
      return batchSentence(problem);
    case 'amount_outside':
    case 'price_too_fine':
    case 'no_yarn_named':
    case 'not_on_shelf':
    case 'shelf_too_low':
      return shelfSentence(problem, printing);
    case 'of_cost':
      return costSentence(problem.problem);
    case 'says_too_little':
      return sentence(`I need ${problem.needs}`, ['Say it again with that.'], [problem.example]);
    case 'of_yarn':
      return yarnSentence(problem.problem, printing);
    case 'of_stripes':
      return stripeSentence(problem);
    case 'of_share':
      return shareSentence(problem.problem);
    case 'no_plan_yet':
      return sentence(
        'There is no plan here yet',
        ['Tell me a piece and its size, and I will work out the rows.'],
        [AN_EXAMPLE],
      );
  }
}

/** What would make a size that the needles do not: other needles, tension where it reaches so far, flat panels. */
function needlesWould(problem: AnyProblem & { code: 'needles_set_it' }, printing: Printing): string {
  const { needles, needlesWanted, stitchChange, panels } = problem;
  const stitches = `${Math.round(Math.abs(stitchChange) * 100)}% ${stitchChange > 0 ? 'looser' : 'tighter'}`;
  const isByTension = Math.abs(stitchChange) <= TENSION_REACH;
  const would = [
    ...(needlesWanted === needles ? [] : [`about ${needlesWanted} needles`]),
    ...(panels === undefined ? [] : [printed(panelsInWords(panels), printing)]),
    ...(isByTension ? [`stitches ${stitches}`] : []),
  ];
  const tension = `Not by tension: stitches would be ${stitches}, and beyond about ${TENSION_REACH * 100}% they lose their shape.`;
  return [
    would.length === 0 ? 'Rows cannot change that.' : `Rows cannot change that; ${joined(would, 'or')} would.`,
    ...(isByTension ? [] : [tension]),
  ].join(' ');
}

/** A typed length as it was read, without rounding it away: `-3 in`, `0.2 in`. */
const exact = (mm: number, units: Printing['units']): string =>
  units === 'cm' && Math.abs(mm) >= 10_000
    ? `${plainNumber(mm / 1000)} m`
    : `${plainNumber(mm / (units === 'cm' ? 10 : 25.4), 2)} ${units}`;

function givenWords(given: Given, printing: Printing): string {
  switch (given.is) {
    case 'length':
      return printedLength(given.mm, printing.units);
    case 'window':
      return printedRange(given.loMm, given.hiMm, printing.units);
    case 'count':
      return plainNumber(given.count);
    case 'percent':
      return `${plainNumber(given.percent)}%`;
    case 'mass':
      return `${given.g >= 1000 ? `${plainNumber(given.g / 1000)} kg` : `${plainNumber(given.g)} g`}, which is a weight`;
    case 'choice':
      return `"${given.id}"`;
    case 'contents':
      return printedOthers(given.sidesMm, otherUnits(printing.units));
  }
}

/** A way out as a numbered line: what it is called and how to take it. */
export const wayLine = (index: number, label: Words, printing: Printing): string =>
  `${['First', 'Second', 'Third'][index] ?? `Way ${index + 1}`}: ${printed(label, printing)}.`;
