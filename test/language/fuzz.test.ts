import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Context } from '../../bot/language/context.js';
import { type Reading, read } from '../../bot/language/read.js';
import type { Meaning } from '../../bot/request.js';
import { PLAIN } from './reading.js';

const SEED = 20_261_109;
const RUNS = 3000;
/** A reading takes well under a millisecond; this much is left for a busy machine. */
const SANE_MS = 250;

const WORDS =
  `rows row sts needles needle pouch pouches tube panel wide tall long flat folded across deep zip closure ring rings gauge
tension swatch in inch inches cm mm to the per an by x on and with no without for of them make it plan how many yarn grey medium machine
the my hanging washed rested between give or take ± +/- - , . : = / " & one two twelve half quarter hundred twenty undo first yes`.split(
    /\s+/,
  );
const NUMBERS = [
  '0',
  '1',
  '5',
  '11',
  '46',
  '110',
  '6 3/4',
  '6¾',
  '27,5',
  '1/0',
  '-3',
  '10-11',
  '1e9',
  '11x6',
  '9'.repeat(40),
];
const REQUESTS = [
  'rows for a pouch 11 in wide',
  '46 needles, 110 rows, 22 in long, 6 3/4 flat',
  'pouch 10 1/2 to 11" wide with a 9 in zip, no rings',
  '5 rows and 3.4 sts to the inch on the 48 in grey medium',
  'two of them, 11 by 6 3/4, half stitch seam',
];

const anyText = fc.string({ unit: 'grapheme', maxLength: 200 });
const shuffled = fc
  .array(fc.oneof(fc.constantFrom(...WORDS), fc.constantFrom(...NUMBERS)), { maxLength: 25 })
  .chain((words) => fc.constantFrom(' ', '  ', '').map((gap) => words.join(gap)));
const mutated = fc
  .tuple(
    fc.constantFrom(...REQUESTS),
    fc.array(fc.tuple(fc.nat(60), fc.nat(2), fc.string({ unit: 'grapheme', maxLength: 3 }))),
  )
  .map(([request, edits]) =>
    edits.reduce((text, [at, cut, put]) => text.slice(0, at) + put + text.slice(at + cut), request),
  );
const contexts = fc.constantFrom<Partial<Context>>(
  {},
  { units: undefined },
  { subjectPiece: 'pouch' },
  { subjectPiece: 'flat-panel', units: 'cm' },
  { holes: ['width'], subjectPiece: 'pouch' },
  { holes: ['needles'] },
  { holes: ['gauge'], subjectPiece: 'plain-tube' },
  { holes: ['piece'], held: 'rows for 11 in' },
  { command: '/rows' },
  { command: '/gauge' },
);

/** The maker's words for every value, rate and quotation of a meaning. */
function saidIn(meaning: Meaning): string[] {
  const found: string[] = [];
  JSON.stringify(meaning, (key, value) => {
    if (key === 'said' && typeof value === 'string') found.push(value);
    return value;
  });
  return meaning.kind === 'unread' && meaning.why !== 'contradiction' ? [...found, meaning.words] : found;
}

function numbersIn(meaning: Meaning): number[] {
  const found: number[] = [];
  JSON.stringify(meaning, (_key, value) => {
    if (typeof value === 'number') found.push(value);
    return value;
  });
  return found;
}

function check(text: string, given: Partial<Context>): void {
  const began = performance.now();
  const reading: Reading = read(text, { ...PLAIN, ...given });
  expect(performance.now() - began).toBeLessThan(SANE_MS);
  const whole = [given.held, text].join(', ');
  for (const meaning of reading.meanings) {
    for (const said of saidIn(meaning)) expect(whole).toContain(said);
    for (const number of numbersIn(meaning)) expect(Number.isFinite(number)).toBe(true);
  }
}

describe(`a reading never throws, is quick, and claims only what was typed (${4 * RUNS} texts, seed ${SEED})`, () => {
  test.each([
    ['any text', anyText],
    ['trade words, numbers and units shuffled', shuffled],
    ['requests with slips', mutated],
    ['all of these together', fc.tuple(shuffled, anyText, mutated).map((texts) => texts.join(' '))],
  ])('%s', (_name, texts) => {
    fc.assert(fc.property(texts, contexts, check), { seed: SEED, numRuns: RUNS });
  });

  test('the longest texts are read in sane time too', () => {
    for (const piece of [
      '11 ',
      'pouch 11 in ',
      '5 rows to the inch ',
      'x1',
      '11 wide ',
      'twenty ',
      '($5) ',
      'and a half ',
    ]) {
      check(piece.repeat(4000 / piece.length), {});
    }
  });
});
