import {
  count,
  isRing,
  type Plan,
  type Stripe,
  say,
  spacingMm,
  striped,
  type Words,
  type YarnOutcome,
} from '../../../core/index.js';
import type { StripesShown } from '../../replies/stripes.js';
import type { PlanAsk, Stripes } from '../../request.js';

/** Stripes in whole rows as a plan makes them; so they stay while it is knitted, whatever becomes of the gauge. */
export function settled({ repeat, ...stripes }: Stripes, plan: Plan): Stripes {
  const rowMm = spacingMm(plan.onMachine.row);
  const even = Math.ceil(plan.landing.rowsInPiece / repeat.length);
  const rowsOf = ({ heightMm, rows = even, madeRows }: Stripes['repeat'][number]): number =>
    madeRows ?? (heightMm === undefined ? rows : Math.max(1, Math.round(heightMm / rowMm)));
  return { ...stripes, repeat: repeat.map((stripe) => ({ ...stripe, madeRows: rowsOf(stripe) })) };
}

/** The ask for a plan made anew: its stripes are to be settled again. */
export function unsettled({ stripes, ...ask }: PlanAsk): PlanAsk {
  if (stripes === undefined) return ask;
  return { ...ask, stripes: { ...stripes, repeat: stripes.repeat.map(({ madeRows: _, ...stripe }) => stripe) } };
}

const repeatOf = (stripes: Stripes, plan: Plan): Stripe[] =>
  settled(stripes, plan).repeat.map(({ colour, madeRows = 0 }) => ({ colour, rows: madeRows }));

/** Rows that the plan is to be held to: those of a repeat that must meet across a graft. */
export function rowsHeld(stripes: Stripes | undefined, plan: Plan): number | undefined {
  if (stripes?.meets !== true || !isRing(plan.steps)) return undefined;
  return repeatOf(stripes, plan).reduce((sum, { rows }) => sum + rows, 0);
}

/** The stripes that an ask has come to; undefined where it has none. */
export function stripesOf(
  { stripes }: Pick<PlanAsk, 'stripes'>,
  plan: Plan,
  rows = plan.rows,
): YarnOutcome<StripesShown> | undefined {
  if (stripes === undefined) return undefined;
  const repeat = repeatOf(stripes, plan);
  const made = striped({
    repeat,
    rows,
    ring: isRing(plan.steps),
    needles: plan.needles ?? 0,
    loopMm: plan.yarn?.loop.mm ?? 0,
  });
  if (!made.ok) return made;
  const shown = {
    ...made.value,
    repeat,
    times: plan.parts * plan.pieces,
    hasYarn: plan.yarn !== undefined,
    inRound: plan.tube !== undefined,
    met: undefined,
  };
  return { ok: true, value: shown };
}

/** What was made of stripes that were not told in rows. */
export function stripesRead({ stripes }: PlanAsk): Words[] {
  const [first, ...others] = stripes?.repeat ?? [];
  if (first === undefined) return [];
  const measured = [first, ...others].filter(({ heightMm }) => heightMm !== undefined);
  if (measured.length > 0) return [say`stripes in whole rows of your gauge: ${rowsInWords(measured)}`];
  return first.rows === undefined ? [say`even stripes: each colour once, ${first.madeRows ?? 0} rows of it`] : [];
}

const rowsInWords = (repeat: Stripes['repeat']): string =>
  repeat.map(({ colour, madeRows }) => `${madeRows} of ${colour}`).join(', ');

/** Which colour the next row is, and how far the next change is. */
export function colourAt({ runs, graftColour }: StripesShown, done: number): Words | undefined {
  const at = runs.findIndex(({ from, to }) => from <= done + 1 && done + 1 <= to);
  const run = runs[at];
  if (run === undefined) return graftColour === undefined ? undefined : say`Graft in ${graftColour}.`;
  const next = runs[at + 1];
  const isChange = run.from === done + 1 && done > 0;
  const on = isChange ? say`Change to ${run.colour} now, to row ${run.to}` : say`${run.colour} is on, to row ${run.to}`;
  return next === undefined ? say`${on}.` : say`${on}; then ${next.colour}, in ${count(run.to - done, 'row')}.`;
}
