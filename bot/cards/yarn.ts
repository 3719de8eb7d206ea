import {
  G_PER,
  type LoopEstimate,
  leastBalls,
  otherUnits,
  type Plan,
  type Printing,
  percentOf,
  plainNumber,
  printedChance,
  printedLength,
  printedMass,
  printedYarn,
  WEIGH_AT_LEAST_G,
  type YarnNeed,
  type YarnParts,
} from '../../core/index.js';
import type { ReplyOf, YarnChange } from '../reply.js';
import type { Card } from './card.js';
import { counted, joined } from './names.js';
import { howMany, ofPairs } from './notions.js';

type Ball = NonNullable<ReplyOf<'plan'>['ball']>;

/** What tells the yarn in a stitch. */
const FROM = {
  gauge: 'from gauge alone',
  weighed: 'from what you weighed',
  unravelled: 'from what you unravelled',
  combined: 'from what you weighed and unravelled',
} as const;

/** `From what you weighed, give or take 2%.` */
export const sourceLine = ({ source, cv }: Pick<YarnNeed, 'source' | 'cv'>): string =>
  `${source === 'gauge' ? 'Worked out from gauge alone' : `F${FROM[source].slice(1)}`}, give or take ${percentOf(cv)}.`;

/** `61 g (2.2 oz)`. */
export const inGrams = (massG: number): string => `${printedMass(massG)} (${plainNumber(massG / G_PER.oz, 1)} oz)`;

/** `146 yd (133 m)`. */
export const inMetres = (m: number, { units }: Printing): string =>
  `${printedYarn(m, units)} (${printedYarn(m, otherUnits(units))})`;

/** The yarn of a plan among its facts, for all the pieces too. */
export function yarnFact(plan: Plan, { units }: Printing): Card['facts'] {
  const { yarn, pieces } = plan;
  if (yarn === undefined) return [];
  const pairs = ofPairs(plan);
  const mass = yarn.massG === undefined ? '' : ` (${printedMass(yarn.massG)})`;
  const waste = yarn.wasteM === 0 ? '' : `, and ${printedYarn(yarn.wasteM, units)} of waste yarn`;
  const about = `about ${printedYarn(yarn.lengthM, units)}${mass}${waste}`;
  const all =
    pieces === 1
      ? ''
      : ` each${pairs === '' ? '' : ' pair'}; for ${pieces === 2 ? 'both' : `all ${pieces}`}${pairs} about ${printedYarn(yarn.lengthM * pieces, units)}`;
  return [{ label: 'Yarn', text: `${about}${all}. ${sourceLine(yarn)}` }];
}

/** The yarn first, for a maker who asked for it: length, mass and balls of all the pieces. */
export function yarnLead({ yarn, ...plan }: Plan, printing: Printing, ball: Ball | undefined): string | undefined {
  if (yarn === undefined) return undefined;
  const { lengthM, massG } = ofAll(yarn, plan.pieces);
  const mass = massG === undefined ? '' : `, ${inGrams(massG)}`;
  const balls = ball === undefined ? '' : `: ${ballsOf(yarn, plan.pieces, ball).text}`;
  return `About ${printedYarn(lengthM, printing.units)} of yarn for ${howMany({ ...plan, yarn })}${mass}${balls}`;
}

/** What the yarn goes into, how sure it is, and what would make it surer. */
export function yarnFacts({ yarn, pieces }: Plan, printing: Printing, ball: Ball | undefined): Card['facts'] {
  if (yarn === undefined) return [];
  const { units } = printing;
  const parts = PARTS.flatMap(([part, name]) =>
    yarn.parts[part] === 0 ? [] : [`${name} ${printedYarn(yarn.parts[part], units)}`],
  );
  const all = `${inMetres(yarn.lengthM * pieces, printing)}${pieces === 1 ? '' : `, each ${printedYarn(yarn.lengthM, units)}`}: `;
  const waste = yarn.wasteM === 0 ? '' : ` Waste yarn, apart: ${printedYarn(yarn.wasteM, units)}, yours to use again.`;
  const held = ball && ballsOf(yarn, pieces, ball);
  const enough =
    held &&
    ` ${held.text} hold${held.balls === 1 ? 's' : ''} ${printedYarn(held.heldM, units)}: enough, ${printedChance(held.chance)}.`;
  return [
    { label: 'Yarn', text: `${all}${joined(parts)}.${waste}` },
    { label: 'How sure', text: `${sureText(yarn)}${enough ?? ''}` },
  ];
}

const PARTS: readonly (readonly [keyof YarnParts, string])[] = [
  ['rowsM', 'rows'],
  ['graftM', 'graft'],
  ['seamsM', 'seams and tails'],
  ['fringeM', 'fringe'],
  ['cordM', 'cord'],
  ['trimM', 'trims'],
];

const ofAll = ({ lengthM, massG }: YarnNeed, pieces: number) => ({
  lengthM: lengthM * pieces,
  massG: massG === undefined ? undefined : massG * pieces,
});

/** Whole balls of one kind that are enough 95 times in 100; pieces alike err together, so the share stays. */
function ballsOf({ lengthM, cv }: YarnNeed, pieces: number, ball: Ball) {
  const ballM = ball.lengthMm / 1000;
  const { balls, chance } = leastBalls({ lengthM: lengthM * pieces, cv }, ballM);
  return { balls, chance, heldM: balls * ballM, text: `${counted(balls, 'ball')} of ${printedMass(ball.massG)}` };
}

/** A swatch weighed with its yarn's count leaves about so much. */
const WEIGHED = 'about 2%';

function sureText({ source, cv, massCv, massG, loop }: YarnNeed): string {
  const of = `give or take ${percentOf(cv)}, ${FROM[source]}`;
  if (source !== 'gauge') return `${of}.`;
  if (loop.gPerStitch !== undefined && massG !== undefined)
    return `${of}; the grams give or take ${percentOf(massCv ?? cv)}, ${FROM.weighed}. What a ball weighs and holds would make the length as sure.`;
  return `${of}. A swatch of ${printedMass(WEIGH_AT_LEAST_G)} or more, weighed, would make it ${WEIGHED}.`;
}

/** What the yarn in a stitch is now, for a card on which it was measured; none by gauge alone. */
function loopText(loop: LoopEstimate, { units }: Printing): string | undefined {
  const { from, mm, cv, gPerStitch } = loop;
  if (from !== 'gauge')
    return `ten stitches take ${printedLength(10 * mm, units)}, ${FROM[from]}, give or take ${percentOf(cv)}.`;
  if (gPerStitch === undefined) return undefined;
  return `a hundred stitches weigh ${plainNumber(100 * gPerStitch.value, 1)} g, give or take ${percentOf(gPerStitch.cv)}. What a ball weighs and holds would tell their length.`;
}

/** What was learned of the yarn in a stitch, and what such a piece takes by it. */
export function learnedFact(
  loop: LoopEstimate | undefined,
  label: string,
  change: YarnChange,
  printing: Printing,
): Card['facts'] {
  const { was, now } = change;
  const told = loop && loopText(loop, printing);
  if (told === undefined) return [];
  const before =
    was === undefined || needText(was, printing) === (now && needText(now, printing))
      ? ''
      : `; it was ${needText(was, printing)}`;
  const next = now === undefined ? '' : ` A ${label.toLowerCase()} like it takes ${needText(now, printing)}${before}.`;
  return [{ label: 'Yarn', text: `${told}${next}` }];
}

const needText = ({ lengthM, massG, cv }: YarnNeed, { units }: Printing): string =>
  `about ${printedYarn(lengthM, units)}${massG === undefined ? '' : ` (${printedMass(massG)})`}, give or take ${percentOf(cv)}`;
