import { chanceEnough, ENOUGH, mass, type Plan, pieces, printedYarn, say, type Words } from '../../../core/index.js';
import { read } from '../../language/read.js';
import type { PlanAsk } from '../../request.js';
import { type At, type Desk, refusal } from '../desk.js';
import { capital, sameName } from '../names.js';
import { asked, gaugeQuestion } from '../question.js';
import { ballMeant } from '../yarn/balls.js';
import { freeOf } from '../yarn/lots.js';
import { basisOf, triedOn } from './planning.js';

/** Lines that a card bears with ease. */
const MOST_LINES = 10;
const MG_PER_G = 1000;
const MOST = { min: 0, max: 50_000 };

/** What a yarn is enough for: each kind in the size of its example, the one that takes most first. Nothing is stored. */
export const whatToMakeDesk: Desk<'what_to_make'> = async (request, at) => {
  if (request.massG !== undefined && !(request.massG >= MOST.min && request.massG <= MOST.max))
    return refusal(at, { code: 'amount_outside', label: 'Yarn', given: request.massG, ...MOST, unit: ' g' });
  const basis = await basisOf(request.yarn === undefined ? {} : { yarn: request.yarn }, at);
  const { profile } = basis;
  if (profile === undefined) return gaugeQuestion(request, at, request.yarn);
  const name = request.yarn ?? profile.yarn.name;
  const massG = request.massG ?? (await freeG(name, at));
  if (massG === undefined)
    return asked(at, request, ['left'], {
      asks: say`How much of it do you have?`,
      because: say`Nothing of ${name || 'your yarn'} is free on the shelf that I know of.`,
      examples: ['80 g', 'never mind'],
    });
  const tex = request.ball === undefined && sameName(name, profile.yarn.name) ? profile.yarn.tex : undefined;
  const told = tex === undefined ? await ballMeant(request.ball, name || 'your yarn', request, at) : undefined;
  if (told !== undefined && 'answer' in told) return told.answer;
  const gPerM = told === undefined ? (tex ?? 0) / 1000 : (1000 * told.ball.massG) / told.ball.lengthMm;

  const tries = pieces.map((piece) => {
    const ask = exampleAsk(piece.example);
    const outcome = ask && triedOn(basis, ask, piece).outcome;
    return { piece, made: outcome?.ok ? outcome.value : undefined };
  });
  const planned = tries.flatMap(({ piece, made }) =>
    made?.yarn === undefined ? [] : [{ piece, made, needM: made.yarn.lengthM }],
  );
  const fits = planned.filter(({ made }) => isEnough(made, massG / gPerM)).sort((a, b) => b.needM - a.needM);
  const others = tries.filter(({ made }) => made?.yarn === undefined).map(({ piece }) => piece.label.toLowerCase());
  const units = at.maker.units ?? 'in';
  const shown = fits.slice(0, MOST_LINES);
  const lines: Words[] = [
    ...shown.map(
      ({ piece, needM }) =>
        say`${capital(piece.example.replace(/^rows for /, ''))}: ${printedYarn(needM, units)}, ${mass(needM * gPerM)}.`,
    ),
    ...(fits.length > shown.length ? [say`And ${fits.length - shown.length} more, that take less.`] : []),
    ...(planned.length > fits.length
      ? [say`Too little for ${planned.length - fits.length} other kinds at such a size.`]
      : []),
    ...(others.length === 0 ? [] : [say`Not at such a size on your needles, so tell me one: ${others.join(', ')}.`]),
    say`Each is enough 95 times in 100, in your gauge${name === '' ? '' : ` in ${profile.yarn.name}`}.`,
    ...(request.yarn === undefined && name !== '' ? [say`Assumed: ${name}, the yarn used last.`] : []),
    ...(told?.assumed ?? []).map((note) => say`Assumed: ${note}.`),
  ];
  const of = name === '' ? say`${mass(massG)}` : say`${mass(massG)} of ${name}`;
  const lead =
    fits.length === 0 ? say`${of} is enough for none of my examples` : say`${of} is enough for ${fits.length} kinds`;
  const examples = shown.slice(0, 3).map(({ piece }) => piece.example);
  return {
    reply: {
      kind: 'answer',
      lead,
      lines,
      examples: [...examples, 'my shelf'],
      ...(request.massG === undefined && { isOwn: true as const }),
      offers: [],
    },
    talk: { ...at.talk, pending: undefined },
  };
};

const isEnough = ({ yarn }: Plan, lengthM: number): boolean =>
  yarn !== undefined && chanceEnough(yarn, [{ balls: 1, lengthM }]) >= ENOUGH;

/** What the example of a kind asks for, which is a size that makers want. */
function exampleAsk(example: string): PlanAsk | undefined {
  const [meaning] = read(example, { pieces, units: undefined, machines: [], yarns: [], holes: [] }).meanings;
  return meaning?.kind === 'plan' ? meaning.ask : undefined;
}

/** Yarn of a name on the shelf that is not set aside, in grams. */
async function freeG(name: string, at: At): Promise<number | undefined> {
  const lots = (await at.store.shelf.of(at.maker.id)).filter((lot) => lot.kind === 'yarn' && sameName(lot.name, name));
  const mg = lots.reduce((sum, lot) => sum + freeOf(lot), 0);
  return mg > 0 ? mg / MG_PER_G : undefined;
}
