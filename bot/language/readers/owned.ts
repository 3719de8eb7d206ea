import type { Meaning } from '../../request.js';

const MACHINE = '(?:(?:an?|the|my|one)\\s+)?(\\d{1,3})(?:[\\s-]needles?)?(?:\\s+machines?)?';
const JOINT = '\\s*(?:,\\s*and|,|and|&|plus)\\s+';
const OWNED = new RegExp(
  `^(?:(?:hi|hello|hey)(?:\\s+there)?[,!.]?\\s+)?(?:i(?:['’]ve|\\s+have)(?:\\s+got)?|i\\s+own|we\\s+have|(?:i|we)\\s+(?:(?:knit|make\\s+things|work)\\s+on|use)|my\\s+machines(?:\\s+are|:)?)\\s+(?:(?:two|three|four)\\s+machines?[:,]\\s*)?(${MACHINE}(?:${JOINT}${MACHINE})+)\\s*[.!]?$`,
  'i',
);
/** Without one of these bare numbers may count anything. */
const TELLS = /\b(?:a|an|the|my)\s+\d|needle|machine/i;

/** Machines told by their needles, two or more: `I have a 22, a 40 and a 48`. */
export function machinesOwned(text: string): Meaning[] | undefined {
  const list = OWNED.exec(text)?.[1];
  if (list === undefined || !TELLS.test(text)) return undefined;
  return [...list.matchAll(/\d+/g)].map(
    ([needles]): Meaning => ({
      kind: 'record_gauge',
      gauge: { on: { machine: needles, needles: Number(needles) } },
    }),
  );
}
