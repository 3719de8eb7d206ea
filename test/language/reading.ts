import type { Context } from '../../bot/language/context.js';
import { read } from '../../bot/language/read.js';
import type { Bench, Due, Meaning, Tension, Value } from '../../bot/request.js';
import { pieces } from '../../core/index.js';

/** A maker in inches with two machines and two yarns, and no talk behind them. */
export const PLAIN: Context = {
  pieces,
  units: 'in',
  machines: ['the old blue', '48', '46'],
  yarns: ['grey medium', 'oat'],
  holes: [],
};

/** What a text means, each meaning in a line: `plan pouch width=279.4 x2 machine=48`. Lengths in mm to 0.01. */
export const meaningOf = (text: string, given: Partial<Context> = {}): string =>
  read(text, { ...PLAIN, ...given })
    .meanings.map(line)
    .join('; ');

function line(meaning: Meaning): string {
  switch (meaning.kind) {
    case 'plan': {
      const { piece = '?', values, copies, on, words, focus, due } = meaning.ask;
      const asked = [...sizes(values), copies > 1 && `x${copies}`, bench(on), ...first(focus), ready(due)];
      return joined(['plan', piece, ...asked, words && `"${words}"`]);
    }
    case 'change': {
      const { values, copies, on, due, focus } = meaning.edit;
      return joined(['change', ...sizes(values), copies && `x${copies}`, bench(on), ...first(focus), ready(due)]);
    }
    case 'record_gauge': {
      const { rows, stitches, flatWidth, on, state, earlier = [], form } = meaning.gauge;
      const measured = [rows && `rows=${rate(rows)}`, stitches && `stitches=${rate(stitches)}`];
      const before = earlier.map((reading) => `after ${rate(reading.rows)} ${reading.state}`);
      return joined(['record', ...measured, flatWidth && `flat=${size(flatWidth)}`, bench(on), state, ...before, form]);
    }
    case 'reply':
      return `reply ${size(meaning.value)}`;
    case 'pick':
      return `pick ${meaning.index}`;
    case 'set_units':
      return `set_units ${meaning.units}`;
    case 'undo':
      return meaning.redo ? 'redo' : 'undo';
    case 'unread':
      return joined(['unread', meaning.why, meaning.words && `"${meaning.words}"`]);
    default:
      return meaning.kind;
  }
}

/** What is wanted told first, unless that is the rows, which mostly it is. */
const first = (focus: readonly string[]): string[] =>
  focus.filter((what) => what !== 'rows').map((what) => `first=${what}`);

const ready = (due: Due | undefined): string | undefined =>
  due && joined([`by=${due.day}`, due.event !== undefined && `event=${due.event}`]);

const joined = (parts: readonly unknown[]): string => parts.filter(Boolean).join(' ');

const sizes = (values: Record<string, Value | null>): string[] =>
  Object.entries(values).map(
    ([id, value]) => `${id}=${value === null ? 'none' : [size(value), ...(value.given ?? [])].join(' ')}`,
  );

const bench = ({ machine, needles, yarn }: Bench): string =>
  joined([machine && `machine=${machine}`, needles !== undefined && `needles=${needles}`, yarn && `yarn=${yarn}`]);

const rate = ({ count, over, how }: Tension): string =>
  `${round(count)}/${over === undefined ? '?' : size(over)}${how === 'counted' ? ' counted' : ''}`;

function size(value: Value): string {
  switch (value.is) {
    case 'length':
      return round(value.mm);
    case 'window':
      return `${round(value.loMm)}..${round(value.hiMm)}`;
    case 'bare':
      return value.lo === value.hi
        ? `${round(value.lo)} of no unit`
        : `${round(value.lo)}..${round(value.hi)} of no unit`;
    case 'count':
      return `${round(value.count)}`;
    case 'percent':
      return `${round(value.percent)}%`;
    case 'mass':
      return `${round(value.g)}g`;
    case 'choice':
      return value.id;
  }
}

const round = (value: number): string => String(Math.round(value * 100) / 100);
