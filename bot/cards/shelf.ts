import { type Printing, printed, printedMass, printedYarn } from '../../core/index.js';
import { sameName } from '../desk/names.js';
import { amountWords, freeOf } from '../desk/yarn/lots.js';
import { printedPrice } from '../money.js';
import type { ReplyOf } from '../reply.js';
import { assumedFact } from './assumed.js';
import { type Card, plainCard } from './card.js';
import { capital, counted, joined } from './names.js';

type Lot = ReplyOf<'shelf'>['lots'][number];
type Ball = NonNullable<Lot['ball']>;
type Price = NonNullable<Lot['price']>;

/** What became of a lot, in a line; what its ball holds and costs in another. */
export function stockedCard({ lead, notes, assumed, lots, offers }: ReplyOf<'stocked'>, printing: Printing): Card {
  const [first] = lots;
  return plainCard(capital(printed(lead, printing)), {
    body: [
      ...(first === undefined ? [] : ballLines(first, printing)),
      ...notes.map((words) => printed(words, printing)),
    ],
    facts: assumedFact(assumed, printing),
    offers,
    sayings: [...(offers.length === 0 ? [] : ['undo']), first?.owner === '' ? 'team shelf' : 'my shelf'],
  });
}

/** `50 g and 105 m a ball, €6.50 a ball.` */
function ballLines({ kind, ball, price }: Pick<Lot, 'kind' | 'ball' | 'price'>, printing: Printing): string[] {
  const each = kind === 'notion' ? 'each' : 'a ball';
  const told = [...(ball ? [ballWords(ball, printing)] : []), ...(price ? [`${printedPrice(price)} ${each}`] : [])];
  return told.length === 0 ? [] : [`${told.join(', ')}.`];
}

const ballWords = ({ massG, lengthMm }: Ball, { units }: Printing): string =>
  `${printedMass(massG)} and ${printedYarn(lengthMm / 1000, units)} a ball`;

/** The ways a yarn is sold. */
export function soldCard({ yarn, putUps, notes, assumed, offers }: ReplyOf<'sold'>, printing: Printing): Card {
  const [first] = putUps;
  const prices = putUps.flatMap(({ balls, price }) => (price === undefined ? [] : [priceWords(balls, price)]));
  const held = first === undefined ? [] : [ballWords(first.ball, printing)];
  return plainCard(`Noted: ${[yarn, ...held].join(', ')}`, {
    body: [
      ...(prices.length === 0 ? [] : [`${capital(prices.join('; '))}.`]),
      ...notes.map((words) => printed(words, printing)),
    ],
    facts: assumedFact(assumed, printing),
    offers,
    sayings: [...(offers.length === 0 ? [] : ['undo']), 'my shelf'],
  });
}

const priceWords = (balls: number, price: Price): string =>
  balls === 1 ? `${printedPrice(price)} a ball` : `${balls} balls for ${printedPrice(price)}`;

/** Yarns by name with their lots, then notions. */
export function shelfCard({ whose, lots, others, offers }: ReplyOf<'shelf'>, printing: Printing): Card {
  const yarns = lots.filter(({ kind }) => kind === 'yarn');
  const notions = lots.filter(({ kind }) => kind === 'notion');
  const names = yarns.filter(({ name }, i) => yarns.findIndex((lot) => sameName(lot.name, name)) === i);
  const what = joined([
    ...(names.length === 0 ? [] : [counted(names.length, 'yarn')]),
    ...(notions.length === 0 ? [] : [counted(notions.length, 'notion')]),
  ]);
  const isTeam = whose === 'team';
  const other = isTeam ? `Your own shelf holds more: say "my shelf".` : 'The team shelf holds more: say "team shelf".';
  return plainCard(`On ${isTeam ? "the team's" : 'your'} shelf: ${what}`, {
    kept: true,
    body: [
      ...names.map(({ name }) =>
        yarnLine(
          name,
          yarns.filter((lot) => sameName(lot.name, name)),
          printing,
        ),
      ),
      ...(notions.length === 0 ? [] : [`Notions: ${notions.map(notionWords).join(', ')}.`]),
      ...(others === 0 ? [] : [other]),
    ],
    offers,
    foot: [isTeam ? 'All makers of this workspace can see it and take from it.' : 'Only you can see your shelf.'],
    sayings: [...names.slice(0, 1).map(({ name }) => `used 20 g of ${name}`), 'undo'],
  });
}

/** The lots of a yarn; what all have in common is told once, at the end. */
function yarnLine(name: string, lots: readonly Lot[], printing: Printing): string {
  const [first] = lots;
  const alike = <K extends 'ball' | 'price'>(key: K): Lot[K] | undefined =>
    lots.every((lot) => JSON.stringify(lot[key]) === JSON.stringify(first?.[key])) ? first?.[key] : undefined;
  const common = { ball: alike('ball'), price: alike('price') };
  const held = lots.map((lot) => {
    const dye = lot.dyeLot === '' ? (lots.length === 1 ? '' : 'no lot named, ') : `lot ${lot.dyeLot}, `;
    const own = { ball: common.ball ? undefined : lot.ball, price: common.price ? undefined : lot.price };
    const told = ballLines({ kind: 'yarn', ...own }, printing).map((line) => `, ${line.replace(/\.$/, '')}`);
    return `${dye}${printed(amountWords(lot.left, lot), printing)}${told.join('')}${asideWords(lot)}`;
  });
  const all = ballLines({ kind: 'yarn', ...common }, printing).map((line) => ` ${line}`);
  return `${capital(name)}: ${held.join('; ')}.${all.join('')}`;
}

const asideWords = (lot: Lot): string =>
  lot.aside === 0
    ? ''
    : `, of it ${printedMass(lot.aside / 1000)} set aside and ${printedMass(freeOf(lot) / 1000)} free`;

const notionWords = ({ name, left, price }: Lot): string =>
  `${left} ${name}${price === undefined ? '' : ` (${printedPrice(price)} each)`}`;
