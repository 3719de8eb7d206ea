import { describe, expect, test } from 'vitest';
import { forms, formView, type Known } from '../../../bot/cards/forms/index.js';
import { read } from '../../../bot/language/read.js';
import { type FormId, type FormValues, isOfPiece, type Request } from '../../../bot/request.js';
import { pieces, type Units } from '../../../core/index.js';
import { viewFaults } from './block-faults.js';

const LONG = 'an extraordinarily long name that a maker once gave to it and never found the time to shorten, & < > *';
const FULL = {
  place: `thread:C0BENCH:${'1'.repeat(40)}`,
  address: { to: 'response', url: `https://x/${'u'.repeat(200)}` },
  at: 1,
};

const bench = (id: string, machine: string, yarn: string, needles: number | undefined = 46) => ({
  id,
  machine,
  needles,
  yarn,
  tension: '',
});
const work = (id: string, label: string, rows: number) => ({ id, label, rows });

const CARD: Known['rates'] = [
  { of: 'hour', prices: [{ minor: 1600, currency: 'EUR' }] },
  { of: 'overhead', prices: [], percent: 10 },
  { of: 'packing', prices: [{ minor: 80, currency: '' }] },
  { of: 'fee', prices: [{ minor: 25, currency: 'EUR' }], percent: 1.7 },
  { of: 'stall', prices: [{ minor: 123_450, currency: 'GBP' }] },
  { of: 'notion', prices: [{ minor: 120, currency: 'EUR' }] },
];

const SHOWN = 'cowl, round 62 cm';
const NONE: Known = { units: undefined, currency: undefined, benches: [], works: [], rates: [] };
const TWO: Known = {
  inHand: SHOWN,
  units: 'cm',
  currency: 'EUR',
  rates: CARD,
  benches: [bench('b1', '52', 'grey medium', 52), bench('b2', '24', 'oat fine', 24)],
  works: [work('w1', 'Hat on the 52, row 60 of 131', 60), work('w2', 'Cowl on the 24, row 0 of 90', 0)],
};
const MANY: Known = {
  units: 'in',
  currency: 'JPY',
  rates: [{ of: 'stall', prices: [{ minor: 1_000_000, currency: 'JPY' }] }],
  benches: Array.from({ length: 200 }, (_, i) => bench(`b${i}`, `${LONG} ${i}`, `${LONG} ${i}`)),
  works: Array.from({ length: 200 }, (_, i) => work(`w${i}`, `${LONG} ${i}`, i)),
};
const IDS = Object.keys(forms) as FormId[];

const asked = (words: string, units: Units | undefined): Request => {
  const [request] = read(words, { pieces, units, machines: [], yarns: [], holes: [] }).meanings;
  return request as Request;
};

/** The request that a form makes of what it was filled with, and of what was typed over that. */
function made(id: FormId, known: Known, typed: FormValues = {}, said?: Request): Request {
  const read = forms[id].request({ ...forms[id].filled(said, known), ...typed }, known);
  if (!read.ok) throw new Error(read.problems.map(({ at, says }) => `${at}: ${says}`).join('\n'));
  return read.value;
}

/** The faults of a form by field. */
function faults(id: FormId, known: Known, typed: FormValues, said?: Request): Record<string, string> {
  const read = forms[id].request({ ...forms[id].filled(said, known), ...typed }, known);
  return read.ok ? {} : Object.fromEntries(read.problems.map(({ at = '', says }) => [at, says]));
}

describe.each(IDS)('the form %s', (id) => {
  test.each([
    ['a maker of two machines', TWO],
    ['200 machines and pieces with long names', MANY],
  ])('keeps to the limits of a view for %s', (_, known) => {
    const values = { ...forms[id].filled(undefined, known), hidden: 'y'.repeat(2900), more: 'z'.repeat(200) };
    expect(viewFaults(formView(id, forms[id], values, known, FULL))).toEqual([]);
    const other = { ...values, bench: 'other', length: 'l'.repeat(40_000) };
    expect(viewFaults(formView(id, forms[id], other, known, FULL))).toEqual([]);
  });

  test('carries what has no field, as long as it fits', () => {
    const values = { ...forms[id].filled(undefined, TWO), 'of another piece': '12 cm' };
    const { hidden } = JSON.parse(String(formView(id, forms[id], values, TWO, FULL).private_metadata));
    expect(hidden).toMatchObject({ 'of another piece': '12 cm' });
  });

  test('has six fields at most, each once', () => {
    for (const known of [NONE, TWO, MANY])
      for (const bench of ['', 'b1', 'other']) {
        const own = forms[id].fields({ ...forms[id].filled(undefined, known), bench }, known).map((field) => field.id);
        expect(new Set(own).size).toBe(own.length);
        expect(own.length).toBeLessThanOrEqual(6);
      }
  });
});

describe.each(pieces.map((piece) => [piece.id, piece] as const))('the plan form of %s', (_, piece) => {
  const said = asked(piece.example, 'in');

  test.each([NONE, TWO, MANY])('keeps to the limits, and has six fields at most', (known) => {
    const values = { ...forms.plan.filled(said, known), piece: piece.id };
    expect(viewFaults(formView('plan', forms.plan, values, known, FULL))).toEqual([]);
    expect(forms.plan.fields(values, known).length).toBeLessThanOrEqual(6);
  });

  test.each(['cm', 'in'] as const)('gives back what it was filled with, in %s', (units) => {
    const again = made('plan', { ...TWO, units }, {}, said);
    if (!isOfPiece(said) || !isOfPiece(again)) throw new Error('no plan');
    expect(again.ask?.piece).toBe(piece.id);
    expect(Object.keys(again.ask?.values ?? {}).sort()).toEqual(Object.keys(said.ask?.values ?? {}).sort());
    for (const [id, value] of Object.entries(said.ask?.values ?? {})) {
      const { said: _said, assumed: _assumed, given: _given, body: _body, ...figures } = value;
      for (const [name, figure] of Object.entries(figures))
        if (typeof figure === 'number')
          expect((again.ask?.values[id] as Record<string, unknown> | undefined)?.[name]).toBeCloseTo(figure, 1);
        else expect(again.ask?.values[id]).toMatchObject({ [name]: figure });
    }
  });

  test('asks for every group of which one is needed, all at once', () => {
    const empty = faults('plan', TWO, { piece: piece.id });
    expect(Object.keys(empty).length).toBe(piece.needs.length);
    expect(Object.keys(empty).every((id) => id in piece.asks)).toBe(true);
  });

  test('has no ask by the name of a field of the form itself', () => {
    const own = ['piece', 'copies', 'bench', 'due'];
    expect(Object.keys(piece.asks).filter((id) => own.includes(id))).toEqual([]);
  });
});

describe('numbers in every notation', () => {
  const over = (length: string, known = TWO) => {
    const request = made('gauge', known, { bench: 'b1', rows: '110', length });
    if (request.kind !== 'record_gauge') throw new Error('no gauge');
    return request.gauge.rows?.over;
  };

  test.each([
    ['6 3/4 in', 171.45],
    ['6-3/4"', 171.45],
    ['6¾ inches', 171.45],
    ['27,5 cm', 275],
    ['27.5', 275],
    ['275 mm', 275],
    ['eleven and a half inches', 292.1],
    ['  56,6cm ', 566],
  ])('%s is a length', (typed, mm) => {
    const value = over(typed);
    expect(value?.is === 'length' && value.mm).toBeCloseTo(mm, 3);
  });

  test.each(['many', '-3 cm', 'about 27 cm', '27 cm and 3', '12 x 4', 'x'.repeat(40_000), '<!channel>'])(
    '"%.20s" is named beside its field',
    (length) => {
      const { length: says = '' } = faults('gauge', TWO, { bench: 'b1', rows: '110', length });
      expect(says).toMatch(/^I read "/);
      expect(says.length).toBeLessThan(120);
    },
  );

  test('a number without a unit is asked about while the maker has none, unless another field brings one', () => {
    const rows = { 'bench.needles': '46', rows: '110' };
    expect(faults('gauge', NONE, { ...rows, length: '22' }).length).toContain('in inches or in centimetres?');
    expect(faults('gauge', NONE, { ...rows, length: '22 in', flatWidth: '6 3/4' })).toEqual({});
  });
});

describe('the gauge form', () => {
  test('wants rows and their length together', () => {
    expect(faults('gauge', TWO, { rows: '110' })).toMatchObject({ length: expect.stringContaining('How long') });
    expect(faults('gauge', TWO, { length: '27 cm' })).toMatchObject({ rows: expect.stringContaining('How many') });
  });

  test('carries what was said that it has no field for', () => {
    const said = asked('60 rows in 27 cm, 14.5 flat, note: by the window', 'cm');
    expect(made('gauge', TWO, {}, said)).toMatchObject({
      kind: 'record_gauge',
      gauge: { on: { machine: '52', yarn: 'grey medium' }, rows: { count: 60, how: 'read' }, note: 'by the window' },
    });
  });

  test('takes no state for granted that it did not ask for, and keeps one that was said', () => {
    const other = { rows: '60', length: '27' };
    expect(made('gauge', TWO, other, asked('60 needles', 'cm'))).toMatchObject({ gauge: { state: undefined } });
    const said = asked('60 needles, 60 rows in 27 cm, washed', 'cm');
    expect(made('gauge', TWO, {}, said)).toMatchObject({ gauge: { state: 'washed' } });
    const view = formView('gauge', forms.gauge, forms.gauge.filled(said, TWO), TWO, FULL);
    expect(JSON.stringify(view.blocks)).toContain('Kept as you said it: washed.');
  });

  test('names another machine and yarn, and asks for one of its names', () => {
    const other = { bench: 'other', rows: '60', length: '27' };
    expect(made('gauge', TWO, { ...other, 'bench.needles': '46', 'bench.yarn': 'oat' })).toMatchObject({
      gauge: { on: { needles: 46, yarn: 'oat' } },
    });
    expect(Object.keys(faults('gauge', TWO, other))).toEqual(['bench.needles']);
  });
});

describe('the plan form', () => {
  const hat = pieces.find(({ needs }) => needs.length > 1) ?? pieces[0];

  test('shows the fields of the piece alone that is chosen, its needs before all', () => {
    for (const piece of pieces) {
      const shown = forms.plan.fields({ piece: piece.id }, TWO).map(({ id }) => id);
      expect(shown[0]).toBe('piece');
      expect(shown.filter((id) => id in piece.asks).length).toBeGreaterThan(0);
    }
    expect(forms.plan.fields({}, TWO).map(({ id }) => id)).toEqual(['piece']);
  });

  test('keeps when a piece is due', () => {
    const said: Request = {
      kind: 'plan',
      ask: {
        piece: hat?.id,
        copies: 1,
        values: {},
        on: {},
        focus: [],
        due: { day: '2026-12-01', said: 'by 1 December' },
      },
    };
    expect(forms.plan.filled(said, TWO).due).toContain('2026-12-01');
  });

  test('holds several sizes in the field of what they differ in, and gives them back', () => {
    const several = asked('headbands for heads of 48, 52 and 56 cm', 'cm');
    if (!isOfPiece(several) || several.ask?.sizes === undefined) throw new Error('no sizes');
    const values = forms.plan.filled(several, TWO);
    expect(values.head).toMatch(/^48.*, 52.* and 56/);
    expect(forms.plan.fields(values, TWO).map(({ id }) => id)).toContain('head');
    expect(made('plan', TWO, {}, several)).toMatchObject({ ask: { sizes: several.ask.sizes } });
  });

  test('reads a list typed over one size as several, and one size typed over a list as one', () => {
    const one = asked('headband for a 56 cm head', 'cm');
    const more = made('plan', TWO, { head: '48, 52 and 56 cm' }, one);
    expect(isOfPiece(more) && more.ask?.sizes?.map(({ values }) => values.head)).toMatchObject([
      { mm: 480 },
      { mm: 520 },
      { mm: 560 },
    ]);
    const alone = made('plan', TWO, { head: '54 cm' }, asked('headbands for heads of 48 and 52 cm', 'cm'));
    expect(alone).toMatchObject({ ask: { values: { head: { mm: 540 } }, sizes: undefined } });
  });

  test('takes several sizes in one field alone', () => {
    const both = faults('plan', TWO, { piece: 'headband', head: '48 and 52 cm', girth: '40 and 44 cm' });
    expect(Object.values(both).join()).toContain('Only one field can hold several sizes');
  });

  test('carries stripes, the day and who makes them, and says so', () => {
    const said = asked('cowl 62 cm round in stripes of 7 red 4 cream', 'cm');
    const view = formView('plan', forms.plan, forms.plan.filled(said, TWO), TWO, FULL);
    expect(JSON.stringify(view.blocks)).toMatch(/Kept as you said it: stripes of [^"]*red/);
    expect(made('plan', TWO, {}, said)).toMatchObject({ ask: { stripes: isOfPiece(said) && said.ask?.stripes } });
  });

  test('names what was said and has no field, and what is too long to be carried', () => {
    const said = asked('pouch 11 in wide, 6 in tall with a 9 in zip, lined, with a shoulder strap', 'in');
    const named = JSON.stringify(formView('plan', forms.plan, forms.plan.filled(said, TWO), TWO, FULL).blocks);
    const shown = forms.plan.fields(forms.plan.filled(said, TWO), TWO).map(({ id }) => id);
    if (!isOfPiece(said)) throw new Error('no plan');
    for (const id of Object.keys(said.ask?.values ?? {}).filter((one) => !shown.includes(one)))
      expect(named).toContain(pieces[0]?.asks[id]?.label.toLowerCase());
    const colours = Array.from({ length: 40 }, (_, i) => ({ colour: `${LONG.slice(0, 60)} ${i}`, rows: 2 }));
    const striped: Request = {
      kind: 'plan',
      ask: {
        piece: 'cowl',
        copies: 1,
        values: {},
        on: {},
        focus: [],
        stripes: { repeat: colours, said: 'stripes of 40 colours' },
      },
    };
    const view = formView('plan', forms.plan, forms.plan.filled(striped, TWO), TWO, FULL);
    expect(viewFaults(view)).toEqual([]);
    expect(JSON.stringify(view.blocks)).toContain('say it again afterwards: stripes of 40 colours');
  });

  test('names a machine and yarn in words that are not yet in the list', () => {
    const said = asked('pouch 11 in wide on 60 needles in blue wool', 'in');
    const bench = forms.plan.fields(forms.plan.filled(said, TWO), TWO).find(({ id }) => id === 'bench');
    expect(JSON.stringify(bench)).toContain('60');
    expect(made('plan', TWO, {}, said)).toMatchObject({ ask: { on: { needles: 60 } } });
  });

  test('refuses so many copies as nobody knits', () => {
    expect(faults('plan', TWO, { piece: hat?.id ?? '', copies: '501' }).copies).toContain('between 1 and 500');
  });
});

test('the forms of the work name the piece that was meant, with the row it is at', () => {
  const said: Request = { kind: 'reading', workId: 'w2', length: { is: 'length', mm: 310, said: '31 cm' } };
  expect(forms.reading.filled(said, TWO)).toMatchObject({ work: 'w2', row: '', length: '31 cm' });
  expect(forms.reading.filled(undefined, TWO)).toMatchObject({ work: 'w1', row: '60' });
  expect(made('lost_count', TWO, { machine: '64', hand: '62' })).toEqual({
    kind: 'lost_count',
    workId: 'w1',
    counts: [
      { name: 'machine', rows: 64 },
      { name: 'hand counter', rows: 62 },
    ],
    length: undefined,
    state: undefined,
  });
});

describe('the share form', () => {
  const share = (typed: FormValues) => made('share', TWO, typed);

  test('shares the size with all who were chosen, and rows only where that was', () => {
    const some = { kind: 'share', with: ['@U0OWEN1234', '@U0LOTTE567'], sure: true };
    expect(share({ to: 'U0OWEN1234,U0LOTTE567' })).toEqual({ ...some, rows: false });
    expect(share({ to: 'U0OWEN1234,U0LOTTE567', show: 'rows' })).toEqual({ ...some, rows: true });
  });

  test('takes a note along as it was written, within its limit', () => {
    const some = { kind: 'share', with: ['@U0OWEN1234'], rows: false, sure: true };
    expect(share({ to: 'U0OWEN1234', note: ' for the blue one: 11 in ' })).toEqual({
      ...some,
      note: 'for the blue one: 11 in',
    });
    const view = formView('share', forms.share, { to: '', show: 'size', note: 'n'.repeat(301) }, TWO, FULL);
    const note = view.blocks.find((block) => block.block_id === 'note');
    expect(note).toMatchObject({ optional: true, element: { max_length: 300 } });
    expect(JSON.stringify(note)).toContain('Up to 300 characters');
    expect(view.blocks.find((block) => block.block_id === 'to')).toMatchObject({ element: { focus_on_load: true } });
    expect(viewFaults(view)).toEqual([]);
  });

  test('shows what goes, and what rows tell', () => {
    const text = JSON.stringify(formView('share', forms.share, forms.share.filled(undefined, TWO), TWO, FULL));
    expect(text).toContain('Cowl, round 62');
    expect(text).toContain('Your gauge can be worked out from them');
  });

  test('wants somebody, and no more than ten', () => {
    expect(faults('share', TWO, {}).to).toContain('Who should have it?');
    const many = Array.from({ length: 11 }, (_, i) => `U0MAKER00${i}`).join(',');
    expect(faults('share', TWO, { to: many }).to).toContain('up to 10');
    expect(viewFaults(formView('share', forms.share, { to: many, show: 'size' }, TWO, FULL))).toEqual([]);
  });
});

describe('the rate card form', () => {
  const rates = (known: Known, typed: FormValues, said?: Request) => {
    const request = made('rates', known, typed, said);
    if (request.kind !== 'set_rates') throw new Error('no rates');
    return request.rates;
  };

  test.each([
    [{ currency: 'euros', hour: '16' }, 'my time is 16 euros an hour'],
    [{ hour: '€16.50 an hour' }, 'my time is €16.50 an hour'],
    [{ overhead: '10%' }, 'overhead is 10%'],
    [{ overhead: '1,50' }, 'overhead is 1,50 an hour'],
    [{ fee: '1.7' }, 'card fee 1.7%'],
    [{ fee: '1.7% and 0.25' }, 'card fee 1.7% and 0.25'],
    [{ stall: '0' }, 'stall is 0'],
  ])('%j is what "%s" makes', (typed, words) => {
    const bare = (request: Request) =>
      request.kind === 'set_rates' &&
      request.rates.map(({ of, percent, prices }) => [
        of,
        percent,
        prices.map(({ amount, currencies, count }) => [amount, currencies, count]),
      ]);
    expect(bare(made('rates', NONE, typed))).toEqual(bare(asked(words, undefined)));
  });

  test('holds the card, and tells what differs from it alone', () => {
    expect(forms.rates.filled(undefined, TWO)).toMatchObject({
      currency: 'EUR',
      hour: '16.00',
      overhead: '10%',
      packing: '0.80',
      fee: '1.7% and 0.25',
      stall: '1234.50 GBP',
    });
    expect(faults('rates', TWO, {}).hour).toMatch(/^That is what your rate card says already/);
    expect(faults('rates', NONE, {}).hour).toMatch(/^Fill in one/);
    expect(rates(TWO, { packing: '0.90' })).toMatchObject([{ of: 'packing', prices: [{ amount: 0.9 }] }]);
    expect(rates(MANY, { hour: '1,500' })).toMatchObject([{ of: 'hour', prices: [{ amount: 1500 }] }]);
  });

  test('reads amounts in the currency of its field, but for those that name their own', () => {
    const told = rates(TWO, { currency: 'GBP', hour: '16', packing: '€1', stall: '50' });
    expect(told.map(({ of, prices }) => [of, prices[0]?.currencies])).toEqual([
      ['hour', ['GBP']],
      ['packing', ['EUR']],
      ['fee', ['GBP']],
      ['stall', ['GBP']],
    ]);
    expect(rates(NONE, { currency: 'CAD', hour: '$16' })[0]?.prices[0]?.currencies).toEqual(['CAD']);
  });

  test('holds what waits for its currency, and carries notions by name', () => {
    const said = asked('my time is $18 an hour, zips are $1.20 each', undefined);
    expect(forms.rates.filled(said, NONE)).toMatchObject({ currency: '', hour: '$18' });
    expect(rates(NONE, { currency: 'USD' }, said).map(({ of, name }) => name ?? of)).toEqual(['hour', 'zips']);
  });

  test('names every fault beside its field', () => {
    const bad = { currency: 'shells', hour: 'lots', overhead: '-1', packing: '0.805', fee: 'zips are 1.20', stall: '' };
    const says = faults('rates', TWO, bad);
    expect(Object.keys(says).sort()).toEqual(['currency', 'fee', 'hour', 'overhead', 'packing', 'stall']);
    expect(says).toMatchObject({
      currency: expect.stringContaining('"shells"'),
      hour: expect.stringContaining('such as 16'),
      overhead: expect.stringContaining('from 0 to'),
      packing: expect.stringContaining('finer'),
      stall: 'Your card has 1234.50 GBP here. Write 0 for nothing.',
    });
    expect(Object.keys(faults('rates', TWO, { hour: 'x'.repeat(40_000) }))).toEqual(['hour']);
    expect(Object.keys(faults('rates', TWO, { hour: '16 and pouch 11 in wide' }))).toEqual(['hour']);
  });
});
