import { JOG, type Printing, printed, printedChance, printedYarn } from '../../core/index.js';
import type { StripesShown } from '../replies/stripes.js';
import type { Card } from './card.js';
import { capital, counted, joined } from './names.js';

/** Lines of the checklist before the rest goes on alike. */
const MOST_RUNS = 40;

/** The repeat, how its ends meet, what each colour takes, and the ends to weave in. */
export function stripesFact(shown: StripesShown | undefined, printing: Printing): Card['facts'] {
  if (shown === undefined) return [];
  const { repeat, repeatRows, ends, times, unreached, inRound } = shown;
  const parts = [
    `${repeat.map(({ colour, rows }) => `${rows} ${colour}`).join(', ')}: ${counted(repeatRows, 'row')} a repeat.`,
    meetingText(shown),
    `${capital(shown.colours.map((colour) => colourText(shown, colour, printing)).join('; '))}${times > 1 ? `, for all ${times}` : ''}.`,
    `${counted(ends * times, 'end')} to weave in${endsText(shown, printing)}.`,
    ...(unreached.length === 0 ? [] : [`The piece ends before ${joined(unreached)}.`]),
    ...(inRound ? [printed(JOG, printing)] : []),
  ];
  return [{ label: 'Stripes', text: parts.join(' ') }];
}

/** The ends of stripes are in no figure of the piece as a whole. */
function endsText({ colours, times, hasYarn }: StripesShown, { units }: Printing): string {
  const endsM = times * colours.reduce((sum, colour) => sum + colour.endsM, 0);
  return hasYarn && endsM > 0 ? `, about ${printedYarn(endsM, units)} beyond the yarn of the piece` : '';
}

function colourText(
  { times, hasYarn }: StripesShown,
  { colour, rows, lengthM }: StripesShown['colours'][number],
  { units }: Printing,
): string {
  const yarn = hasYarn && lengthM > 0 ? `, about ${printedYarn(lengthM * times, units)} with its ends` : '';
  return `${colour} ${counted(rows * times, 'row')}${yarn}`;
}

function meetingText({ meeting, graftColour, runs, met }: StripesShown): string {
  const { where, isWhole, add, drop } = meeting;
  const off = `${counted(add, 'row')} more${drop === undefined ? '' : ` or ${drop} fewer`}`;
  if (where === 'at_ends') {
    const [first, last] = [runs[0]?.colour, runs.at(-1)];
    if (isWhole) return `It begins and ends with ${first}.`;
    return `It begins with ${first} and ends with ${last?.rows} of ${last?.colour}; ${off} would end it as it begins.`;
  }
  if (isWhole) return `They meet across the graft, which is worked in ${graftColour}.`;
  const way =
    met === undefined ? '' : ` Meeting, it would be ${counted(met.rows, 'row')}, ${printedChance(met.chance)}.`;
  return `They do not meet across the graft, which is worked in ${graftColour}: ${off} would.${way}`;
}

/** The rows of each colour to tick off, by what the counter shows when each is done. */
export function stripesChecklist(shown: StripesShown | undefined, printing: Printing): Card['facts'] {
  if (shown === undefined) return [];
  const { runs, graftColour, inRound } = shown;
  const lines = runs.slice(0, MOST_RUNS).map(({ colour, to }) => `${colour} to ${to}`);
  const rest = runs.length > MOST_RUNS ? [`and so on to ${runs.at(-1)?.to}`] : [];
  const graft = graftColour === undefined ? '' : ` Graft in ${graftColour}.`;
  const jog = inRound ? ` ${printed(JOG, printing)}` : '';
  return [{ label: 'Stripes by the counter', text: `${capital([...lines, ...rest].join(', '))}.${graft}${jog}` }];
}
