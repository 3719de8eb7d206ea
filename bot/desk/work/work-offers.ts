import type { Offered, WorkShown } from '../../reply.js';
import { UNDO } from '../offers.js';

/** The buttons of a row counter. */
export const countOffers = ({ id, rows, stopAt }: Pick<WorkShown, 'id' | 'rows' | 'stopAt'>): Offered[] => [
  ...(rows < stopAt
    ? [
        {
          button: '+1 Row',
          say: '+1',
          spoken: `Add one row, to row ${rows + 1}`,
          request: { kind: 'tally' as const, workId: id, by: 1 },
        },
        {
          button: '+10 Rows',
          say: '+10',
          spoken: `Add ten rows, to row ${rows + 10}`,
          request: { kind: 'tally' as const, workId: id, by: 10 },
        },
      ]
    : [
        {
          button: 'It Is Done',
          say: 'done',
          spoken: 'The piece is done, at this row',
          request: { kind: 'finish' as const, workId: id, sizes: [] },
        },
      ]),
  { ...UNDO, spoken: 'Take the last count back' },
];
