import type { Context } from '../../bot/language/context.js';
import { read } from '../../bot/language/read.js';
import type {
  BallAsk,
  Bench,
  Due,
  Edit,
  GaugeAsk,
  HoursAsk,
  Meaning,
  PlanAsk,
  PriceAsk,
  Team,
  Tension,
  Value,
} from '../../bot/request.js';
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
    case 'plan':
      return planLine('plan', meaning.ask);
    case 'which_machine':
      return meaning.ask === undefined ? meaning.kind : planLine(meaning.kind, meaning.ask);
    case 'change': {
      const { values, by, sizes: each, copies, on, due, focus, stripes, team } = meaning.edit;
      return joined([
        'change',
        ...sizes(values),
        by && beside(by),
        ...several(each),
        copies && `x${copies}`,
        bench(on),
        ...first(focus),
        ready(due),
        inStripes(stripes),
        made(team),
      ]);
    }
    case 'record_gauge':
      return recordLine(meaning.gauge);
    case 'show_gauge':
    case 'show_pieces':
      return joined([meaning.kind, bench(meaning.on)]);
    case 'reply':
      return `reply ${size(meaning.value)}`;
    case 'size':
      return joined([`size ${meaning.index}`, ...first(meaning.focus)]);
    case 'pick':
      return `pick ${meaning.index}`;
    case 'set_units':
      return `set_units ${meaning.units}`;
    case 'looser':
      return joined([meaning.way, meaning.percent === undefined ? '' : `${meaning.percent}%`]);
    case 'tell_gauge':
      return joined(['tell_gauge', meaning.none && 'none']);
    case 'form':
      return joined(['form', meaning.form]);
    case 'why':
      return joined(['why', ...meaning.rows.map(String)]);
    case 'explain_chance':
      return joined([meaning.kind, meaning.word]);
    case 'own_count':
      return joined([meaning.kind, meaning.rows, meaning.by && `${meaning.by < 0 ? '' : '+'}${meaning.by}`]);
    case 'allow':
      return joined([meaning.kind, meaning.value && size(meaning.value)]);
    case 'show_log':
      return joined([meaning.kind, meaning.isOfWork && 'work']);
    case 'start':
      return joined([meaning.kind, meaning.rows && `rows=${meaning.rows}`]);
    case 'steps':
      return joined(['steps', meaning.form === 'short' && 'short']);
    case 'undo':
      return meaning.redo ? 'redo' : 'undo';
    case 'unread':
      return joined(['unread', meaning.why, meaning.words && `"${meaning.words}"`]);
    default:
      return workLine(meaning);
  }
}

/** `width+25.4`, `width*2`. */
function beside({ field, mm, times }: NonNullable<Edit['by']>): string {
  return times === undefined ? `${field}${(mm ?? 0) < 0 ? '' : '+'}${round(mm ?? 0)}` : `${field}*${round(times)}`;
}

function inStripes(stripes: Edit['stripes']): string | undefined {
  if (stripes === undefined) return undefined;
  if (stripes === null || stripes === 'meet') return `stripes=${stripes === null ? 'none' : stripes}`;
  const each = stripes.repeat.map(({ colour, rows, heightMm }) => [rows, heightMm && `${round(heightMm)}mm`, colour]);
  return `stripes=${each.map((parts) => parts.filter(Boolean).join(' ')).join('/')}`;
}

function planLine(kind: string, ask: PlanAsk): string {
  const { piece = '?', values, sizes: each, copies, on, words, thing, focus, due, stripes, team } = ask;
  const asked = [
    ...sizes(values),
    ...several(each),
    copies > 1 && `x${copies}`,
    bench(on),
    ...first(focus),
    ready(due),
    inStripes(stripes),
    made(team),
  ];
  return joined([kind, piece, ...asked, words && `"${words}"`, thing && `thing=${thing}`]);
}

function recordLine(gauge: GaugeAsk): string {
  const { rows, stitches, flatWidth, on, state, earlier = [], form, same, mass, unravelled, weight, day, note } = gauge;
  const measured = [rows && `rows=${rate(rows)}`, stitches && `stitches=${rate(stitches)}`];
  const before = earlier.map((reading) => `after ${rate(reading.rows)} ${reading.state}`);
  const yarn = [mass && size(mass), unravelled && `drawn=${unravelled.stitches}/${size(unravelled.over)}`];
  const { category, tex, since } = weight ?? {};
  const kind = [category !== undefined && `category=${category}`, tex !== undefined && `tex=${round(tex)}`];
  const days = [since && `since=${since.day}`, day && `day=${day.day}`];
  const told = [flatWidth && `flat=${size(flatWidth)}`, bench(on), state, ...before, form, same && 'same'];
  return joined(['record', ...measured, ...told, ...yarn, ...kind, ...days, note && `note="${note}"`]);
}

/** A request about work in hand, and every other in its kind alone. */
function workLine(meaning: Meaning): string {
  switch (meaning.kind) {
    case 'tally': {
      const { by, to, settles, on } = meaning;
      return joined([
        'tally',
        by !== undefined && `by=${by}`,
        to !== undefined && `to=${to}`,
        settles && 'settles',
        bench(on),
      ]);
    }
    case 'other_yarn':
    case 'what_to_make': {
      const { yarn, ball } = meaning;
      const massG = meaning.kind === 'what_to_make' ? meaning.massG : undefined;
      const holds =
        ball && `ball=${ball.massG ?? '?'}g/${ball.lengthMm === undefined ? '?' : round(ball.lengthMm / 1000)}m`;
      return joined([meaning.kind, massG !== undefined && `${round(massG)}g`, yarn && `yarn=${yarn}`, holds]);
    }
    case 'yarn_left': {
      const { massG, lengthMm, balls, on } = meaning;
      return joined([
        meaning.kind,
        massG !== undefined && `${round(massG)}g`,
        lengthMm !== undefined && `${round(lengthMm / 1000)}m`,
        balls !== undefined && `x${balls}`,
        bench(on),
      ]);
    }
    case 'lost_count': {
      const { counts, length, state, on } = meaning;
      return joined([
        'lost_count',
        ...counts.map(({ name, rows }) => `${name}=${rows}`),
        length && size(length),
        state,
        bench(on),
      ]);
    }
    case 'reading': {
      const { row, length, state, on } = meaning;
      return joined(['reading', row !== undefined && `row=${row}`, size(length), state, bench(on)]);
    }
    case 'set_stop':
      return joined(['set_stop', `${meaning.rows}`, bench(meaning.on)]);
    case 'finish': {
      const { sizes: came, rows, mass, state, unmeasured, on } = meaning;
      const sized = came.map(({ id, value }) =>
        joined([[id, size(value)].filter(Boolean).join('='), ...(value.given ?? [])]),
      );
      const rest = [
        rows !== undefined && `rows=${rows}`,
        mass && size(mass),
        state,
        unmeasured && 'unmeasured',
        bench(on),
      ];
      return joined(['finish', ...sized, ...rest]);
    }
    case 'correct':
      return joined(['correct', correctLine(meaning.value), meaning.was !== undefined && `was=${meaning.was}`]);
    case 'stock':
    case 'show_shelf':
    case 'sold_as':
    case 'set_currency':
    case 'of_lot':
      return shelfLine(meaning);
    case 'set_rates':
      return joined([
        'rates',
        ...meaning.rates.map(({ of, name = of, percent, prices }) =>
          joined([
            `${name}=${[percent === undefined ? '' : `${percent}%`, ...prices.map(figures)].filter(Boolean).join(' ')}`,
          ]),
        ),
        meaning.team && 'team',
      ]);
    case 'show_rates':
      return 'show_rates';
    case 'cost': {
      const { copies, price, margin, markup, breakEven } = meaning.cost;
      return joined([
        'cost',
        copies !== undefined && `x${copies}`,
        price && `at=${[price.amount, ...price.currencies].join(' ')}`,
        margin !== undefined && `margin=${margin}%`,
        markup !== undefined && `markup=${markup}%`,
        breakEven && 'even',
      ]);
    }
    case 'shop_price': {
      const { way, price, percent } = meaning.shop;
      return joined([way, price?.amount, percent !== undefined && `keeps=${percent}%`]);
    }
    case 'pattern_price': {
      const { hours, price, copies } = meaning.pattern;
      return joined([
        'pattern',
        hours !== undefined && `hours=${hours}`,
        price && `at=${price.amount}`,
        copies !== undefined && `copies=${copies}`,
      ]);
    }
    case 'buy': {
      const { copies, sure, reserve, yarn, dyeLot, ways } = meaning.buy;
      return joined([
        'buy',
        copies !== undefined && `x${copies}`,
        sure !== undefined && `sure=${round(sure)}`,
        reserve !== undefined && `reserve=${round(reserve)}`,
        yarn && `name=${yarn}`,
        dyeLot !== undefined && `lot=${dyeLot}`,
        ...ways.flatMap(({ ball, prices }) => [ballLine(ball), ...prices.map(priceLine)]),
      ]);
    }
    case 'log_time':
      return joined([
        'log_time',
        meaning.times.map(({ seconds, parts }) => joined([round(seconds), ...parts])).join(' + '),
        meaning.pieces !== undefined && `pieces=${meaning.pieces}`,
      ]);
    case 'clock':
      return joined(['clock', meaning.set, ...(meaning.parts ?? [])]);
    case 'of_time':
      return joined(['of_time', meaning.seconds !== undefined && round(meaning.seconds), ...(meaning.parts ?? [])]);
    case 'show_time':
      return joined(['show_time', meaning.copies !== undefined && `copies=${meaning.copies}`]);
    case 'set_time_zone':
      return `set_time_zone ${meaning.zone}`;
    case 'set_hours':
      return joined(['set_hours', meaning.hours.map(hoursLine).join(' + ')]);
    case 'share': {
      const who = typeof meaning.with === 'string' ? meaning.with : meaning.with.join('+');
      return joined(['share', who, meaning.rows && 'rows', meaning.note && `note="${meaning.note}"`]);
    }
    case 'withdraw_share':
      return joined(['withdraw_share', meaning.every && 'every', meaning.piece, meaning.with]);
    case 'size_share':
      return joined(['size_share', meaning.change && 'change', meaning.piece, meaning.by && `by=${meaning.by}`]);
    case 'show_shares':
      return joined(['show_shares', meaning.of, meaning.one && 'one', meaning.piece, meaning.by && `by=${meaning.by}`]);
    case 'why_apart':
      return `why_apart ${meaning.of}`;
    case 'leave_share':
      return joined(['leave_share', meaning.keep && 'keep']);
    case 'send_result':
      return joined(['send_result', meaning.rows && 'rows', meaning.to && `to=${meaning.to}`]);
    case 'batch':
    case 'remind':
      return joined([meaning.kind, meaning.act]);
    case 'batch_done':
      return joined([meaning.kind, `${meaning.count}`, meaning.who && `by=${meaning.who}`, meaning.stage]);
    case 'batch_without':
      return joined([meaning.kind, meaning.who, meaning.when]);
    case 'take_back':
      return `take_back "${meaning.said}"`;
    case 'where':
    case 'give_up':
      return joined([meaning.kind, bench(meaning.on)]);
    default:
      return meaning.kind;
  }
}

/** `01234=2h`, `56=09:00-13:00`, `off 20/12..27/12`. */
function hoursLine(hours: HoursAsk): string {
  if ('off' in hours) {
    const [from, to] = [hours.off.from, hours.off.to].map(({ day, month, year }) =>
      [day, month, year].filter(Boolean).join('/'),
    );
    return `off ${from}..${to}`;
  }
  const clock = (s: number): string => new Date(s * 1000).toISOString().slice(11, 16);
  return 'spans' in hours
    ? `${hours.days.join('')}=${hours.spans.map(({ fromS, toS }) => `${clock(fromS)}-${clock(toS)}`).join(',')}`
    : `${hours.days.join('')}=${round(hours.hours)}h`;
}

type OfShelf = Extract<Meaning, { kind: 'stock' | 'show_shelf' | 'sold_as' | 'set_currency' | 'of_lot' }>;

/** What is on hand and how yarn is sold: `stock set count=3 name=grey lot=12 price=6.5/1 EUR`. */
function shelfLine(meaning: OfShelf): string {
  switch (meaning.kind) {
    case 'stock': {
      const { way, kind, name, dyeLot, count, massG, all, team, ...rest } = meaning.stock;
      const much = [all && 'all', count !== undefined && `count=${count}`, massG !== undefined && `${round(massG)}g`];
      const what = [kind === 'notion' && 'notion', name && `name=${name}`, dyeLot !== undefined && `lot=${dyeLot}`];
      return joined([
        'stock',
        way,
        ...much,
        ...what,
        ballLine(rest.ball),
        rest.price && priceLine(rest.price),
        team && 'team',
      ]);
    }
    case 'show_shelf':
      return joined(['show_shelf', meaning.team && 'team']);
    case 'sold_as':
      return joined([
        'sold_as',
        meaning.yarn && `name=${meaning.yarn}`,
        ballLine(meaning.ball),
        ...meaning.prices.map(priceLine),
      ]);
    case 'set_currency':
      return joined(['set_currency', ...meaning.currencies]);
    case 'of_lot':
      return joined(['of_lot', meaning.dyeLot && `lot=${meaning.dyeLot}`, ballLine(meaning.ball)]);
  }
}

const ballLine = (ball: BallAsk | undefined): string | undefined =>
  ball &&
  `ball=${ball.massG === undefined ? '?' : round(ball.massG)}g/${ball.lengthMm === undefined ? '?' : round(ball.lengthMm / 1000)}m`;

const priceLine = ({ amount, count, currencies }: PriceAsk): string =>
  joined([`price=${round(amount)}/${count}`, currencies.join('|')]);

const correctLine = (value: Value): string => (value.is === 'count' ? `count=${value.count}` : size(value));

/** What is wanted told first, unless that is the rows, which mostly it is. */
const first = (focus: readonly string[]): string[] =>
  focus.filter((what) => what !== 'rows').map((what) => `first=${what}`);

const made = (team: Team | undefined): string | undefined =>
  team &&
  joined([
    `makers=${team.names.join('+')}`,
    team.knit && `knits=${team.knit}`,
    team.finish && `finishes=${team.finish}`,
  ]);

const ready = (due: Due | undefined): string | undefined =>
  due && joined([`by=${due.day}`, due.event !== undefined && `event=${due.event}`]);

const figures = ({ amount, count, currencies }: { amount: number; count: number; currencies: string[] }): string =>
  [`${amount}/${count}`, ...currencies].join(' ');

const joined = (parts: readonly unknown[]): string => parts.filter(Boolean).join(' ');

const sizes = (values: Record<string, Value | null>): string[] =>
  Object.entries(values).map(
    ([id, value]) => `${id}=${value === null ? 'none' : [size(value), ...(value.given ?? [])].join(' ')}`,
  );

/** Several sizes: `each head=480 each head=520`. */
const several = (each: PlanAsk['sizes'] = []): string[] => each.map(({ values }) => `each ${sizes(values).join(' ')}`);

const bench = ({ machine, needles, yarn, tension }: Bench = {}): string =>
  joined([
    machine && `machine=${machine}`,
    needles !== undefined && `needles=${needles}`,
    yarn && `yarn=${yarn}`,
    tension && `tension=${tension}`,
  ]);

const rate = ({ count, over, how }: Tension): string =>
  `${round(count)}/${over === undefined ? '?' : size(over)}${how === 'counted' ? ' counted' : ''}`;

function size(value: Value): string {
  switch (value.is) {
    case 'length':
      return round(value.mm);
    case 'window':
      return `${round(value.loMm)}..${round(value.hiMm)}`;
    case 'contents':
      return value.sidesMm.map(round).join('x');
    case 'bare':
      if (value.sides !== undefined) return `${value.sides.map(round).join('x')} of no unit`;
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
