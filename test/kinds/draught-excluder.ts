import { aspects } from '../../core/aspects.js';
import { shutSteps, shutTail } from '../../core/finishing/joining.js';
import { bodySteps, endSteps, startSteps, tidySteps } from '../../core/finishing/knitting.js';
import { rectangle } from '../../core/finishing/outline.js';
import { stuffingNotion, stuffStep } from '../../core/finishing/stuffing.js';
import { type Made, piece } from '../../core/piece.js';
import { done } from '../../core/problems.js';
import { SIDES } from '../../core/sizing/sides.js';
import { say } from '../../core/words.js';

/** Stuffing that fills a cubic centimetre, in grams. From memory: 0.025 to 0.035. */
const G_PER_CM3 = 0.03;

const asks = {
  length: {
    is: 'window',
    label: 'Length',
    question: 'How wide is the door?',
    words: [...aspects.long, 'door'],
    minMm: 300,
    maxMm: 2000,
    tolerance: { mm: 15 },
    source: 'tolerance: from memory',
  },
} as const;

/** A stuffed tube is as good as a cylinder: girth²/4π times its length. */
function volumeCm3({ rowsInPiece, rowMm, needles = 0, stitchMm = 0 }: Made<typeof asks>): number {
  return ((needles * stitchMm) ** 2 / (4 * Math.PI)) * rowsInPiece * rowMm * 1e-3;
}

export const draughtExcluder = piece({
  id: 'draught-excluder',
  label: 'Draught excluder',
  words: ['draught excluder', 'draught excluders', 'draft stopper', 'draft stoppers'],
  asks,
  pair: ['length'],
  needs: [['length']],
  example: 'a draught excluder 80 cm long',
  layouts: ({ length }) =>
    done([
      {
        id: 'tube',
        form: 'round',
        parts: 1,
        dimensions: [
          {
            ...SIDES.length,
            axis: 'rows',
            share: 1,
            extra: 1,
            fixedMm: 0,
            window: length,
          },
          {
            ...SIDES.girth,
            axis: 'needles',
            share: 1,
            extra: 0,
            fixedMm: 0,
          },
        ],
      },
    ]),
  assumes: () => [say`both ends shut flat`],
  notions: (made) => [stuffingNotion(volumeCm3(made) * G_PER_CM3)],
  steps: (made) => [
    ...startSteps(made, shutTail(made), { threads: true }),
    ...bodySteps(made),
    ...endSteps(made, shutTail(made)),
    ...shutSteps(made, 1),
    stuffStep(volumeCm3(made)),
    ...shutSteps(made, 1),
    ...tidySteps(2, 'length', true),
  ],
  outline: ({ rowsInPiece, rowMm, needles = 0, stitchMm = 0 }) =>
    rectangle((needles * stitchMm) / 2, rowsInPiece * rowMm, {
      bottom: 'graft',
      right: 'fold',
      top: 'graft',
      left: 'fold',
    }),
  traits: () => ['stuffed'],
});
