import { describe, expect, test } from 'vitest';
import type { Context } from '../../bot/language/context.js';
import { read } from '../../bot/language/read.js';
import { meaningOf, PLAIN } from './reading.js';

const POUCH: Partial<Context> = { subjectPiece: 'pouch' };

/** Numbers that are no sizes, and what the message means without them. */
const NO_SIZES: readonly [text: string, meaning: string, given?: Partial<Context>][] = [
  ['2 in 1', 'unread nothing "2 in 1"'],
  ['2 in 1 pouch', 'plan pouch'],
  ['2-in-1 pouch 11 in wide', 'plan pouch width=279.4'],
  ['pouch 11 in wide by 31 november', 'plan pouch width=279.4'],
  ['pouch 11 in wide, 5 december', 'plan pouch width=279.4'],
  ['pouch 11 in wide, dec 5', 'plan pouch width=279.4'],
  ['pouch 11 in wide by the 5th', 'plan pouch width=279.4'],
  ['pouch 11 in wide at 10:30', 'plan pouch width=279.4'],
  ['pouch 11 in wide before 5pm', 'plan pouch width=279.4'],
  ['pouch 11 in wide in 3 days', 'plan pouch width=279.4'],
  ['pouch 11 in wide within 2 weeks', 'plan pouch width=279.4'],
  ['pouch 11 in wide on row 5', 'plan pouch width=279.4'],
  ['pouch 11 in wide, row 79', 'plan pouch width=279.4'],
  ['pouch 11 in wide, 110 rows', 'plan pouch width=279.4'],
  ['pouch 11 in wide with 20 stitches', 'plan pouch width=279.4'],
  ['pouch 11 in wide for $25', 'plan pouch width=279.4'],
  ['pouch 11 in wide, 25€', 'plan pouch width=279.4'],
  ['pouch 11 in wide for 25 dollars', 'plan pouch width=279.4'],
  ['pouch #5', 'plan pouch'],
  ['pouch 11 in wide in 2 colours', 'plan pouch width=279.4'],
  ['pouch 11 in wide with 2 rings', 'plan pouch width=279.4'],
  ['pouch 11 in wide with 2 zips', 'plan pouch width=279.4'],
  ['pouch 11 in wide for 3 kids', 'plan pouch width=279.4'],
  ['pouch 11 in wide, 50%', 'plan pouch width=279.4'],
  ['1st pouch 11 in wide', 'plan pouch width=279.4'],
  ['the 2nd one', 'unread nothing "2nd"'],
  ['pouch 11 in wide, the red one', 'plan pouch width=279.4'],
  ['another one please', 'unread nothing "another one please"', POUCH],
  ['A4 pouch', 'plan pouch'],
  ['v2 pouch 11 in wide', 'plan pouch width=279.4'],
  ['10 million rows', 'unread nothing "10 million"'],
  ['a thousand rows', 'unread nothing "a thousand"'],
  ['pouch forty six thousand inches wide', 'plan pouch'],
  ['pouch 11 in wide for the twenty-first', 'plan pouch width=279.4'],
  ['pouch 11 in wide for 30 dollars', 'plan pouch width=279.4'],
  ['pouch 11 in diameter', 'plan pouch'],
  ['panel 12 in long, 22 in around', 'plan flat-panel length=304.8'],
  ['panel 12 in long with a 9 in zip', 'plan flat-panel length=304.8'],
  ['tube 20 in long with a 9 in zip', 'plan plain-tube length=508'],
  ['pouch 11 in (20 cm) wide', 'plan pouch width=279.4'],
  ['pouch 11 in wide, not 12', 'plan pouch width=279.4'],
  ['pouch 11 in wide instead of 9', 'plan pouch width=279.4'],
  ['pouch with one ring', 'plan pouch'],
  ['pouch with one 1 in ring', 'plan pouch ring=25.4'],
  ['pouch 11 in wide in small', 'plan pouch width=279.4'],
  ['small pouch 11 in wide', 'plan pouch width=279.4'],
  ['pouch 11 in wide for 4 makers', 'plan pouch width=279.4'],
  ['rows 4 pouch 11 in', 'plan pouch width=279.4'],
  ['make it wider by 1 in', 'change width+25.4', POUCH],
  ['panel 20 sts wide 12 in long', 'plan flat-panel length=304.8'],
  ['pouch 11 in wide on machine 46', 'plan pouch width=279.4 machine=46 needles=46'],
  ['it was 12', 'unread nothing "12"', POUCH],
  ['not on the 46', 'unread nothing "not on the 46"', POUCH],
  ['20 sts around 4 in', 'record stitches=20/101.6 counted'],
  ['pouch 1/0 in wide', 'plan pouch'],
  ['pouch NaN wide', 'plan pouch'],
  ['pouch Infinity wide', 'plan pouch'],
  ['1 in wider', 'change width+25.4', POUCH],
  ['make it 2 in longer', 'change width+50.8', { ...POUCH, rowsMake: 'width' }],
  ['10 more rows', 'unread no_work "10 more rows"', POUCH],
  ['give or take 1/2 in', 'unread nothing "1/2 in"'],
  ['± 1/4', 'unread nothing "1/4"'],
  ['allow 1 in for the rings', 'unread nothing "allow"', POUCH],
  ['pouch 11 in wide, start 2', 'plan pouch width=279.4'],
  ['my phone number is 123456', 'unread nothing "phone number"', POUCH],
  ['make it half as wide', 'change width*0.5', POUCH],
  ['poncho 60 in long', 'unread nothing "poncho"', POUCH],
  ['poncho 24 in round', 'unread nothing "poncho"', POUCH],
  ['6 3/4 flat with 46', 'record flat=171.45', POUCH],
  ['how long is 100 rows', 'unread nothing "100 rows"', POUCH],
  ['110 rows', 'record rows=110/?', POUCH],
  ['11 bananas wide', 'unread nothing "11 bananas"'],
  ['make it 11 bananas', 'unread words "11 bananas"', POUCH],
  ['weight 38 g', 'unread nothing "weight 38 g"'],
  ['room 101', 'unread nothing "room 101"'],
  ['http://example.com/11x6', 'unread nothing "http://example.com/11x6"'],
  ['call me at 5', 'unread nothing "call me at 5"'],
  ['😀', 'unread nothing "😀"'],
  ['👍', 'unread nothing "👍"', POUCH],
  ['pouch 11 in wide 😀', 'plan pouch width=279.4'],
  ['мешок 11 дюймов', 'unread nothing "мешок 11 дюймов"'],
  ['ポーチ 11 cm', 'unread nothing "ポーチ 11 cm"'],
  ['حقيبة ١١', 'unread nothing "حقيبة"'],
  ['pouch 11 см wide', 'unread words "11 см"'],
  ['on the 46.5', 'unread nothing "on the 46.5"', POUCH],
  ['on the 0', 'unread nothing "on the 0"', POUCH],
  ['pouch 11 in wide on the 46.5', 'plan pouch width=279.4'],
  ['10 million rows in 12 in', 'unread nothing "10 million"', POUCH],
  ['pouch with a flap 11 in wide', 'plan pouch width=279.4'],
  ['<!channel>', 'unread nothing "channel"'],
];

describe('a number that is no size is not read as one', () => {
  test.each(NO_SIZES.map(([text, meaning, given]) => ({ text, meaning, given })))('"$text": $meaning', (row) => {
    expect(meaningOf(row.text, row.given)).toBe(row.meaning);
  });

  test('what is left out of a plan is told, word for word', () => {
    expect(read('pouch 11 in wide for $25, row 79, zzyzx', PLAIN).trace.leftover).toEqual(['$25', '79', 'zzyzx']);
  });

  test.each<[string, string, Partial<Context>?]>([
    ['pouch with a flap', 'flap'],
    ['pouch 11 in wide, no rings no strap', 'no strap'],
    ['tube 22 in long for a phone 163 x 78 x 9 mm', 'a phone 163 x 78 x 9 mm'],
    ['pouch 11 in wide on the 46.5', 'on the 46.5'],
    ['pouch 11 in wide and poncho for a 22 in head', 'poncho for a 22 in head'],
    ['pouch 11 in wide with a 2 in flange', '2 in flange'],
    ['tube 22 in long cast off one end', 'cast off one end'],
    ['tube 22 in long grafted at both ends', 'grafted at both ends'],
    ['62 rows 28 cm, heavy', 'heavy'],
    ['12 wide, light', 'light', POUCH],
    [
      '60 rows in 12 in, medium yarn',
      'medium yarn: grey medium or oat medium',
      { yarns: ['grey medium', 'oat medium'] },
    ],
  ])('of "%s" it is "%s"', (text, left, given = {}) => {
    expect(read(text, { ...PLAIN, ...given }).trace.leftover).toEqual([left]);
  });
});

/** Ordinary words, each one or two slips away from a word of the trade. */
const ORDINARY =
  `plain place plane plan rung rang rink wife wine wire wise wade wider widen pane penal parse pulse purge pursue
poach pooch porch couch touch coach punch pinch tuba tune tubs tale talk tally toil tell till held hell heap hemp helm
seal seat sear seem scam slam steam yard yawn gauze gouge grift graph switch swath tested rusted rented handing wished washer
folder needless needled noodles inched itches stretches sketches switches lengthy lengthen bread breath brood lone lung
deer deed dept zaps flap flay slat closer closet clothes crutch church weight eight night hind machined wasted taste paste undone unto cards socks`.split(
    /\s+/,
  );

describe('an ordinary word is not mended into a word of the trade', () => {
  test.each(ORDINARY)('%s', (word) => {
    expect(read(`a ${word}, with 11 of it`, PLAIN).trace.mended).toEqual([]);
  });

  test('nor is one of the maker’s own names', () => {
    expect(read('pouch 11 in wide in yarm', { ...PLAIN, yarns: ['yarm'] }).trace.mended).toEqual([]);
  });
});

describe('noise', () => {
  test('of 4,000 characters is read and means nothing', () => {
    const noise = '~!? qx zv 😀 '.repeat(400).slice(0, 4000);
    expect(meaningOf(noise)).toMatch(/^unread nothing/);
  });

  test('longer than that is not read at all', () => {
    expect(meaningOf('x'.repeat(4001))).toBe(`unread too_long "${'x'.repeat(40)}"`);
  });
});
