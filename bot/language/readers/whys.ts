import type { Request } from '../../request.js';

const FILLERS =
  'is are was it its that this those these there do does did you i we say get need knit want should only just exactly so many few much and not instead of rather than number for the rows rnds rounds have'.split(
    ' ',
  );
const MOST_COUNTS = 2;

/** `why 107?`, `why is it 107 rows and not 110`, `why so many rows`: no other words than these and counts of rows. */
export function whyAsked(bare: string): Request | undefined {
  const [first, ...words] = bare.replace(/^how come\b/, 'why').split(' ');
  if (first !== 'why') return undefined;
  const rows = words.filter((word) => /^[1-9]\d{0,4}$/.test(word)).map(Number);
  const isAll = words.every((word) => FILLERS.includes(word) || /^[1-9]\d{0,4}$/.test(word));
  return isAll && rows.length <= MOST_COUNTS ? { kind: 'why', rows } : undefined;
}
