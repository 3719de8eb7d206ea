import { type OnMachine, pieceById, plan, say } from '../../../core/index.js';
import { subjectOf } from '../../conversation.js';
import { widthExample } from '../../examples.js';
import { ORDINALS } from '../../language/readers/picks.js';
import type { MakersBench } from '../../reply.js';
import { isOfPiece, type PlanAsk, type Size } from '../../request.js';
import { ofSize, valuesOf } from '../../sizes.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { pieceQuestion, unitsQuestion } from '../question.js';
import { readAs, sizeName } from '../typed.js';
import { given, inUse } from './in-use.js';
import { benchOf, machinesOf, plannedOn, rankedFor } from './machines.js';
import { notPlanned } from './not-planned.js';
import { inUnitsOf } from './planning.js';

const MOST_OFFERS = 3;

/** What each of the maker's machines would make of a piece, best first. Nothing is stored. */
export const whichMachineDesk: Desk<'which_machine'> = async ({ ask: named }, at) => {
  const wanted = named ?? subjectOf(at.talk) ?? (await at.store.plans.latest(at.maker.id))?.ask;
  if (wanted === undefined) return refusal(at, { code: 'no_plan_yet' });
  const piece = pieceById(wanted.piece ?? '');
  if (piece === undefined) return pieceQuestion(wanted, at);

  const sized = inUnitsOf(wanted, at.maker.units);
  const bare = valuesOf(sized).find(({ is }) => is === 'bare');
  const request = { kind: 'which_machine' as const, ask: sized };
  if (bare !== undefined) return unitsQuestion(request, bare.said ?? '', at);
  if (sized.sizes !== undefined) return whichOfSizes(sized, sized.sizes, at);

  const benches = await machinesOf(wanted.on, at);
  const yarn = benches[0]?.profile.yarn.name;
  const ask: PlanAsk = { ...sized, on: { ...wanted.on, yarn } };
  const measurements = benches[0]?.measurements ?? [];
  // What is wrong whatever the needles is wrong with what was asked.
  const anywhere = plan({ piece, values: given(inUse(ask)), needles: undefined, measurements, pieces: 1 });
  if (!anywhere.ok) return notPlanned(request, anywhere.problems, at);

  const ranked = rankedFor(ask, piece, benches);
  const untold = benches.flatMap(({ machine }) => (machine.needles === undefined ? [machine] : []));
  const [best] = ranked;
  if (best === undefined) return noNeedles(at);
  const follows = named === undefined ? true : undefined;
  if (!best.outcome.ok && ranked.length + untold.length === 1)
    return notPlanned({ kind: 'plan', ask: { ...ask, on: benchOf(best.bench) }, follows }, best.outcome.problems, at);

  const able = ranked.filter(({ outcome }) => outcome.ok);
  const shown = (able.length > 0 ? able : [best]).slice(0, MOST_OFFERS);
  const offers = shown.map(({ bench }) => plannedOn(ask, bench, follows));
  const isAnswer = isOfPiece(at.talk.pending?.request);
  return {
    reply: {
      kind: 'machines',
      label: piece.label,
      ask,
      ranked,
      untold,
      assumed: readAs(Object.values(inUse(ask))),
      offers,
    },
    talk: {
      ...at.talk,
      subject: ask,
      ...(named !== undefined && { planId: undefined, rowsMake: rowsMakeOf(able) }),
      ...(isAnswer && { pending: undefined }),
    },
  };
};

/** The size that rows make on the machine that suits best. */
const rowsMakeOf = ([best]: readonly OnMachine<MakersBench>[]): string | undefined =>
  best?.outcome.ok ? best.outcome.value.landing.dimension : undefined;

/** Needles that make one of several sizes may not make another, so one is compared at a time. */
function whichOfSizes(ask: PlanAsk, sizes: readonly Size[], at: At): DeskAnswer {
  const names = sizes.map(sizeName);
  const offers = sizes.map((size, i) => ({
    button: sizeName(size),
    say: `the ${ORDINALS[i]}`,
    request: { kind: 'which_machine' as const, ask: ofSize(ask, size) },
  }));
  return {
    reply: {
      kind: 'question',
      asks: say`Which of the sizes should I compare?`,
      because: say`A machine that suits one may not suit another: ${names.join(', ')}.`,
      examples: offers.slice(0, 2).map((offer) => offer.say),
      offers,
    },
    talk: at.talk,
  };
}

const noNeedles = (at: At): DeskAnswer => ({
  reply: {
    kind: 'answer',
    lead: say`Needles decide it, and I know those of no machine yet`,
    lines: [say`Tell me how many a machine has, and how wide its tube lies flat.`],
    examples: [widthExample(at.maker.units)],
    offers: [],
  },
  talk: at.talk,
});
