import { say, type Words } from '../../../core/index.js';
import type { Request, StockAsk } from '../../request.js';
import type { Lot, LotOf } from '../../store/ports.js';
import { type At, type DeskAnswer, refusal } from '../desk.js';
import { sameName } from '../names.js';
import { asked } from '../question.js';
import { lotName } from './lots.js';
import { nameMeant } from './thing-meant.js';

/** The lots a request is about: those there are, or one that is new. */
export type StockMeant = { of: LotOf; lots: readonly Lot[]; assumed: readonly Words[]; notes: readonly Words[] };
type Found<T> = T | { answer: DeskAnswer };

/** Which thing on whose shelf is meant; or the question that settles it, or the answer that there is no such thing. */
export async function stockMeant(stock: StockAsk, at: At): Promise<Found<StockMeant>> {
  const shelf = (await at.store.shelf.of(at.maker.id)).filter(({ kind }) => kind === stock.kind);
  const again = (name: string): Request => ({ kind: 'stock', stock: { ...stock, name } });
  const named = await nameMeant({ ...stock, again }, shelf, at);
  if ('answer' in named) return named;
  const { name, assumed } = named;
  const ofName = shelf.filter((lot) => sameName(lot.name, name));
  const own = ofName.filter(({ owner }) => owner !== '');
  const isTeam =
    stock.team === true ||
    (stock.way === 'take' &&
      !own.some((lot) => lot.left > 0 && isOfLot(lot, stock)) &&
      ofName.some(({ owner }) => owner === ''));
  const lots = isTeam ? ofName.filter(({ owner }) => owner === '') : own;
  const of = { owner: isTeam ? '' : at.maker.id, kind: stock.kind, name, dyeLot: stock.dyeLot ?? '' };
  const meant = stock.dyeLot === undefined ? unnamedLot(stock, of, lots, at) : namedLot(stock, of, lots, at);
  return 'answer' in meant ? meant : { ...meant, assumed: [...assumed, ...meant.assumed] };
}

const isOfLot = ({ dyeLot }: Lot, stock: StockAsk): boolean =>
  stock.dyeLot === undefined || sameName(dyeLot, stock.dyeLot);

function namedLot(stock: StockAsk, of: LotOf, lots: readonly Lot[], at: At): Found<StockMeant> {
  const lot = lots.find((one) => isOfLot(one, stock));
  const others = lots.filter((one) => one !== lot && one.left > 0 && one.dyeLot !== '').map(({ dyeLot }) => dyeLot);
  if (lot !== undefined) return { of, lots: [lot], assumed: [], notes: [] };
  if (stock.way === 'take')
    return { answer: refusal(at, { code: 'not_on_shelf', name: of.name, dyeLot: of.dyeLot, lots: others }) };
  const beside =
    others.length === 0
      ? []
      : [say`A new lot beside lot ${others.join(' and ')}: two lots may differ in colour, so I keep them apart.`];
  return { of, lots: [], assumed: [], notes: beside };
}

/** No lot is named: the only one, the one without a lot, all of them where all went; else it is asked. */
function unnamedLot(stock: StockAsk, of: LotOf, lots: readonly Lot[], at: At): Found<StockMeant> {
  const held = lots.filter(({ left }) => left > 0);
  const plain = lots.find(({ dyeLot }) => dyeLot === '');
  const [only, ...others] = held;
  const meant = (meantLots: readonly (Lot | undefined)[], assumed: Words[] = [], notes: Words[] = []): StockMeant => ({
    of,
    lots: meantLots.flatMap((lot) => lot ?? []),
    assumed,
    notes,
  });
  if (stock.way === 'add') {
    const apart = held.filter(({ dyeLot }) => dyeLot !== '');
    const note = say`Kept apart from lot ${apart.map(({ dyeLot }) => dyeLot).join(' and ')}, since no lot was named.`;
    return meant([plain], [], apart.length === 0 ? [] : [note]);
  }
  if (stock.all && only !== undefined) return meant(held);
  if (others.length > 0) return { answer: whichLot(stock, held, at) };
  if (only !== undefined) return meant([only], only.dyeLot === '' ? [] : [say`${lotName(only)}, the only one`]);
  if (stock.way === 'set') return meant([plain]);
  if (lots.length > 0) return meant(lots.slice(0, 1));
  return { answer: refusal(at, { code: 'not_on_shelf', name: of.name, dyeLot: '', lots: [] }) };
}

function whichLot(stock: StockAsk, lots: readonly Lot[], at: At): DeskAnswer {
  return asked(at, { kind: 'stock', stock }, ['lot'], {
    asks: say`Which lot of ${lots[0]?.name ?? ''} is it?`,
    because: say`There is ${lots.map(({ dyeLot }) => (dyeLot === '' ? 'one without a lot' : `lot ${dyeLot}`)).join(', ')}. Nothing is changed yet.`,
    examples: [...lots.flatMap(({ dyeLot }) => (dyeLot === '' ? [] : `lot ${dyeLot}`)).slice(0, 2), 'never mind'],
    offers: lots.map(({ dyeLot }) => ({
      button: dyeLot === '' ? 'No Lot' : `Lot ${dyeLot}`,
      request: { kind: 'stock', stock: { ...stock, dyeLot } },
    })),
  });
}
