import { describe, expect, test } from 'vitest';
import { Conversation } from '../../bot/conversation.js';
import { PlanAsk, type Request, type Value } from '../../bot/request.js';
import { whole } from '../../bot/whole.js';

const length = (mm: number): Value => ({ is: 'length', mm });
const SUBJECT = PlanAsk.parse({
  piece: 'pouch',
  copies: 3,
  values: { width: { is: 'window', loMm: 260, hiMm: 280 }, ring: length(25.4) },
  on: { machine: '46', needles: 46, yarn: 'grey' },
});
const TALK = Conversation.parse({ subject: SUBJECT });
const change = (edit: object, talk = TALK) => {
  const request = whole({ kind: 'change', edit: { values: {}, on: {}, focus: [], ...edit } }, talk, 'in');
  if (request.kind !== 'plan') throw new Error(request.kind);
  return request;
};
const waiting = (request: Request, ...holes: string[]) => Conversation.parse({ pending: { request, holes } });

describe('an edit joins the plan it changes', () => {
  test('replacing a value whole, but for the half-width last stated', () => {
    expect(change({ values: { width: length(300) } }).ask.values.width).toEqual({ is: 'window', loMm: 290, hiMm: 310 });
    expect(change({ values: { ring: length(12) } }).ask.values.ring).toEqual(length(12));
  });

  test('null removes a value, and one of a group of which one is needed removes the others', () => {
    expect(Object.keys(change({ values: { ring: null } }).ask.values)).toEqual(['width']);
    expect(Object.keys(change({ values: { closure: length(200) } }).ask.values)).toEqual(['ring', 'closure']);
    expect(Object.keys(change({ values: { closure: length(200), width: length(300) } }).ask.values).sort()).toEqual([
      'closure',
      'ring',
      'width',
    ]);
  });

  test('one of a group of which one is needed takes the others away', () => {
    const bought = { ...TALK, subject: PlanAsk.parse({ piece: 'pouch', values: { closure: length(200) } }) };
    expect(Object.keys(change({ values: { width: length(300) } }, bought).ask.values)).toEqual(['width']);
    const panel = { ...TALK, subject: PlanAsk.parse({ piece: 'flat-panel', values: { width: length(200) } }) };
    const needles: Value = { is: 'count', count: 20 };
    expect(Object.keys(change({ values: { needles } }, panel).ask.values)).toEqual(['needles']);
  });

  test('a size bounded on one side states no half-width to keep', () => {
    const width: Value = { is: 'window', loMm: 279.4, hiMm: 285.4, given: ['at_least'] };
    const talk = { ...TALK, subject: PlanAsk.parse({ piece: 'pouch', values: { width } }) };
    expect(change({ values: { width: length(300) } }, talk).ask.values.width).toEqual(length(300));
  });

  test('another machine brings its own needles and leaves the yarn', () => {
    expect(change({ on: { machine: '24' } }).ask.on).toEqual({ yarn: 'grey', machine: '24' });
    expect(change({ on: { yarn: 'oat' } }).ask.on).toEqual({ machine: '46', needles: 46, yarn: 'oat' });
  });

  test('keeping the copies unless they are said, and never touching the plan it came from', () => {
    const before = structuredClone(TALK);
    expect(change({}).ask.copies).toBe(3);
    expect(change({ copies: 2 }).ask.copies).toBe(2);
    expect(TALK).toEqual(before);
  });

  test('keeping what is told first of more pieces, unless something else is asked for; of another size the rows are again', () => {
    const yarn = { ...TALK, subject: PlanAsk.parse({ piece: 'pouch', focus: ['yarn'] }) };
    expect(change({ copies: 2 }, yarn).ask.focus).toEqual(['yarn']);
    expect(change({ values: { width: length(254) } }, yarn).ask.focus).toEqual([]);
    expect(change({ on: { machine: '48' } }, yarn).ask.focus).toEqual([]);
    expect(change({ focus: ['notions'] }, yarn).ask.focus).toEqual(['notions']);
  });

  test('a plan that waits goes before the last one', () => {
    const talk = {
      ...waiting({ kind: 'plan', ask: PlanAsk.parse({ piece: 'plain-tube' }) }, 'length'),
      subject: SUBJECT,
    };
    expect(change({ values: { length: length(500) } }, talk).ask).toMatchObject({ piece: 'plain-tube', copies: 1 });
  });

  test('without a plan is not understood', () => {
    expect(
      whole({ kind: 'change', edit: { values: {}, on: {}, focus: [] } }, Conversation.parse({}), 'in'),
    ).toMatchObject({
      kind: 'unread',
    });
  });
});

describe('an edit of several sizes', () => {
  const sizes = [280, 300].map((mm) => ({ label: `${mm} mm`, values: { width: length(mm) } }));
  const several = { ...TALK, subject: PlanAsk.parse({ piece: 'pouch', values: { ring: length(25.4) }, sizes }) };

  test('keeps them, unless it sets what they differ in or what stands for that', () => {
    expect(change({ values: { ring: length(12) } }, several).ask.sizes).toEqual(sizes);
    expect(change({ copies: 2 }, several).ask.sizes).toEqual(sizes);
    expect(change({ values: { width: length(290) } }, several).ask.sizes).toBeUndefined();
    expect(change({ values: { closure: length(200) } }, several).ask.sizes).toBeUndefined();
  });

  test('puts others in their place, and takes away what was said of all in their stead', () => {
    const closures = [150, 200].map((mm) => ({ label: `${mm} mm`, values: { closure: length(mm) } }));
    expect(change({ sizes: closures }, several).ask.sizes).toEqual(closures);
    expect(Object.keys(change({ sizes: closures }).ask.values)).toEqual(['ring']);
  });

  test('chooses one whole, and nothing where there is none', () => {
    const chosen = whole({ kind: 'size', index: 1, focus: ['steps'] }, several, 'in');
    expect(chosen).toMatchObject({ kind: 'plan', follows: true });
    expect(chosen.kind === 'plan' && chosen.ask).toEqual(
      PlanAsk.parse({ piece: 'pouch', values: { ring: length(25.4), width: length(300) }, focus: ['steps'] }),
    );
    expect(whole({ kind: 'size', index: 2, focus: [] }, several, 'in')).toMatchObject({ why: 'expired' });
    expect(whole({ kind: 'size', index: 0, focus: [] }, TALK, 'in')).toMatchObject({ why: 'expired' });
  });
});

describe('an answer fills the hole it was asked for', () => {
  const bare = (said: string): Value => ({ is: 'bare', lo: Number(said), hi: Number(said), said });

  test('a size of the plan that waits', () => {
    const talk = waiting({ kind: 'plan', ask: PlanAsk.parse({ piece: 'pouch' }) }, 'width', 'closure');
    expect(whole({ kind: 'reply', value: bare('11') }, talk, 'in')).toMatchObject({
      ask: { values: { width: { mm: expect.closeTo(279.4, 6), assumed: 'unit' } } },
    });
  });

  test('the length of rows, and the needles of a flat width, whatever unit a bare number would have', () => {
    const rows = waiting({ kind: 'record_gauge', gauge: { on: {}, rows: { count: 110, how: 'read' } } }, 'length');
    expect(whole({ kind: 'reply', value: length(558.8) }, rows, 'in')).toMatchObject({
      gauge: { rows: { over: { mm: 558.8 } } },
    });
    const flat = waiting({ kind: 'record_gauge', gauge: { on: {}, flatWidth: length(171) } }, 'needles');
    const inches: Value = { is: 'length', mm: 1168.4, said: '46', assumed: 'unit' };
    for (const value of [bare('46'), inches]) {
      expect(whole({ kind: 'reply', value }, flat, 'in')).toMatchObject({ gauge: { on: { needles: 46 } } });
    }
  });

  test.each(['gauge', 'piece', 'units'])('but no length fills the hole "%s"', (hole) => {
    const talk = waiting({ kind: 'plan', ask: SUBJECT }, hole);
    expect(whole({ kind: 'reply', value: { ...length(300), said: '300 mm' } }, talk, 'in')).toEqual({
      kind: 'unread',
      why: 'nothing',
      words: '300 mm',
    });
  });

  test('nor does a typed length count needles, nor does anything without a question', () => {
    const flat = waiting({ kind: 'record_gauge', gauge: { on: {}, flatWidth: length(171) } }, 'needles');
    const value: Value = { ...length(508), said: '20 in' };
    expect(whole({ kind: 'reply', value }, flat, 'in').kind).toBe('unread');
    expect(whole({ kind: 'reply', value }, TALK, 'in').kind).toBe('unread');
  });
});

describe('a pick becomes what was offered', () => {
  const talk = Conversation.parse({
    offered: [
      { turn: 'a', named: true, choices: [{ kind: 'help' }, { kind: 'drop' }] },
      { turn: 'b', named: false, choices: [{ kind: 'thanks' }] },
    ],
  });

  test('on the card that was pressed, or in words on the last card that numbered its ways', () => {
    expect(whole({ kind: 'pick', turn: 'b', index: 0 }, talk, 'in').kind).toBe('thanks');
    expect(whole({ kind: 'pick', index: 1 }, talk, 'in').kind).toBe('drop');
  });

  test('and one that is gone has expired', () => {
    for (const pick of [{ turn: 'c', index: 0 }, { turn: 'a', index: 2 }, { index: 2 }]) {
      expect(whole({ kind: 'pick', ...pick }, talk, 'in')).toMatchObject({ kind: 'unread', why: 'expired' });
    }
  });
});
