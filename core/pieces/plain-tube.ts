import { aspects } from '../aspects.js';
import { castOffSteps, looseTail, shutSteps, shutTail } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../finishing/knitting.js';
import { type Asked, type Layout, piece } from '../piece.js';
import { done, type Outcome } from '../problems.js';
import { say } from '../words.js';

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
      { id: 'live', label: 'live on waste yarn', words: ['live', 'open'] },
      { id: 'one_shut', label: 'one shut, one live', words: ['one end shut', 'one end closed', 'shut at one end'] },
      {
        id: 'shut',
        label: 'shut flat',
        words: ['both ends shut', 'ends shut', 'shut', 'both ends closed', 'closed ends'],
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
          id: 'length',
          figure: 'lengthMm',
          label: 'Length',
          adjective: 'long',
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
          share: 1 / 2,
          extra: 0,
          fixedMm: 0,
          window: asked.width,
        },
      ],
    },
  ]);
}

export const plainTube = piece({
  id: 'plain-tube',
  label: 'Tube',
  words: ['tube', 'tubes', 'swatch tube'],
  asks,
  pair: ['width', 'length'],
  needs: [['length']],
  example: 'a tube 22 in long',
  layouts,
  assumes: ({ asked }) => (asked.ends === 'live' ? [say`both ends left live on waste yarn`] : []),
  notions: () => [],
  steps: (made) => {
    const shut = shutEnds(made.asked);
    return [
      ...startSteps(made, shut === 2 ? shutTail(made) : looseTail, shut > 0),
      ...bodySteps(made),
      ...endSteps(made, shut > 0 ? shutTail(made) : looseTail),
      ...(made.asked.ends === 'cast_off' ? castOffSteps(made.needles) : []),
      ...(shut === 0 ? [] : shutSteps(made, shut)),
      ...tidySteps(2, 'length', shut > 0),
    ];
  },
  traits: () => [],
});
