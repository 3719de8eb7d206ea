import { evidence, gauge, type Piece, say, type Words } from '../../../core/index.js';
import type { PlanAsk, Size, Value } from '../../request.js';
import { ofSize } from '../../sizes.js';
import { changesBetween } from '../changes.js';
import type { At, DeskAnswer } from '../desk.js';
import { MY_GAUGE, UNDO } from '../offers.js';
import { readAs, sizeName } from '../typed.js';
import { notPlanned } from './not-planned.js';
import { basisOf, triedOn } from './planning.js';
import { sizeOffers } from './which-size.js';

/**
 * Several sizes of a piece, each planned by itself on one machine in one yarn. Nothing but the talk is stored: a plan is
 * made once one size is chosen. Where none can be made, what stands in the way of the first.
 */
export async function sizesPlanned(
  wanted: PlanAsk,
  sizes: readonly Size[],
  piece: Piece,
  follows: boolean,
  at: At,
): Promise<DeskAnswer> {
  const basis = await basisOf(wanted.on, at);
  const tries = sizes.map((size) => ({ size, ...triedOn(basis, ofSize(wanted, size), piece) }));
  const [first] = tries;
  const ask: PlanAsk = { ...wanted, on: first?.ask.on ?? wanted.on };
  const { profile, measurements } = basis;
  if (profile === undefined || tries.every(({ outcome }) => !outcome.ok)) {
    const problems = first?.outcome.ok === false ? first.outcome.problems : [];
    const none = await notPlanned({ kind: 'plan', ask, follows }, problems, at);
    if (none.reply.kind !== 'problem') return none;
    const said = say`told of the first, ${first === undefined ? '' : sizeName(first.size)}; none of the ${sizes.length} sizes can be made`;
    return { ...none, reply: { ...none.reply, assumed: [...(none.reply.assumed ?? []), said] } };
  }
  const reply = {
    kind: 'sizes' as const,
    piece,
    sizes: tries.map(({ size, outcome }) => ({ name: sizeName(size), size, outcome })),
    ask,
    gauge: { ...profile, gauge: gauge(evidence(measurements)) },
    changed: follows ? changesBetween(at.talk.subject, ask) : [],
    assumed: [...readAs(typedOf(ask)), ...published(sizes)],
    notes: [...gapBetween(sizes), ...stripesOfEach(ask)],
    offers: [...sizeOffers(ask), ...(follows ? [UNDO] : []), MY_GAUGE],
  };
  const [rowsMake] = tries.flatMap(({ outcome }) => (outcome.ok ? [outcome.value.landing.dimension] : []));
  const subject: PlanAsk = { ...ask, focus: [] };
  return { reply, talk: { ...at.talk, subject, planId: undefined, rowsMake, pending: undefined, buying: undefined } };
}

const bodiesOf = (sizes: readonly Size[]): Value[] =>
  sizes.flatMap(({ values }) => Object.values(values).filter(({ body }) => body !== undefined));

/** What was typed; the sizes of persons are told of all together. */
const typedOf = ({ values, sizes = [] }: PlanAsk): Value[] => [
  ...Object.values(values),
  ...sizes.flatMap((size) => Object.values(size.values).filter(({ body }) => body === undefined)),
];

/** Where the sizes of persons are from. */
function published(sizes: readonly Size[]): Words[] {
  const people = bodiesOf(sizes).flatMap(({ body }) => body?.person.is ?? []);
  const children = people.includes('child') ? ['children by the published medians of their age'] : [];
  const adults = people.some((is) => is !== 'child') ? ['women and men by the means of a published survey'] : [];
  const all = [...children, ...adults];
  return all.length === 0 ? [] : [say`sizes of ${all.join(', ')}`];
}

/** Stripes meet otherwise in each size. */
const stripesOfEach = ({ stripes }: PlanAsk): Words[] =>
  stripes === undefined ? [] : [say`The stripes stand on the plan of each size.`];

const LAST_MONTHS = 60;

/** From the last age of the children's table to the adults there is no published size. */
function gapBetween(sizes: readonly Size[]): Words[] {
  const bodies = bodiesOf(sizes).flatMap(({ body }) => body ?? []);
  const last = bodies.find(({ person }) => person.is === 'child' && person.months === LAST_MONTHS);
  const hasAdult = bodies.some(({ person }) => person.is !== 'child');
  if (last === undefined || !hasAdult) return [];
  return [say`5 to 17 years: no published table; give the girth of the ${last.label}.`];
}
