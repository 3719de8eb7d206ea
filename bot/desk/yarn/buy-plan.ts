import { type Needed, type Outcome, type Problem, pieceById, type YarnNeed } from '../../../core/index.js';
import type { PlanAsk } from '../../request.js';
import { ofSize } from '../../sizes.js';
import { type Basis, triedOn } from '../plan/planning.js';

/** Yarn of all the pieces, what one of them needs, and what they are: `20 pouches`. */
type NeedOfAll = { need: Needed & { massG: number | undefined }; one: YarnNeed; what: string };

/** Yarn needed for a plan, or for all its sizes. They are knitted alike, and so err together: the share stays. */
export function needOfAll(basis: Basis, ask: PlanAsk): Outcome<NeedOfAll> {
  const piece = pieceById(ask.piece ?? '');
  if (piece === undefined) throw new Error('a plan in hand without its piece');
  const asks = ask.sizes?.map((size) => ofSize(ask, size)) ?? [ask];
  const outcomes = asks.map((one) => triedOn(basis, one, piece).outcome);
  const problems = outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  const needs = outcomes.flatMap((outcome) => (outcome.ok && outcome.value.yarn ? [of(outcome.value.yarn, ask)] : []));
  const [first] = needs;
  if (first === undefined || needs.length < asks.length) return { ok: false, problems: widthless(problems) };
  const sum = (figure: (one: (typeof needs)[number]) => number): number =>
    needs.reduce((all, one) => all + figure(one), 0);
  const lengthM = sum((one) => one.lengthM);
  const isWeighed = needs.every(({ massG }) => massG !== undefined);
  return {
    ok: true,
    value: {
      need: {
        lengthM,
        cv: sum((one) => one.lengthM * one.cv) / lengthM,
        massG: isWeighed ? sum(({ massG = 0 }) => massG) : undefined,
      },
      one: first.yarn,
      what: whatOf(ask, piece.label.toLowerCase(), piece.isPair === true),
    },
  };
}

const of = (yarn: YarnNeed, { copies }: PlanAsk) => ({
  yarn,
  lengthM: yarn.lengthM * copies,
  cv: yarn.cv,
  massG: yarn.massG && yarn.massG * copies,
});

/** A plan without yarn lacks the width of a stitch. */
const widthless = (problems: readonly Problem[]): readonly Problem[] =>
  problems.length > 0 ? problems : [{ code: 'no_stitch_gauge', field: { id: 'yarn', label: 'Yarn' } }];

function whatOf({ copies, sizes }: PlanAsk, label: string, isPair: boolean): string {
  const pairs = isPair ? ' pairs' : '';
  if (sizes !== undefined) return copies === 1 ? `all ${sizes.length} sizes` : `${copies}${pairs} of each size`;
  return copies === 1 ? `one ${label}` : `${copies}${pairs} of them`;
}
