import { aspects } from '../aspects.js';
import { castOffSteps, looseTail } from '../finishing/joining.js';
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
      { id: 'cast_off', label: 'cast off', words: ['cast off', 'bound off', 'bind off'] },
    ],
    default: 'live',
  },
} as const;

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
          extra: 0,
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
  steps: (made) => [
    ...startSteps(made, looseTail),
    ...bodySteps(made),
    ...endSteps(made, looseTail),
    ...(made.asked.ends === 'cast_off' ? castOffSteps(made.needles) : []),
    ...tidySteps(2, 'length'),
  ],
  traits: () => [],
});
