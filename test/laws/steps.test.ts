import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Step } from '../../core/piece.js';
import { pieces } from '../../core/pieces/index.js';
import { plan } from '../../core/plan.js';
import { printed, printedRuns } from '../../core/units/print.js';
import { inShort } from '../../core/words.js';
import { cornerValues, FABRICS, FIXED, input } from './asking.js';

/** A line of a checklist, and a sentence at the bench, no longer than these. */
const SHORT = 70;
const LONG = 250;

const UNITS = [{ units: 'cm' }, { units: 'in' }] as const;
const numbersIn = (text: string): string[] => text.match(/\d+(?:[./]\d+)*/g) ?? [];

function faults({ id, say, driver, count, times = 1 }: Step): string[] {
  return UNITS.flatMap((printing) => {
    const long = printed(say, printing);
    const short = printed(inShort(say), printing);
    const joined = printedRuns(say, printing)
      .map(({ text }) => text)
      .join('');
    const broken = {
      'begins with no capital or ends without a stop': !/^[A-Z].*\.$/.test(long),
      'is too long': long.length > LONG,
      'keeps nothing in short': short === '',
      'is too long in short': short.length > SHORT,
      'has a number in short that the long form has not': numbersIn(short).some((n) => !numbersIn(long).includes(n)),
      'is another sentence in runs': joined !== long,
      'holds a stray gap or stop': / {2}|\.\.| [,;.]/.test(long),
      'counts what nothing drives': driver === undefined && count !== 0,
      'counts less than nothing': !(count >= 0 && times >= 1),
    };
    return Object.entries(broken).flatMap(([fault, is]) => (is ? [`${id} ${fault}: ${long} / ${short}`] : []));
  });
}

test.each(pieces.map((piece) => [piece.label, piece] as const))(
  'every step of a %s is one sentence, which its checklist keeps the key words of',
  (_, piece) => {
    for (const values of cornerValues(piece)) {
      for (const needles of [undefined, 48]) {
        const made = plan({ piece, values, needles, measurements: FABRICS[1] ?? [], pieces: 1 });
        if (made.ok) expect(made.value.steps.flatMap(faults)).toEqual([]);
      }
    }
  },
);

test('so is every step of any plan', () => {
  fc.assert(
    fc.property(input, (asked) => {
      const made = plan(asked);
      if (made.ok) expect(made.value.steps.flatMap(faults)).toEqual([]);
    }),
    FIXED,
  );
});
