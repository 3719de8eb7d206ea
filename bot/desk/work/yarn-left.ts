import {
  lasting,
  type Plan,
  pieceById,
  type RowChoice,
  reachableWindow,
  say,
  type Window,
  type Words,
  type YarnLeft,
  type YarnNeed,
  yarnToComeM,
} from '../../../core/index.js';
import { widthExample } from '../../examples.js';
import type { Offered } from '../../reply.js';
import type { PlanAsk, Request } from '../../request.js';
import type { Profile } from '../../store/ports.js';
import { type At, type Desk, type DeskAnswer, refusal } from '../desk.js';
import { sameName } from '../names.js';
import { tried } from '../plan/planning.js';
import { rowsHeld } from '../plan/stripes.js';
import { whichSize } from '../plan/which-size.js';
import { asked } from '../question.js';
import { ballMeant } from '../yarn/balls.js';
import { freeOf } from '../yarn/lots.js';
import { plannedWith, type WorkMeant, workMeant } from './work-meant.js';

type Asking = Request & { kind: 'yarn_left' };

/** More than a mill's cone holds. From memory. */
const MOST = { min: 0, max: 50_000 };
const MG_PER_G = 1000;
const UNNAMED = 'your yarn';

/** Yarn left → the rows it makes, whether it lasts, and what it still reaches; of the work in hand, else the plan. */
export const yarnLeftDesk: Desk<'yarn_left'> = async (request, at) => {
  const outside = amountProblems(request);
  if (outside.length > 0) return refusal(at, ...outside);
  const work = await workMeant(request, at);
  const which = work === undefined ? whichSize(at) : undefined;
  if (which !== undefined) return which;
  const ask = work?.ask ?? at.talk.subject ?? (await at.store.plans.latest(at.maker.id))?.ask;
  const piece = pieceById(ask?.piece ?? '');
  if (ask === undefined || piece === undefined) return refusal(at, { code: 'no_plan_yet' });
  const alone = work === undefined ? await tried(ask, piece, at) : undefined;
  const outcome = alone?.outcome ?? (work && (await plannedWith(work, at)));
  const profile = alone?.profile ?? work?.profile;
  if (outcome === undefined || profile === undefined) return refusal(at, { code: 'no_plan_yet' });
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  const made = outcome.value;
  if (made.yarn === undefined) return stitchQuestion(request, at);

  const told = request.massG ?? request.lengthMm ?? request.balls;
  const counted =
    request.balls === undefined ? undefined : await ballMeant(request.ball, profile.yarn.name || UNNAMED, request, at);
  if (counted !== undefined && 'answer' in counted) return counted.answer;
  const toldG = counted === undefined ? request.massG : counted.ball.massG * (request.balls ?? 0);
  const massG = told === undefined ? await onShelfG(work, profile, at) : toldG;
  if (told === undefined && massG === undefined) return amountQuestion(request, at);
  const perM =
    massG === undefined ? { value: undefined, assumed: [] } : await gramsPerM(request, made.yarn, profile, at);
  if ('answer' in perM) return perM.answer;

  const from = told === undefined ? ('shelf' as const) : ('told' as const);
  const row = from === 'told' ? (work?.work.rows ?? 0) : 0;
  const stopAt = work?.work.stopAt ?? made.rows;
  const yarn = yarnLeft(massG ?? (request.lengthMm ?? 0) / 1000, made, made.yarn, perM.value, row > 0);
  const lasts = lasting(yarn, row, stopAt);
  const reach = lasts.lasts ? undefined : reachable(made, ask, row + lasts.promised);
  const offers = reach === undefined ? [] : offersOf(reach, ask, made, work);
  const unit = massG === undefined ? ('m' as const) : ('g' as const);
  const shown = { ...lasts, plan: made, ask, yarn, unit, from, at: row, stopAt, reach, assumed: perM.assumed };
  const talk = { ...at.talk, ...(work && { workId: work.work.id }), pending: undefined };
  return { reply: { kind: 'yarn_left', ...shown, offers }, talk };
};

const amountProblems = ({ massG, lengthMm = 0, balls }: Asking) => {
  if (balls !== undefined && balls < 0)
    return [{ code: 'amount_outside' as const, label: 'Balls left', given: balls, ...MOST, unit: '' as const }];
  const given = massG ?? lengthMm / 1000;
  const unit = massG === undefined ? (' m' as const) : (' g' as const);
  const isIn = given >= MOST.min && given <= MOST.max;
  return isIn ? [] : [{ code: 'amount_outside' as const, label: 'Yarn left', given, ...MOST, unit }];
};

/** What a row takes and what must be kept back for the rest of one part, in grams where the grams to a metre are given. */
function yarnLeft(left: number, plan: Plan, { loop }: YarnNeed, gPerM: number | undefined, isBegun: boolean): YarnLeft {
  const { needles = 0, parts, rows, steps } = plan;
  const toComeM = yarnToComeM(steps, loop.mm, needles * rows * parts, isBegun) / parts;
  const rowM = (needles * loop.mm) / 1000;
  const per = gPerM ?? 1;
  const cv = gPerM === undefined ? loop.cv : (loop.gPerStitch?.cv ?? loop.cv);
  return { left, toCome: toComeM * per, perRow: rowM * per, cv };
}

/** By what a stitch was found to weigh, else by the yarn's count, else by its ball: or the question what that holds. */
async function gramsPerM(
  request: Asking,
  { loop }: YarnNeed,
  { yarn }: Profile,
  at: At,
): Promise<{ value: number; assumed: Words[] } | { answer: DeskAnswer }> {
  if (loop.gPerStitch !== undefined) return { value: (1000 * loop.gPerStitch.value) / loop.mm, assumed: [] };
  if (yarn.tex !== undefined && request.ball === undefined) return { value: yarn.tex / 1000, assumed: [] };
  const meant = await ballMeant(request.ball, yarn.name || UNNAMED, request, at);
  if ('answer' in meant) return meant;
  return { value: (1000 * meant.ball.massG) / meant.ball.lengthMm, assumed: meant.assumed };
}

/** What was set aside for the work and what is free of its lots, else all that is free of the yarn, in grams. */
async function onShelfG(work: WorkMeant | undefined, { yarn }: Profile, at: At): Promise<number | undefined> {
  const moves = work === undefined ? [] : await at.store.shelf.movesFor(work.work.id);
  const asideMg = moves.reduce((sum, { aside }) => sum + aside, 0);
  const lots = (await at.store.shelf.of(at.maker.id)).filter(
    (lot) =>
      lot.kind === 'yarn' &&
      (asideMg > 0 ? moves.some(({ lotId }) => lotId === lot.id) : sameName(lot.name, yarn.name)),
  );
  const freeMg = lots.reduce((sum, lot) => sum + freeOf(lot), 0);
  return asideMg + freeMg > 0 ? (asideMg + freeMg) / MG_PER_G : undefined;
}

function reachable(plan: Plan, ask: PlanAsk, most: number): (Window & RowChoice) | undefined {
  const measure = plan.sizes.find(({ id }) => id === plan.landing.dimension)?.measure;
  if (measure === undefined) return undefined;
  const row = plan.work?.pitch ?? plan.onMachine.row;
  return reachableWindow(plan.landing, measure, row, most, rowsHeld(ask.stripes, plan));
}

/** Work is stopped earlier; a plan that is not begun is made smaller, where its size is asked for by its own name. */
function offersOf(
  { rows, loMm, hiMm }: Window & RowChoice,
  ask: PlanAsk,
  plan: Plan,
  work: WorkMeant | undefined,
): Offered[] {
  if (work !== undefined) {
    const request = { kind: 'set_stop' as const, rows, workId: work.work.id };
    return rows > work.work.rows ? [{ button: `Stop at Row ${rows}`, say: `stop at ${rows}`, request }] : [];
  }
  const { dimension } = plan.landing;
  const field = pieceById(plan.piece)?.asks[dimension];
  if (field?.is !== 'window' || loMm < field.minMm || hiMm > field.maxMm) return [];
  const values = { ...ask.values, [dimension]: { is: 'window' as const, loMm, hiMm } };
  return [{ button: 'Make It Smaller', request: { kind: 'plan', follows: true, ask: { ...ask, values } } }];
}

const amountQuestion = (request: Asking, at: At): DeskAnswer =>
  asked(at, request, ['left'], {
    asks: say`How much yarn is left?`,
    because: say`Weigh it, cone and all less the empty cone, or tell me its length; then I count the rows it makes.`,
    examples: [at.maker.units === 'cm' ? '40 m' : '45 yd', '38 g', 'never mind'],
  });

const stitchQuestion = (request: Asking, at: At): DeskAnswer =>
  asked(at, request, ['gauge'], {
    asks: say`How wide does your knitting come out?`,
    because: say`What a row takes follows from the needles and your stitch width, and I have only rows so far.`,
    examples: [widthExample(at.maker.units), 'never mind'],
  });
