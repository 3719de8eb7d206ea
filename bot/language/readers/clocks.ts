import type { Request } from '../../request.js';
import { type Found, PARTS, partsIn } from './times.js';

const CLOCK = '(?:(?:the|my|a)\\s+)?(?:clock|timer|stop\\s?watch)';
const EDGE = '(?<![\\p{L}\\d])';
const START = new RegExp(
  `${EDGE}(?:(?:start|begin|set|restart|resume)\\s+${CLOCK}|clock\\s+(?:on|in))(?!\\p{L})`,
  'iu',
);
const STOP = new RegExp(
  `${EDGE}(?:(?:stop|pause|halt|end)\\s+${CLOCK}|clock\\s+(?:off|out)|^(?:pause|pausing)$)(?:\\s*,?\\s*(?:(?:that|it)\\s+was|for|on)?\\s*(?<parts>${PARTS}))?(?!\\p{L})`,
  'iu',
);

/** `start the clock`, `stop the clock`, `pause`; behind it the part that the time went to: `stop the clock, seaming`. */
export function clockIn(text: string): Found<Extract<Request, { kind: 'clock' }>> | undefined {
  const [start, stop] = [START.exec(text), STOP.exec(text)];
  const found = stop ?? start;
  if (found === null) return undefined;
  const parts = partsIn(stop?.groups?.parts ?? '');
  return {
    start: found.index,
    end: found.index + found[0].length,
    meaning: { kind: 'clock', set: stop === null ? 'start' : 'stop', ...(parts.length > 0 && { parts }) },
  };
}
