import { BILLED, type Bill, type Printing, plainNumber, printed, printedYarn } from '../../core/index.js';
import { printedMoney, printedPrice } from '../money.js';
import type { ReplyOf } from '../reply.js';
import { assumedFact } from './assumed.js';
import { type Card, plainCard } from './card.js';
import { capital, counted, joined } from './names.js';

type Cost = ReplyOf<'cost'>;

/** What a piece costs line by line, what a price leaves of it, and what the total leaves out. */
export function costCard(reply: Cost, printing: Printing): Card {
  const { bill, sale, wanted, offers, assumed, stall } = reply;
  const rows = linesOf(reply, printing);
  return plainCard(leadOf(reply), {
    kept: true,
    body: [
      ...(sale === undefined ? [] : [`Cost: ${priceIn(bill, reply.eachMinor)} each. ${leftLine(reply)}`]),
      ...(bill.pieces === 1 || sale === undefined ? [] : [`All ${bill.pieces} cost ${priceIn(bill, bill.costMinor)}.`]),
      ...(stall === undefined || reply.isBreakEven ? [] : [stallLine(reply)]),
    ],
    table: {
      columns: ['What', 'Cost', 'Share'],
      rows: rows.map(({ name, minor, share }) => [name, priceIn(bill, minor), share]),
      lines: rows.map(({ name, minor, share }) => `${name}: ${priceIn(bill, minor)}. ${share}`),
    },
    facts: [
      ...assumedFact(assumed, printing),
      { label: 'Left out', text: `${unpriced(reply)}tax: rules differ by place, ask an adviser.` },
    ],
    offers,
    foot: ['Only you can see your rate card.'],
    sayings: [
      ...(sale === undefined ? ['cost at 48', 'margin 40%'] : [`margin ${wanted?.percent === 40 ? 35 : 40}%`]),
      ...(bill.pieces === 1 ? ['cost of 12'] : []),
      'my rates',
      'how long will it take',
    ],
  });
}

const priceIn = ({ currency }: { currency: string }, minor: number): string => printedMoney({ minor, currency });

function leadOf(reply: Cost): string {
  const { label, bill, sale, wanted, isBreakEven, eachMinor } = reply;
  // A cost that leaves something out is the least it can be, and what it leaves the most.
  const isAll = bill.leftOut.length === 0;
  if (wanted !== undefined)
    return `For a ${wanted.way} of ${plainNumber(wanted.percent)}% ask ${isAll ? '' : 'at least '}${printedMoney(wanted.price)} a ${label}`;
  if (isBreakEven) return stallLine(reply).replace(/\.$/, '');
  const most = isAll ? '' : 'at most ';
  if (sale?.anHour !== undefined && sale.anHour.minor < 0)
    return `At ${priceIn(sale, sale.priceMinor)} a ${label} loses you ${isAll ? '' : 'at least '}${priceIn(sale, -sale.anHour.minor)} an hour`;
  if (sale?.anHour !== undefined)
    return `At ${priceIn(sale, sale.priceMinor)} a ${label} earns you ${most}${printedMoney(sale.anHour)} an hour`;
  if (sale !== undefined)
    return `At ${priceIn(sale, sale.priceMinor)} a ${label} leaves ${most}${priceIn(sale, sale.leftMinor)}`;
  const least = isAll ? '' : 'at least ';
  if (bill.pieces === 1) return `One ${label} costs ${least}${priceIn(bill, eachMinor)}`;
  return `${bill.pieces} of them cost ${least}${priceIn(bill, bill.costMinor)}, ${priceIn(bill, eachMinor)} each`;
}

/** What is left of the price after fees and cost. */
function leftLine({ sale, fees, bill, wanted }: Cost): string {
  if (sale === undefined) return '';
  const percent = fees === undefined || fees.percent === 0 ? '' : ` (${plainNumber(fees.percent)}%)`;
  const fee = sale.feeMinor === 0 ? '' : ` after the fee${percent} of ${priceIn(bill, sale.feeMinor)}`;
  const share = `${plainNumber(sale.marginPercent, 0)}% of the price`;
  const hour =
    wanted === undefined || sale.anHour === undefined ? '' : ` It earns you ${printedMoney(sale.anHour)} an hour.`;
  return sale.leftMinor < 0
    ? `It loses ${priceIn(bill, -sale.leftMinor)}${fee}.${hour}`
    : `Left: ${priceIn(bill, sale.leftMinor)}${fee}, ${share}.${hour}`;
}

function stallLine({ stall, bill, label, sale }: Cost): string {
  const price = sale === undefined ? '' : ` at ${priceIn(sale, sale.priceMinor)}`;
  if (stall === undefined) return '';
  return stall.pieces === undefined
    ? `The stall at ${priceIn(bill, stall.minor)} is never paid${price}: a sale leaves nothing.`
    : `The stall at ${priceIn(bill, stall.minor)} is paid by ${label} ${stall.pieces}${price}.`;
}

const BLOCKS = 10;

/** A share as a bar with its number: nothing is told by the bar alone. */
function barOf(minor: number, of: number): string {
  const share = of === 0 ? 0 : minor / of;
  const blocks = minor === 0 ? 0 : Math.max(1, Math.round(share * BLOCKS));
  return `${'▰'.repeat(blocks)}${'▱'.repeat(BLOCKS - blocks)} ${plainNumber(100 * share, 0)}%`;
}

/** From here on hours tell more. */
const LONG_MINUTES = 180;

type Line = { name: string; minor: number; share: string };

function linesOf(reply: Cost, printing: Printing): Line[] {
  const { bill } = reply;
  const named = bill.lines.map((line) => ({ name: lineName(line, reply, printing), minor: line.minor }));
  const overhead = bill.overheadMinor ? [{ name: 'Overhead', minor: bill.overheadMinor }] : [];
  return [...named, ...overhead].map((line) => ({ ...line, share: barOf(line.minor, bill.costMinor) }));
}

function lineName({ id, quantity }: Bill['lines'][number], reply: Cost, { units }: Printing): string {
  const { balls, minutes, names } = reply;
  switch (id) {
    case BILLED.yarn:
      return balls === undefined ? `Yarn used, ${printedYarn(quantity, units)}` : `Yarn, ${counted(balls, 'ball')}`;
    case BILLED.packing:
      return 'Packing';
    case BILLED.time:
      return `Your time, ${inHours(minutes)}`;
    default:
      return capital(names[id] ?? id.replace(/_/g, ' '));
  }
}

/** `99 min`, `20 h 6 min`: the time billed, to the minute. */
function inHours(minutes: number): string {
  if (minutes < LONG_MINUTES) return `${minutes} min`;
  const rest = minutes % 60;
  return `${Math.floor(minutes / 60)} h${rest === 0 ? '' : ` ${rest} min`}`;
}

/** What has no price yet, told before what never has one here. */
function unpriced({ bill, names, fees, sale }: Cost): string {
  const missing = [
    ...bill.leftOut.map(({ id, is }) =>
      is === 'time' ? 'your time' : id === BILLED.yarn ? 'the yarn' : (names[id] ?? id.replace(/_/g, ' ')),
    ),
    ...(sale !== undefined && fees === undefined ? ['sales fees'] : []),
  ];
  return missing.length === 0 ? '' : `${joined(missing)}, since I know no price; `;
}

/** Lines of a rate card, as they are kept. */
export function ratesCard({ lead, rates, team, notes, assumed, offers }: ReplyOf<'rates'>, printing: Printing): Card {
  const isSet = offers.some(({ request }) => request.kind === 'undo');
  return plainCard(printed(lead, printing), {
    kept: !isSet,
    body: [...rates.map(rateLine), ...notes.map((words) => printed(words, printing))],
    facts: assumedFact(assumed, printing),
    offers,
    foot: [team ? 'It holds for every maker here who has said none of their own.' : 'Only you can see your rate card.'],
    sayings:
      rates.length === 0
        ? ['my time is 16 an hour', 'overhead is 1.50 an hour', 'zips are 1.20 each, ten for 9', 'card fee 1.7%']
        : [...(isSet ? ['undo', 'my rates'] : ['rate card form']), 'what does it cost'],
  });
}

function rateLine({ of, name, owner, value }: ReplyOf<'rates'>['rates'][number]): string {
  const [first, ...more] = value.prices;
  const price = first === undefined ? '' : printedPrice(first);
  const percent = value.percent === undefined ? '' : `${plainNumber(value.percent)}%`;
  const whose = owner === '' ? ", the team's" : '';
  switch (of) {
    case 'hour':
      return `Your time: ${price} an hour${whose}.`;
    case 'overhead':
      return `Overhead: ${percent === '' ? `${price} an hour` : `${percent} of what yarn, notions, packing and time cost`}${whose}.`;
    case 'packing':
      return `Packing: ${price} a piece${whose}.`;
    case 'fee':
      return `Fee: ${joined([percent, ...(first === undefined ? [] : [`${price} a sale`])].filter(Boolean))}${whose}.`;
    case 'stall':
      return `Stall: ${price} each time${whose}.`;
    case 'notion': {
      const packs = more.map((pack) => `, ${pack.count} for ${printedPrice(pack)}`).join('');
      const each = first === undefined || first.count === 1 ? `${price} each` : `${first.count} for ${price}`;
      return `${capital(name)}: ${each}${packs}${whose}.`;
    }
  }
}
