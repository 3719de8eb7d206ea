import { aspects } from '../aspects.js';
import { castOffSteps, looseTail, shutSteps, shutTail } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { type Asked, type Layout, piece } from '../piece.js';
import { done, type Outcome } from '../problems.js';
import { SIDES } from '../sizing/sides.js';
import { say, type Words } from '../words.js';

/** Read before the words of one end alone, so that `one end open` is not taken for both. */
const ONE_SHUT = [
  ...['end shut', 'end closed', 'end open', 'end live', 'shut end', 'closed end', 'open end', 'live end'],
  ...['shut at one end', 'closed at one end', 'open at one end', 'live at one end'],
];

const asks = {
  length: {
    is: 'window',
    label: 'Length',
    question: 'How long should the tube be?',
    words: [...aspects.long, ...aspects.tall],
    minMm: 20,
    maxMm: 20_000,
    tolerance: { share: 0.03 },
    source: 'tolerance: from memory',
  },
  width: {
    is: 'window',
    label: 'Flat width',
    words: [...aspects.wide, 'flat'],
    minMm: 20,
    maxMm: 1000,
    tolerance: { share: 0.03 },
    source: 'tolerance: from memory',
  },
  ends: {
    is: 'choice',
    label: 'Ends',
    words: ['ends', 'end'],
    options: [
      { id: 'one_shut', label: 'one shut, one live', words: ONE_SHUT },
      { id: 'live', label: 'live on waste yarn', words: ['live', 'open'] },
      {
        id: 'shut',
        label: 'shut flat',
        words: ['both ends shut', 'both ends closed', 'shut at both ends', 'closed at both ends', 'shut', 'closed'],
      },
      { id: 'cast_off', label: 'cast off', words: ['cast off', 'bound off', 'bind off'] },
    ],
    default: 'live',
  },
} as const;

/** Ends shut flat by grafting front to back; each adds half a row. */
const SHUT: Record<string, 0 | 1 | 2> = { live: 0, cast_off: 0, one_shut: 1, shut: 2 };
const shutEnds = (asked: Asked<typeof asks>): 0 | 1 | 2 => SHUT[asked.ends] ?? 0;

function layouts(asked: Asked<typeof asks>): Outcome<readonly Layout[]> {
  return done([
    {
      id: 'round',
      form: 'round',
      parts: 1,
      dimensions: [
        {
          ...SIDES.length,
          axis: 'rows',
          share: 1,
          extra: shutEnds(asked) / 2,
          fixedMm: 0,
          window: asked.length,
        },
        {
          id: 'width',
          figure: 'widthMm',
          label: 'Flat width',
          adjective: 'wide flat',
          axis: 'needles',
          inPanels: 'sewn_round',
          share: 1 / 2,
          extra: 0,
          fixedMm: 0,
          window: asked.width,
        },
      ],
    },
  ]);
}

const ENDS_ASSUMED: Record<string, readonly Words[]> = {
  live: [say`both ends left live on waste yarn`],
  one_shut: [say`one end shut flat, the first left live on waste yarn`],
  shut: [say`both ends shut flat`],
  cast_off: [say`cast off ends, which roll a little`],
};

export const plainTube = piece({
  id: 'plain-tube',
  label: 'Tube',
  words: ['tube', 'tubes', 'swatch tube'],
  asks,
  pair: ['width', 'length'],
  needs: [['length']],
  example: 'a tube 22 in long',
  layouts,
  assumes: ({ asked }) => ENDS_ASSUMED[asked.ends] ?? [],
  notions: () => [],
  steps: (made) => {
    const shut = shutEnds(made.asked);
    return [
      ...startSteps(made, shut === 2 ? shutTail(made) : looseTail, { threads: shut > 0 }),
      ...bodySteps(made),
      ...endSteps(made, shut > 0 ? shutTail(made) : looseTail),
      ...(made.asked.ends === 'cast_off' ? castOffSteps(made.needles) : []),
      ...(shut === 0 ? [] : shutSteps(made, shut)),
      ...tidySteps(2, 'length', shut > 0),
    ];
  },
  outline: ({ asked, rowsInPiece, rowMm, needles, stitchMm }) => {
    const end = (shut: boolean) => (shut ? ('graft' as const) : ('edge' as const));
    const shut = shutEnds(asked);
    return rectangle(((needles ?? 0) * (stitchMm ?? 0)) / 2, rowsInPiece * rowMm, {
      bottom: end(shut === 2),
      right: 'fold',
      top: end(shut > 0),
      left: 'fold',
    });
  },
  traits: () => [],
});
