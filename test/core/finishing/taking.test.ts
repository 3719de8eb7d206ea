import { describe, expect, test } from 'vitest';
import { atLeast, type Taker, taken, unheld } from '../../../core/finishing/taking.js';
import { contentsOf } from '../../../core/sizing/contents.js';
import { printed } from '../../../core/units/print.js';
import { problemsOf } from '../samples.js';

type Asked = { contents: ReturnType<typeof contentsOf> | undefined; turned: string; width?: number; open?: boolean };

const PHONE: Asked = { contents: contentsOf([163, 78, 9]), turned: 'either' };
/** A piece whose needles make 170 mm of height, in walls of 5 mm. */
const takerOf = (asked: Asked): Taker => ({
  wallMm: 5,
  isOpen: asked.open === true,
  needles: 46,
  limits: ({ widthMm, heightMm }) => [
    { id: 'width', label: 'Width', mostMm: asked.width, needsMm: widthMm },
    { id: 'height', label: 'Height', mostMm: 170.5, needsMm: heightMm, wanted: 48 },
  ],
  fabricMm2: ({ widthMm }) => widthMm,
});
const take = (asked: Asked) => taken(asked, takerOf, { asked: { ...asked, open: true }, edit: { open: null } });
const edits = (asked: Asked) =>
  problemsOf(take(asked)).flatMap((problem) => ('offers' in problem ? problem.offers.map((o) => o.edit) : []));

describe('the way up that takes a thing', () => {
  test('is the one that fits, with why', () => {
    const outcome = take(PHONE);
    if (!outcome.ok || outcome.value === undefined) throw new Error('it fits');
    expect(outcome.value.need.way).toBe('lying');
    expect(printed(outcome.value.because ?? { parts: [''], figures: [] }, { units: 'cm' })).toBe(
      'lying down, since upright it needs 17.5 cm of height and on your needles has 17 cm',
    );
  });

  test('is that of less fabric where both fit, with the words for the other', () => {
    const outcome = take({ ...PHONE, contents: contentsOf([120, 78, 9]) });
    if (!outcome.ok || outcome.value === undefined) throw new Error('it fits');
    expect(outcome.value.need.way).toBe('upright');
    expect(printed(outcome.value.because ?? { parts: [''], figures: [] }, { units: 'cm' })).toContain('say "lying"');
  });

  test('is not told where both are the same', () => {
    expect(take({ ...PHONE, contents: contentsOf([78, 78, 9]) })).toMatchObject({ value: { because: undefined } });
  });

  test('is none where nothing must go in', () => {
    expect(take({ contents: undefined, turned: 'upright' })).toEqual({ ok: true, value: undefined });
  });
});

describe('a thing too big', () => {
  test('the way up asked for is named, with the needles it takes; turned it would fit', () => {
    const upright = { ...PHONE, turned: 'upright' };
    expect(problemsOf(take(upright))).toMatchObject([
      {
        code: 'contents_too_big',
        tight: [{ way: 'upright', field: { id: 'height' }, needsMm: 174.5, needles: { has: 46, wanted: 48 } }],
      },
    ]);
    // Open it needs 170 mm.
    expect(edits(upright)).toEqual([{ turned: { is: 'choice', id: 'lying' } }, { open: null }]);
  });

  test('for a width asked for may have it left out', () => {
    expect(edits({ ...PHONE, width: 150 })).toEqual([{ width: null }, { open: null }]);
    expect(edits({ ...PHONE, width: 90 })).toEqual([{ width: null }]);
  });

  test('for the needles either way has nothing to offer', () => {
    expect(edits({ ...PHONE, contents: contentsOf([300, 250, 30]) })).toEqual([]);
  });
});

test('a size is what the thing needs and the tolerance over it, or the part of one asked for that is enough', () => {
  const ask = { minMm: 40, tolerance: { mm: 6 } };
  expect(atLeast(100, undefined, ask)).toEqual({ loMm: 100, hiMm: 106 });
  expect(atLeast(20, undefined, ask)).toEqual({ loMm: 40, hiMm: 46 });
  expect(atLeast(100, { loMm: 90, hiMm: 110 }, ask)).toEqual({ loMm: 100, hiMm: 110 });
});

test('a way up without a thing to stand so is told to count for nothing', () => {
  expect(unheld({ contents: undefined, turned: 'lying' })).toHaveLength(1);
  expect([...unheld({ contents: undefined, turned: 'either' }), ...unheld({ ...PHONE, turned: 'lying' })]).toEqual([]);
});
