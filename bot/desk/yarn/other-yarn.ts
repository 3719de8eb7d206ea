import {
  ballTex,
  chance,
  count,
  evidence,
  gauge,
  mass,
  pieceById,
  printedYarn,
  say,
  spacingMm,
  substitution,
  type Words,
  YARN_WEIGHTS,
  type YarnWeight,
  yarnWeightNamed,
} from '../../../core/index.js';
import { widthExample } from '../../examples.js';
import type { Ball, Profile } from '../../store/ports.js';
import { type At, type Desk, refusal } from '../desk.js';
import { capital, sameName } from '../names.js';
import { tried } from '../plan/planning.js';
import { whichSize } from '../plan/which-size.js';
import { asked } from '../question.js';
import { ballMeant, ballsOf } from './balls.js';

/** Another yarn for the plan in hand: by length, never by mass. Nothing is stored. */
export const otherYarnDesk: Desk<'other_yarn'> = async (request, at) => {
  const which = whichSize(at);
  if (which !== undefined) return which;
  const ask = at.talk.subject ?? (await at.store.plans.latest(at.maker.id))?.ask;
  const piece = pieceById(ask?.piece ?? '');
  if (ask === undefined || piece === undefined) return refusal(at, { code: 'no_plan_yet' });
  const { outcome, profile, measurements } = await tried(ask, piece, at);
  if (!outcome.ok) return refusal(at, ...outcome.problems);
  if (profile === undefined) throw new Error('a plan without a gauge');
  const made = outcome.value;
  const { stitch } = gauge(evidence(measurements));
  if (made.yarn === undefined || stitch === undefined)
    return asked(at, request, ['gauge'], {
      asks: say`How wide does your knitting come out?`,
      because: say`The yarn of a plan follows from the needles and your stitch width, and I have only rows so far.`,
      examples: [widthExample(at.maker.units), 'never mind'],
    });
  const name = request.yarn ?? 'the other yarn';
  const told = await ballMeant(request.ball, name, request, at);
  if ('answer' in told) return told.answer;

  const { loop, lengthM, cv } = made.yarn;
  const ball = asCore(told.ball);
  const known = await ownTex(profile, at);
  const tex = ballTex(ball);
  if (!tex.ok)
    return refusal(at, {
      code: 'amount_outside',
      label: 'Grams to 1000 m',
      given: (1000 * ball.massG) / ball.lengthM,
      min: 20,
      max: 20_000,
      unit: ' g',
    });
  const swapped = substitution({
    need: { lengthM: lengthM * made.pieces, cv },
    own: { tex: known ?? tex.value, loopMm: loop.mm, stitchMm: spacingMm(stitch) },
    ball,
    weight: await weightOf(request.yarn, at),
  });
  if (!swapped.ok) throw new Error('a ball with a count makes a yarn');
  const { balls, massG, chance: enough, tightness, need, notes } = swapped.value;
  const units = at.maker.units ?? 'in';
  const lines: Words[] = [
    say`The same ${printedYarn(need.lengthM, units)} as planned, by length: ${mass(massG)} of it${known === undefined ? say`` : say`, where your own yarn takes ${mass((need.lengthM * known) / 1000)}`}. Of ${count(balls, 'ball')}, enough: ${chance(enough)}.`,
    ...(known === undefined
      ? [
          say`I do not know what a ball of your own yarn holds, so cannot say how it will feel. Swatch ${count(60, 'row')} first.`,
        ]
      : [
          say`Tightness ${tightness.other.toFixed(1)}, yours ${tightness.own.toFixed(1)} at the same stitch.`,
          say`What to know: ${notes.slice(1).reduce((line, note) => say`${line}; ${note}`, notes[0] ?? say``)}.`,
        ]),
    ...told.assumed.map((note) => say`Assumed: ${note}.`),
    say`The rows stay those of your plan until you measure a swatch in it. Nothing was stored.`,
  ];
  const lead = say`${capital(name)} for the ${made.label.toLowerCase()}: ${count(balls, 'ball')} of ${mass(ball.massG)}`;
  return {
    reply: { kind: 'answer', lead, lines, examples: ['steps', 'my gauge'], offers: [] },
    talk: { ...at.talk, pending: undefined },
  };
};

const asCore = ({ massG, lengthMm }: Ball) => ({ massG, lengthM: lengthMm / 1000 });

async function ownTex({ yarn }: Profile, at: At): Promise<number | undefined> {
  if (yarn.tex !== undefined) return yarn.tex;
  const [ball] = await ballsOf(yarn.name, at);
  return ball && (1e6 * ball.massG) / ball.lengthMm;
}

/** Its category: as recorded, else as a word of its name says. */
async function weightOf(name: string | undefined, at: At): Promise<YarnWeight | undefined> {
  if (name === undefined) return undefined;
  const yarn = (await at.store.yarns.of(at.maker.id)).find((one) => sameName(one.name, name));
  if (yarn?.category !== undefined) return YARN_WEIGHTS.find(({ number }) => number === yarn.category);
  return name.split(/[\s-]+/).flatMap((word) => yarnWeightNamed(word) ?? [])[0];
}
