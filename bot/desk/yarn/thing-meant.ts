import { say, type Words } from '../../../core/index.js';
import type { Request, StockAsk } from '../../request.js';
import type { Lot } from '../../store/ports.js';
import { type At, type DeskAnswer, refusal } from '../desk.js';
import { sameName } from '../names.js';

/** A thing as it was asked for, the request again with the name that was meant, and how such a one is said. */
type Thing = Pick<StockAsk, 'kind' | 'way' | 'name' | 'dyeLot'> & {
  again: (name: string) => Request;
  example?: string;
};
type Named = { name: string; assumed: Words[] } | { answer: DeskAnswer };

/** The name meant: as typed, one known that has all its words, that of the lot, else the yarn in hand or used last. */
export async function nameMeant(thing: Thing, shelf: readonly Lot[], at: At): Promise<Named> {
  const lots = shelf.filter(({ kind }) => kind === thing.kind);
  const yarns = thing.kind === 'yarn' ? await at.store.yarns.of(at.maker.id) : [];
  if (thing.name !== undefined) return named(thing, thing.name, distinct([...lots, ...yarns]), at);
  const ofLot = distinct(lots.filter(({ dyeLot }) => thing.dyeLot !== undefined && sameName(dyeLot, thing.dyeLot)));
  if (ofLot.length > 1) return { answer: whichName(thing, ofLot, at) };
  const [name] = ofLot;
  if (name !== undefined) return { name, assumed: [] };
  const used = at.talk.subject?.on.yarn || (await at.store.profiles.of(at.maker.id))[0]?.yarn.name || '';
  if (used !== '') return { name: used, assumed: [say`of ${used}, the yarn used last`] };
  const [only, ...others] = distinct(lots);
  if (only === undefined || others.length > 0)
    return { answer: refusal(at, { code: 'no_yarn_named', example: thing.example }) };
  return { name: only, assumed: [say`of ${only}, the only yarn on the shelf`] };
}

function named(thing: Thing, typed: string, names: readonly string[], at: At): Named {
  const same = names.find((name) => isSameThing(name, typed, thing.kind));
  if (same !== undefined) return { name: same, assumed: [] };
  // A notion told anew by fewer words may be another; one that goes must be there.
  const isPart = thing.kind === 'yarn' || thing.way === 'take';
  const having = isPart ? names.filter((name) => wordsOf(typed).every((word) => wordsOf(name).includes(word))) : [];
  if (having.length > 1) return { answer: whichName(thing, having, at) };
  const [only] = having;
  if (only !== undefined) return { name: only, assumed: [say`${typed} read as ${only}`] };
  if (thing.way !== 'take') return { name: typed, assumed: [] };
  return { answer: refusal(at, { code: 'not_on_shelf', name: typed, dyeLot: thing.dyeLot ?? '', lots: [] }) };
}

const distinct = (things: readonly { name: string }[]): string[] => {
  const names = things.map(({ name }) => name).filter((name) => name !== '');
  return names.filter((name, i) => names.findIndex((other) => sameName(other, name)) === i);
};

/** Words of a name, one or several of a thing alike: `8 in zips`, `zip 8 in`. */
const wordsOf = (name: string): string[] =>
  name
    .toLowerCase()
    .split(/[\s-]+/)
    .map((word) => word.replace(/(?<=\p{L}{2})s$/u, ''));

/** True for names of one thing; those of notions in whatever order, in the singular or plural. */
export const isSameThing = (a: string, b: string, kind: Lot['kind']): boolean =>
  sameName(a, b) || (kind === 'notion' && wordsOf(a).sort().join(' ') === wordsOf(b).sort().join(' '));

const whichName = (thing: Thing, names: readonly string[], at: At): DeskAnswer => ({
  reply: {
    kind: 'question',
    asks: say`Which is it: ${names.join(' or ')}?`,
    because: say`Nothing is changed yet.`,
    examples: ['the first', 'never mind'],
    offers: names.map((name) => ({ button: name, request: thing.again(name) })),
  },
  talk: at.talk,
});
