import {
  type Printing,
  percentOf,
  plainNumber,
  printed,
  printedChance,
  printedMass,
  printedYarn,
} from '../../core/index.js';
import { amountWords, freeOf } from '../desk/yarn/lots.js';
import { printedPrice } from '../money.js';
import type { Bought, Held } from '../replies/buy.js';
import type { ReplyOf } from '../reply.js';
import { assumedFact } from './assumed.js';
import { type Card, plainCard } from './card.js';
import { capital, counted, joined } from './names.js';
import { inGrams, inMetres, sourceLine } from './yarn.js';

type Reply = ReplyOf<'buy'>;

/** What to buy first, then what it is for, what the shelf gives towards it, how sure, and what would be cheaper. */
export function buyCard(reply: Reply, printing: Printing): Card {
  const { more, held, weighed, mixed, one, assumed, notes, offers } = reply;
  const isToBuy = more !== undefined;
  return plainCard(leadOf(reply), {
    kept: true,
    body: [
      needLine(reply, printing),
      ...(held === undefined ? [] : [heldLine(held, printing), ...joinLine(reply, held)]),
      ...othersLine(reply, printing),
      ...(isToBuy ? heldAllLine(more, held, printing) : []),
      ...notes.map((words) => printed(words, printing)),
    ],
    facts: [
      {
        label: 'How sure',
        text: `${chanceText(reply)} Yarn: ${sourceLine(one).replace(/^W/, 'w').replace(/^F/, 'f')}`,
      },
      ...(weighed && more ? [{ label: 'Better', text: weighedText(weighed, more) }] : []),
      ...(mixed === undefined
        ? []
        : [{ label: 'Cheaper', text: `${boughtText(mixed)}, where the dye lots may differ in colour.` }]),
      ...assumedFact(assumed, printing),
    ],
    offers,
    sayings: [
      ...(offers.length === 0 ? [] : ['undo']),
      'balls for 20',
      'be 90% sure',
      'with a reserve for repairs',
      ...(held === undefined ? ['I have 3 of lot 12'] : ['my shelf']),
    ],
  });
}

function leadOf({ more, held, anew }: Reply): string {
  if (more !== undefined) return `Buy ${boughtText(more)}${held === undefined ? `, of one dye lot` : ofLot(held)}`;
  if (held === undefined) return `Buy ${boughtText(anew)}, of one dye lot`;
  return `Nothing to buy: ${held.lot.dyeLot === '' ? 'what you have' : `lot ${held.lot.dyeLot}`} is enough`;
}

const ofLot = ({ lot }: Held): string => (lot.dyeLot === '' ? ', of the lot you have' : `, of lot ${lot.dyeLot}`);

/** `4 packs of 10 and 2 balls of 50 g, €236.40`. */
function boughtText({ lines, price }: Bought): string {
  const cost = price === undefined ? '' : `, ${printedPrice(price)}`;
  return `${joined(lines.map(lineText))}${cost}`;
}

function lineText({ ball, balls, packs }: Bought['lines'][number]): string {
  const of = `of ${printedMass(ball.massG)}`;
  const isPacked = packs.some((pack) => pack.of > 1);
  if (!isPacked) return `${counted(balls, 'ball')} ${of}`;
  const told = packs.map((pack) =>
    pack.of === 1 ? counted(pack.count, 'ball') : `${counted(pack.count, 'pack')} of ${pack.of}`,
  );
  return `${counted(balls, 'ball')} ${of} (${joined(told)})`;
}

function needLine({ what, need, reserve, yarn }: Reply, printing: Printing): string {
  const mass = need.massG === undefined ? '' : `, ${inGrams(need.massG)}`;
  const kept = reserve === 0 ? '' : ` with ${percentOf(reserve)} for repairs`;
  const of = yarn === '' ? '' : ` of ${yarn}`;
  return `${capital(what)} ${what.startsWith('one ') ? 'takes' : 'take'} about ${inMetres(need.lengthM, printing)}${of}${mass}${kept}.`;
}

const heldLine = ({ lot, lengthM }: Held, printing: Printing): string =>
  `You have ${printed(amountWords(freeOf(lot), lot), printing)}${lot.dyeLot === '' ? '' : ` of lot ${lot.dyeLot}`} free: ${printedYarn(lengthM, printing.units)}.`;

/** A lot that cannot be completed is of no use beside a new one. */
const joinLine = ({ more, anew }: Reply, { lot }: Held): string[] =>
  more === undefined
    ? []
    : [
        `${lot.dyeLot === '' ? 'If that lot' : `If lot ${lot.dyeLot}`} is not to be had, buy ${boughtText(anew)}, all of one new lot: two lots may differ in colour.`,
      ];

const othersLine = ({ others }: Reply, printing: Printing): string[] =>
  others.length === 0
    ? []
    : [
        `Not counted, since lots may differ in colour: ${joined(others.map((lot) => `${lot.dyeLot === '' ? 'no lot named' : `lot ${lot.dyeLot}`}, ${printed(amountWords(freeOf(lot), lot), printing)}`))}.`,
      ];

function heldAllLine(more: Bought, held: Held | undefined, { units }: Printing): string[] {
  const all = more.lengthM + (held?.lengthM ?? 0);
  return [`${held === undefined ? 'They hold' : 'Together they hold'} ${printedYarn(all, units)}.`];
}

const chanceText = ({ more, held, anew, sure }: Reply): string =>
  `enough, ${printedChance((more ?? held ?? anew).chance)}; you want it to be ${plainNumber(100 * sure, 1)}% sure.`;

function weighedText(weighed: Bought, { balls }: Bought): string {
  const price = weighed.price === undefined ? '' : `, ${printedPrice(weighed.price)}`;
  return `weigh a swatch of 20 g or more. If it tells the same, ${counted(weighed.balls, 'ball')} will do${price}: ${balls - weighed.balls} fewer.`;
}
