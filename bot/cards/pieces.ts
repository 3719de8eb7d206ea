import type { Printing } from '../../core/index.js';
import { benchName } from '../desk/names.js';
import type { ReplyOf } from '../reply.js';
import { type Card, plainCard } from './card.js';
import { counted, dayInWords } from './names.js';

const MOST_SHOWN = 10;

/** The measurements behind one gauge, the newest first, as they were said. */
export function piecesCard({ gauge, measurements, offers }: ReplyOf<'pieces'>, _printing: Printing): Card {
  const shown = measurements.slice(0, MOST_SHOWN);
  const more = measurements.length - shown.length;
  return plainCard(
    `${counted(measurements.length, 'measurement')} for ${benchName(gauge.machine, gauge.yarn, gauge.tension)}`,
    {
      kept: true,
      body: [
        ...shown.map(({ said, day, note }) => `${dayInWords(day)}: ${said}.${note === '' ? '' : ` Note: ${note}.`}`),
        ...(more === 0 ? [] : [`And ${more} before them.`]),
      ],
      offers,
      sayings: [...dropping(shown), 'my gauge'],
    },
  );
}

/** Words that take back one of them: the rows of a swatch, where no other has as many. */
function dropping(shown: ReplyOf<'pieces'>['measurements']): string[] {
  const counts = shown.flatMap(({ rows, workId }) => (rows === undefined || workId !== '' ? [] : [rows.count]));
  const only = counts.find((count) => counts.filter((one) => one === count).length === 1);
  return only === undefined ? [] : [`drop the ${only} rows`];
}
