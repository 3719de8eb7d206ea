import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Context } from '../../bot/language/context.js';
import { inFigures } from '../../bot/language/number-words.js';
import { type Reading, read } from '../../bot/language/read.js';
import { tokenized } from '../../bot/language/token.js';
import type { Meaning } from '../../bot/request.js';
import { PLAIN } from './reading.js';
import { COUNTS_OPEN, IN_HAND, NOVEMBER } from './requests/row.js';
import { HEADBANDS } from './requests/several.js';

const SEED = 20_261_109;
const RUNS = 3000;
/** A reading takes well under a millisecond, and one that runs away takes minutes: so much is left for a busy machine. */
const SANE_MS = 2000;
/** All texts of a kind, on a busy machine. */
const BUSY_MS = 60_000;

const WORDS =
  `rows row sts needles needle pouch pouches tube panel wide tall long flat folded across deep zip closure ring rings gauge
tension swatch in inch inches cm mm to the per an by x on and with no without for of them make it plan how many yarn grey medium machine
the my hanging washed rested between give or take ± +/- - , . : = / " & one two twelve half quarter hundred twenty undo first yes start done row lost count keep use that was should be sorry drop
weighs tex unravelled same came out more next hangs category weight tension yesterday november back stop later finished g m +
hats headbands heads babies toddler adult women months years old or steps single have bought used left lot balls ball grey zips
at each € euros pounds prices team shelf`.split(/\s+/);
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
  'row 60, 12 1/4 in hanging, +2',
  'lost count: the machine says 64, my hand counter 62',
  'done, 10 7/8 by 6 3/4, weighs 86 g, 109 rows',
  'that was 21.5, not 22. drop the 60 rows',
  'two pouches, 10, 11 and 12 in wide, no 13, hats for baby to adult, 3, 6 and 12 months',
  'I have 3 balls of grey medium, lot 2117, 50 g / 105 m, and 2 of lot 7 at €6.50 a ball, used 20 g of lot 12',
  'bought six 8 in zips at 1.20, ten for 9, prices in us dollars',
  '46 stitches unravelled to 1.24 m, 200 m per 100 g, tension 5, on 3 november, note: 2 drops of oil',
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
  IN_HAND,
  COUNTS_OPEN,
  { ...IN_HAND, ...NOVEMBER, swatchRows: 90 },
  { ...IN_HAND, holes: ['size'] },
  { ...IN_HAND, holes: ['row'] },
  { holes: ['confirm'] },
  HEADBANDS,
  { ...HEADBANDS, holes: ['height'] },
  { holes: ['ball'] },
  { holes: ['lot'], onShelf: ['oat', 'zips 8 in'] },
  { holes: ['currency'] },
);

/** The maker's words for every value, rate and quotation of a meaning. */
function saidIn(meaning: Meaning): string[] {
  const found: string[] = [];
  JSON.stringify(meaning, (key, value) => {
    if (['said', 'dyeLot'].includes(key) && typeof value === 'string') found.push(value);
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

/** Counts that a meaning holds as they were typed. */
const COUNTS = ['by', 'to', 'row', 'was', 'stitches', 'category'];

function countsIn(meaning: Meaning): number[] {
  const found = meaning.kind === 'set_stop' || meaning.kind === 'finish' ? [meaning.rows] : [];
  if (meaning.kind === 'stock') found.push(meaning.stock.count, meaning.stock.price?.count);
  JSON.stringify(meaning, (key, value) => {
    if (COUNTS.includes(key) && typeof value === 'number') found.push(value);
    return value;
  });
  return found.filter((count) => count !== undefined);
}

/** Every number typed, in figures or in words, each also with its sign turned: `3 rows back`. */
const numbersTyped = (text: string): number[] =>
  tokenized(inFigures(text).text).flatMap((token) =>
    token.is === 'quantity' ? [token.quantity.lo, -token.quantity.lo, token.quantity.hi] : [],
  );

/** One more is typed without a number: `next row`, `a ball`. */
const ONE = 1;

function timed(text: string, context: Context): { reading: Reading; ms: number } {
  const began = performance.now();
  const reading = read(text, context);
  return { reading, ms: performance.now() - began };
}

function check(text: string, given: Partial<Context>): void {
  const context = { ...PLAIN, ...given };
  const { reading, ms } = timed(text, context);
  // A pause of the machine is not of the reading: it does not come twice.
  if (ms >= SANE_MS) expect(timed(text, context).ms).toBeLessThan(SANE_MS);
  const whole = [given.held, text].join(', ');
  const typed = numbersTyped(text);
  for (const meaning of reading.meanings) {
    for (const said of saidIn(meaning)) expect(whole).toContain(said);
    for (const number of numbersIn(meaning)) expect(Number.isFinite(number)).toBe(true);
    for (const count of countsIn(meaning)) expect([...typed, ONE]).toContain(count);
  }
}

describe(`a reading never throws, is quick, and claims only what was typed (${4 * RUNS} texts, seed ${SEED})`, () => {
  test.each([
    ['any text', anyText],
    ['trade words, numbers and units shuffled', shuffled],
    ['requests with slips', mutated],
    ['all of these together', fc.tuple(shuffled, anyText, mutated).map((texts) => texts.join(' '))],
  ])(
    '%s',
    (_name, texts) => {
      fc.assert(fc.property(texts, contexts, check), { seed: SEED, numRuns: RUNS });
    },
    BUSY_MS,
  );

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
      'row 60 12 in ',
      'machine 64 ',
      'done 12 ',
      '+1 ',
      '11, ',
      '2 and ',
      'hats for babies, ',
      '3 months to ',
      '3 balls of grey, ',
      'I have 3 zips. ',
      '6.50 a ball, ',
      'knit 30 min, ',
      'seaming and zip an hour ',
      '2 hours on Mondays, ',
    ]) {
      check(piece.repeat(4000 / piece.length), {});
    }
  });
});
