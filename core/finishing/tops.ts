import { aspects } from '../aspects.js';
import type { Asked, Made, Notion, Step, Trait } from '../piece.js';
import { length, say, type Words } from '../words.js';
import { buttonAndLoopSteps, buttonNotion } from './buttons.js';
import { closureNotions, closureSteps } from './closing.js';
import { drawstringNotion, drawstringSteps } from './drawstring.js';
import { edgeForMm } from './edge-closure.js';
import { FLAP_SHARE, flapSteps } from './flap.js';
import { hemSteps } from './hemming.js';
import { castOffSteps } from './joining.js';

/** A hem for a cord to run in. From memory. */
const HEM_MM = 25;

/** Asks of a piece whose top is drawn together, shut by a flap or a closure, or left open. */
export const topped = {
  top: {
    is: 'choice',
    label: 'Top',
    words: ['top'],
    options: [
      {
        id: 'plain',
        label: 'open',
        words: [
          'no drawstring',
          'without a drawstring',
          'without drawstring',
          'open top',
          'sleeve',
          'sleeves',
          'case',
          'cases',
        ],
      },
      { id: 'drawstring', label: 'a drawstring', words: ['drawstring', 'drawstrings', 'draw string'] },
      { id: 'flap', label: 'a flap', words: ['with a flap', 'with flap', 'with flaps', 'flap top', 'flapped'] },
    ],
    default: 'drawstring',
  },
  closure: {
    is: 'length',
    label: 'Closure',
    words: aspects.closure,
    beside: aspects.long,
    minMm: 50,
    maxMm: 1000,
  },
  hem: {
    is: 'length',
    label: 'Hem',
    words: ['hem', 'hems', 'channel'],
    beside: [...aspects.tall, ...aspects.wide],
    minMm: 0,
    maxMm: 100,
    defaultMm: HEM_MM,
    source: 'from memory',
  },
  flap: {
    is: 'length',
    label: 'Flap length',
    words: ['flap', 'flaps'],
    beside: [...aspects.long, ...aspects.tall],
    minMm: 20,
    maxMm: 1000,
  },
} as const;
type ToppedAsked = Asked<typeof topped>;

/** A piece under its top. `onFold`: the rim is a fold, without loops to hem, cast off or graft to. */
type Open = Pick<Made<never>, 'needles' | 'rows' | 'rowMm' | 'loopMm'> & {
  asked: ToppedAsked;
  widthMm: number | undefined;
  heightMm: number;
  onFold: boolean;
};

/** How it shuts: a closure takes the place of a cord or flap, and a flap given a length that of a cord. */
export const closing = ({ closure, flap, top }: ToppedAsked): string =>
  closure !== undefined ? 'closure' : flap !== undefined ? 'flap' : top;

/** The hem folded in: none on a fold, and none where a flap is grafted to the loops that it would take. */
export const hemMm = (asked: ToppedAsked, onFold: boolean): number =>
  onFold || closing(asked) === 'flap' ? 0 : asked.hem;

const flapMm = ({ asked, heightMm }: Open): number => asked.flap ?? FLAP_SHARE * heightMm;

/** The width of the top: where none is known yet, what the closure needs. */
const topMm = ({ asked, widthMm }: Open): number => widthMm ?? edgeForMm(asked.closure ?? 0);

/** The top made ready and shut. */
export function topSteps(open: Open): Step[] {
  const { asked, needles, rowMm, onFold } = open;
  const way = closing(asked);
  const flapRows = Math.max(1, Math.round(flapMm(open) / rowMm));
  const deepMm = hemMm(asked, onFold);
  const castOff = onFold ? [] : castOffSteps(needles, 'the first row');
  return [
    ...(way === 'flap' ? flapSteps(open, flapRows, onFold) : deepMm > 0 ? hemSteps(open, deepMm) : castOff),
    // Where no hem holds it, a cord goes in as far down as a hem would.
    ...(way === 'drawstring' ? drawstringSteps(needles, deepMm, HEM_MM) : []),
    ...(way === 'closure' ? closureSteps({ stitchMm: undefined }, topMm(open), asked.closure ?? 0, 0) : []),
    ...(way === 'flap' ? buttonAndLoopSteps(topMm(open), 'the edge of the flap', 'the front') : []),
  ];
}

/** What shuts it, to have at hand. */
export function topNotions(open: Open): readonly Notion[] {
  const { asked, widthMm } = open;
  switch (closing(asked)) {
    case 'drawstring':
      return [drawstringNotion(widthMm && 2 * widthMm)];
    case 'closure':
      return closureNotions(asked.closure ?? 0, 0);
    case 'flap':
      return [buttonNotion(topMm(open))];
    default:
      return [];
  }
}

/** What the top takes for granted. */
export function topAssumed(open: Open): readonly Words[] {
  const { asked, onFold } = open;
  const way = closing(asked);
  const deepMm = hemMm(asked, onFold);
  const isFlapLeft = way === 'closure' && (asked.top === 'flap' || asked.flap !== undefined);
  return [
    ...(deepMm === 0 || asked.hem !== HEM_MM ? [] : [say`a hem of ${length(deepMm)} folded in`]),
    ...(way === 'drawstring' ? [say`a drawstring`] : []),
    ...(way === 'flap' ? [say`a flap of ${length(flapMm(open))}, half of the stitches wide`] : []),
    ...(isFlapLeft ? [say`the closure alone, without a flap`] : []),
  ];
}

/** What a top has that calls for a caution. */
export function topTraits(asked: ToppedAsked): readonly Trait[] {
  const way = closing(asked);
  if (way === 'plain') return [];
  return way === 'drawstring' ? ['cord', 'small_parts', 'load'] : ['small_parts'];
}
