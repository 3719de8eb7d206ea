import { z } from 'zod';
import { pieces, plainNumber } from '../../../core/index.js';
import { read } from '../../language/read.js';
import { RateAsk, type Request } from '../../request.js';
import type { Fault, Form, Known, RateKnown } from './form.js';
import { amountAgain, amountFault, amountFilled, isSameAmount } from './money-typed.js';
import { type FieldReader, fieldReader, quoted } from './typed.js';
import { MOST_TYPED } from './view.js';

type RatesAsk = Request & { kind: 'set_rates' };
type Line = {
  of: RateAsk['of'];
  id: string;
  label: string;
  hint: string;
  example: string;
  ways(typed: string): string[];
};

/** The lines of a card, but for notions, which have names of their own. Each is read as the words that tell it. */
const LINES: readonly Line[] = [
  {
    of: 'hour',
    id: 'hour',
    label: 'Your time, an hour',
    hint: 'Such as 16.',
    example: 'an amount here, such as 16',
    ways: (typed) => [`my time is ${typed}`],
  },
  {
    of: 'overhead',
    id: 'overhead',
    label: 'Overhead',
    hint: 'An hour, such as 1.50, or in per cent of what it costs to make, such as 10%.',
    example: 'an amount or a share here, such as 1.50 or 10%',
    ways: (typed) => [`overhead is ${typed} an hour`, `overhead is ${typed}`],
  },
  {
    of: 'packing',
    id: 'packing',
    label: 'Packing, a piece',
    hint: 'Such as 0.80.',
    example: 'an amount here, such as 0.80',
    ways: (typed) => [`packing is ${typed}`],
  },
  {
    of: 'fee',
    id: 'fee',
    label: 'Sales fee',
    hint: 'In per cent of the price, and what each sale costs beside that: 1.7%, or 1.7% and 0.25.',
    example: 'a share here, such as 1.7% or 1.7% and 0.25',
    ways: (typed) => [`fee is ${typed}`, `fee is ${typed}%`],
  },
  {
    of: 'stall',
    id: 'stall',
    label: 'Stall, each time',
    hint: 'Such as 40.',
    example: 'an amount here, such as 40',
    ways: (typed) => [`stall is ${typed}`],
  },
];

/** What was said that has no field: notions by name, and whether it is of the team. */
const Unseen = z.object({ rates: z.array(RateAsk).default([]), team: z.boolean().optional() });

export const ratesForm: Form = {
  title: 'Your rate card',
  submit: 'Keep',
  at: { Fee: 'fee', Overhead: 'overhead' },

  filled(said, known) {
    const asked = said?.kind === 'set_rates' ? said : undefined;
    const isLine = ({ of }: RateAsk): boolean => LINES.some((line) => line.of === of);
    const values = LINES.map(({ of, id }) => {
      const told = asked?.rates.find((rate) => rate.of === of);
      const held = known.rates.find((rate) => rate.of === of);
      return [id, told ? saidAgain(told) : held ? lineAgain(held, known) : ''];
    });
    const unseen = { rates: asked?.rates.filter((rate) => !isLine(rate)) ?? [], team: asked?.team };
    const hasUnseen = unseen.rates.length > 0 || unseen.team !== undefined;
    return {
      currency: amountFilled(known),
      ...Object.fromEntries(values),
      unseen: hasUnseen ? JSON.stringify(unseen) : '',
    };
  },

  fields: () => [
    { is: 'text', id: 'currency', label: 'Currency', hint: 'Of amounts that name none, such as euros or GBP.' },
    ...LINES.map(({ id, label, hint }) => ({ is: 'text' as const, id, label, hint })),
  ],

  request(values, known) {
    const reader = fieldReader(values, known.units);
    const currencies = currenciesRead(reader);
    const unseen = values.unseen ? Unseen.parse(JSON.parse(values.unseen)) : { rates: [] };
    const rates = [
      ...LINES.flatMap((line) => lineRead(line, reader, currencies, known, unseen.team === true) ?? []),
      ...unseen.rates,
    ];
    if (reader.faults.length > 0) return { ok: false, problems: reader.faults };
    if (rates.length === 0) return { ok: false, problems: [nothingNew(known)] };
    return { ok: true, value: ratesAsk(rates, unseen.team) };
  },
};

const ratesAsk = (rates: RateAsk[], team: boolean | undefined): RatesAsk => ({
  kind: 'set_rates',
  rates,
  ...(team && { team }),
});

const nothingNew = ({ rates }: Known): Fault => ({
  at: 'hour',
  says:
    rates.length === 0
      ? 'Fill in one of these at least, such as 16 for an hour of yours.'
      : 'That is what your rate card says already. Change an amount, or close the form.',
});

const percentAgain = (percent: number | undefined): string[] =>
  percent === undefined ? [] : [`${plainNumber(percent)}%`];

const saidAgain = ({ percent, prices }: RateAsk): string =>
  [...percentAgain(percent), ...prices.map(({ said }) => said)].join(' and ');

const lineAgain = ({ percent, prices }: RateKnown, known: Known): string =>
  [...percentAgain(percent), ...prices.map((price) => amountAgain(price, known))].join(' and ');

/** The currencies that the first field may mean; undefined where it is empty or names none. */
function currenciesRead(reader: FieldReader): string[] | undefined {
  const typed = reader.text('currency');
  if (typed === '') return undefined;
  const [meaning, ...others] = wordsRead(`prices in ${typed}`) ?? [];
  if (others.length === 0 && meaning?.kind === 'set_currency') return meaning.currencies;
  return reader.refuse('currency', `I read ${quoted(typed)}, and need a currency here, such as euros or GBP.`);
}

/** What a field tells of its line; undefined where it is empty, cannot be read, or says what the card says already. */
function lineRead(
  line: Line,
  reader: FieldReader,
  currencies: string[] | undefined,
  known: Known,
  isOfTeam: boolean,
): RateAsk | undefined {
  const typed = reader.text(line.id);
  const held = known.rates.find(({ of }) => of === line.of);
  if (typed === '')
    return held && reader.refuse(line.id, `Your card has ${lineAgain(held, known)} here. Write 0 for nothing.`);
  const rate = rateIn(line, typed);
  if (rate === undefined) return reader.refuse(line.id, `I read ${quoted(typed)}, and need ${line.example}.`);
  const own = known.currency;
  const prices = rate.prices.map((price) => {
    const [only, ...others] = price.currencies;
    const isOne = only !== undefined && others.length === 0;
    const meant = only === undefined ? (currencies ?? []) : currencies?.filter((one) => price.currencies.includes(one));
    return isOne || meant === undefined || meant.length === 0 ? price : { ...price, currencies: meant };
  });
  const fault = prices.map((price) => amountFault(price, own)).find((one) => one !== undefined);
  if (fault !== undefined) return reader.refuse(line.id, fault);
  const isHeld = held?.percent === rate.percent && held?.prices.length === prices.length;
  const isSame = isHeld && prices.every((price, i) => isSameAmount(price, held.prices[i], own));
  return isSame && !isOfTeam ? undefined : { ...rate, prices };
}

/** The one line of a rate card that a text tells, with nothing beside it. */
function rateIn({ of, ways }: Line, typed: string): RateAsk | undefined {
  for (const way of ways(typed)) {
    const [meaning, ...others] = wordsRead(way) ?? [];
    const [rate, ...more] = others.length === 0 && meaning?.kind === 'set_rates' ? meaning.rates : [];
    if (rate?.of === of && more.length === 0) return rate;
  }
  return undefined;
}

/** What words mean, where all of them are read. */
function wordsRead(words: string) {
  if (words.length > MOST_TYPED) return undefined;
  const { meanings, trace } = read(words, { pieces, units: undefined, machines: [], yarns: [], holes: [] });
  return trace.leftover.length === 0 ? meanings : undefined;
}
