import { length, type Measurement, type Plan, pieceById, say, TENSION_REACH, type Words } from '../../../core/index.js';
import type { PlanAsk } from '../../request.js';
import { type At, type Desk, refusal } from '../desk.js';
import { planMeant } from './plan-meant.js';
import { basisOf, triedOn } from './planning.js';

/** Told where no change was named, in per cent. */
const USUAL = [5, 10];

/**
 * What the plan in hand comes to in looser or tighter knitting, its rows and stitches longer or shorter alike: the rows
 * for the same size, and what the needles then make. Nothing is stored: only a piece measured there tells what it is.
 */
export const looserDesk: Desk<'looser'> = async ({ way, percent }, at) => {
  const meant = await planMeant(at);
  if ('reply' in meant) return meant;
  const most = 100 * TENSION_REACH;
  if (percent !== undefined && !(percent > 0 && percent <= most))
    return refusal(at, { code: 'amount_outside', label: 'Tension', given: percent, min: 1, max: most, unit: '%' });
  const { plan, ask } = meant;
  const lines = await Promise.all(
    (percent === undefined ? USUAL : [percent]).map(async (by) => {
      const there = await plannedAt(ask, way === 'looser' ? 1 + by / 100 : 1 - by / 100, at);
      return there === undefined ? say`${by}% ${way}: it cannot be made so.` : line(there, by, way);
    }),
  );
  const more = way === 'looser' ? 'fewer' : 'more';
  return {
    reply: {
      kind: 'answer',
      lead: say`Knitted ${way} it takes ${more} rows for the same size`,
      lines: [
        say`Now: ${plan.rows} rows, ${sizes(plan)}.`,
        ...lines,
        say`Beyond about ${most}% stitches lose their shape. Set the machine, measure a piece on it and name the setting, such as "tension 7, 110 rows in 22 in"; then I plan with that.`,
      ],
      examples: ['what would help', 'my gauge'],
      offers: [],
      isOwn: true,
    },
    talk: { ...at.talk, subject: ask },
  };
};

async function plannedAt(ask: PlanAsk, times: number, at: At): Promise<Plan | undefined> {
  const piece = pieceById(ask.piece ?? '');
  const basis = await basisOf(ask.on, at);
  const measurements = basis.measurements.map((one) => stretched(one, times));
  const inYarn = basis.inYarn?.map((one) => stretched(one, times));
  const tried = piece && triedOn({ ...basis, measurements, inYarn }, ask, piece);
  return tried?.outcome.ok ? tried.outcome.value : undefined;
}

function stretched<T extends Measurement>(one: T, times: number): T {
  const { rows, stitches } = one;
  return {
    ...one,
    rows: rows && { ...rows, overMm: rows.overMm * times },
    stitches: stitches && { ...stitches, overMm: stitches.overMm * times },
  };
}

const line = (plan: Plan, by: number, way: string): Words => say`${by}% ${way}: ${plan.rows} rows, ${sizes(plan)}.`;

const sizes = ({ sizes: all }: Plan): Words =>
  all
    .flatMap(({ expectedMm, adjective }) => (expectedMm === undefined ? [] : [say`${length(expectedMm)} ${adjective}`]))
    .reduce((a, b) => say`${a} and ${b}`);
