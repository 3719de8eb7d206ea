import { say, type Words } from '../../../core/index.js';
import type { BotProblem } from '../../problems.js';
import type { BallAsk, Request } from '../../request.js';
import type { Ball } from '../../store/ports.js';
import { type At, type DeskAnswer, refusal } from '../desk.js';
import { isOfMoney, type OfMoney } from '../money/prices.js';
import { sameName } from '../names.js';
import { asked } from '../question.js';

/** A request that may need to know what a ball holds. */
type OfBall = OfMoney | Extract<Request, { kind: 'yarn_left' | 'other_yarn' | 'what_to_make' }>;

/** A ball of the finest yarn to a cone for a mill. From memory. */
const BALL_G = { min: 1, max: 5000 };
const BALL_M = { min: 1, max: 50_000 };

/** What a ball cannot be. */
function ballProblems({ massG, lengthMm }: BallAsk): BotProblem[] {
  const m = lengthMm === undefined ? undefined : lengthMm / 1000;
  return [
    ...(massG === undefined || isIn(massG, BALL_G)
      ? []
      : [{ code: 'amount_outside' as const, label: 'Weight of a ball', given: massG, ...BALL_G, unit: ' g' as const }]),
    ...(m === undefined || isIn(m, BALL_M)
      ? []
      : [{ code: 'amount_outside' as const, label: 'Yarn in a ball', given: m, ...BALL_M, unit: ' m' as const }]),
  ];
}

const isIn = (value: number, { min, max }: { min: number; max: number }): boolean => value >= min && value <= max;

/** What a ball of a yarn holds: as told, else as known of it and said so; or the question. */
export async function ballMeant(
  told: BallAsk | undefined,
  name: string,
  request: OfBall,
  at: At,
): Promise<{ ball: Ball; assumed: Words[] } | { answer: DeskAnswer }> {
  const { massG, lengthMm } = told ?? {};
  const problems = ballProblems(told ?? {});
  if (problems.length > 0) return { answer: refusal(at, ...problems) };
  if (massG !== undefined && lengthMm !== undefined) return { ball: { massG, lengthMm }, assumed: [] };
  const known = (await ballsOf(name, at)).find(
    (ball) => (massG ?? ball.massG) === ball.massG && (lengthMm ?? ball.lengthMm) === ball.lengthMm,
  );
  if (known !== undefined) return { ball: known, assumed: [say`a ball holds what it did before`] };
  return { answer: ballQuestion(told ?? {}, name, request, at) };
}

/** Balls of a yarn that were told of, on the shelf or as it is sold, those told last first. */
export async function ballsOf(name: string, at: At): Promise<Ball[]> {
  const lots = (await at.store.shelf.of(at.maker.id)).filter((lot) => lot.kind === 'yarn' && sameName(lot.name, name));
  const yarn = (await at.store.yarns.of(at.maker.id)).find((one) => sameName(one.name, name));
  const putUps = yarn === undefined ? [] : await at.store.putUps.of(yarn.id);
  return [...putUps.map(({ ball }) => ball).reverse(), ...lots.flatMap(({ ball }) => ball ?? [])];
}

function ballQuestion({ massG, lengthMm }: BallAsk, name: string, request: OfBall, at: At): DeskAnswer {
  const isInches = at.maker.units === 'in';
  const [example, asks] =
    massG !== undefined
      ? [isInches ? '115 yd' : '105 m', say`How long is the yarn in a ball of ${name}?`]
      : lengthMm !== undefined
        ? ['50 g', say`What does a ball of ${name} weigh?`]
        : [
            isInches ? '50 g / 115 yd' : '50 g / 105 m',
            say`What does a ball of ${name} weigh, and how long is its yarn?`,
          ];
  return asked(at, request, ['ball'], {
    asks,
    because: isOfMoney(request)
      ? say`It stands on the band. I count balls in grams, and plans in metres; I ask for it once.`
      : say`It stands on the band. Rows take metres, and yarn is weighed in grams.`,
    examples: [example, 'never mind'],
  });
}
