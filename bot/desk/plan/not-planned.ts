import {
  type Panels,
  type Piece,
  type Problem,
  panelsInWords,
  pieceById,
  pieces,
  say,
  type Words,
} from '../../../core/index.js';
import { ORDINALS } from '../../language/readers/picks.js';
import type { Offered } from '../../reply.js';
import type { OfPiece, PlanAsk, Value } from '../../request.js';
import { ofSize } from '../../sizes.js';
import type { At, DeskAnswer } from '../desk.js';
import { gaugeQuestion, sizeQuestion, widthQuestion } from '../question.js';
import { readAs } from '../typed.js';
import { inUse } from './in-use.js';
import { elsewhere } from './machines.js';
import { tried } from './planning.js';
import { ifMeant, sizeMeantBy } from './sizes-meant.js';

/** A request whose piece is named. */
type Asked = OfPiece & { ask: PlanAsk };

/** A way out of a refusal: what it is called, and the offer that takes it. */
type Way = { label: Words; offer: Offered };

const MOST_WAYS = 3;
/** Beside other machines there is room for a way on this one. */
const MOST_MACHINES = 2;

/** Problems that other needles may solve. */
const OF_NEEDLES: readonly Problem['code'][] = ['needles_set_it', 'too_many_needles', 'contents_too_big'];

/** Why a plan cannot be: the one question that would make it one, or the problems with the ways out that work best. */
export async function notPlanned(request: Asked, problems: readonly Problem[], at: At): Promise<DeskAnswer> {
  const { ask } = request;
  const missing = problems.find((problem) => problem.code === 'missing');
  const others = problems.filter((problem) => problem.code !== 'missing');
  const [first] = others;
  if (first === undefined && missing !== undefined) return sizeQuestion(request, missing, problems.length === 1, at);
  if (others.length === 1 && first?.code === 'no_row_gauge')
    return gaugeQuestion(request, at, ask.on.yarn || undefined);
  if (others.length === 1 && first?.code === 'no_stitch_gauge') return widthQuestion(request, at);
  const ways = await waysOut(request, others, at);
  const offers = ways.map(({ offer }, i) => ({ ...offer, say: offer.say ?? `the ${ORDINALS[i]}` }));
  return {
    reply: {
      kind: 'problem',
      problems: others,
      ways: ways.map(({ label }) => label),
      offers,
      assumed: readAs(Object.values(inUse(ofFirst(ask)))),
    },
    talk: at.talk,
  };
}

/** Other machines that fit come first, then what this one makes otherwise, then flat panels in the place of a tube. */
async function waysOut(request: Asked, problems: readonly Problem[], at: At): Promise<Way[]> {
  const { ask } = request;
  const piece = pieceById(ask.piece ?? '');
  const isOfNeedles = problems.every(({ code }) => OF_NEEDLES.includes(code));
  const machines = piece && isOfNeedles ? await onOthers(request, piece, at) : [];
  const own = problems.flatMap((problem) => ('offers' in problem ? problem.offers : []));
  const edits = own.map(({ label, edit }, i): Way => {
    const changed = { ...request, ask: byWay(ask, edit) };
    return { label, offer: { button: `Way ${i + 1}`, request: changed } };
  });
  const [only, ...more] = problems;
  if (more.length === 0 && only?.code === 'length_out_of_range' && ask.sizes === undefined) {
    const slip = sizeMeantBy(ask, only);
    if (slip !== undefined) {
      const values = { ...ask.values, [only.field.id]: slip.value };
      const offer = { button: slip.said, say: slip.said, request: { ...request, ask: { ...ask, values } } };
      return [{ label: ifMeant(slip), offer }];
    }
  }
  const inPanels = problems.flatMap((problem) => ('panels' in problem && problem.panels) || []);
  const panels = await Promise.all(inPanels.map((made) => fromPanels(ofFirst(ask), made, at)));
  return [...machines, ...edits, ...panels.flat()].slice(0, MOST_WAYS);
}

async function onOthers(request: Asked, piece: Piece, at: At): Promise<Way[]> {
  const follows = request.kind === 'plan' ? request.follows : undefined;
  const found = await elsewhere(request.ask, piece, at, follows);
  return found.slice(0, MOST_MACHINES).map(({ name, made, offer }) => ({ label: say`on ${name}, ${made}`, offer }));
}

/** The panels that would do, as a plan of the kind that is nothing but panels. */
async function fromPanels(ask: PlanAsk, panels: Panels, at: At): Promise<Way[]> {
  const kind = pieces.find(({ ofPanels }) => ofPanels !== undefined);
  if (kind?.ofPanels === undefined) return [];
  const asPanels = { ...ask, piece: kind.id, values: kind.ofPanels(panels) };
  const { outcome } = await tried(asPanels, kind, at);
  const offer: Offered = { button: 'Panels', request: { kind: 'plan', ask: asPanels } };
  return outcome.ok ? [{ label: panelsInWords(panels), offer }] : [];
}

/** One level deep: a value is replaced whole, null removes it. */
function edited(values: Record<string, Value>, edit: Record<string, Value | null>): Record<string, Value> {
  const kept = Object.entries({ ...values, ...edit });
  return Object.fromEntries(kept.flatMap(([id, value]) => (value === null ? [] : [[id, value]])));
}

/** The first of several sizes alone. */
const ofFirst = (ask: PlanAsk): PlanAsk => (ask.sizes?.[0] === undefined ? ask : ofSize(ask, ask.sizes[0]));

/** All sizes go that way, unless it changes what they differ in: then it is one for the first of them. */
function byWay(ask: PlanAsk, edit: Record<string, Value | null>): PlanAsk {
  const isOfOne = Object.keys(ask.sizes?.[0]?.values ?? {}).some((id) => id in edit);
  const to = isOfOne ? ofFirst(ask) : ask;
  return { ...to, values: edited(to.values, edit) };
}
