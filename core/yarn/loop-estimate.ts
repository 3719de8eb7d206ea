import { sum } from '../gauge/estimate.js';
import { length, mass, say, type Words } from '../words.js';
import { guessCv, loopLengthMm, peirceLoopMm, type Relaxation } from './loop.js';

/**
 * What was weighed or drawn out of knitting. `otherMm` is yarn in what was weighed beside its stitches: tails and seams,
 * none in a swatch. `resolutionG` is what the scale reads to; without it the figure itself tells.
 */
export type LoopSample =
  | {
      is: 'weighed';
      stitches: number;
      massG: number;
      otherMm?: number | undefined;
      resolutionG?: number | undefined;
    }
  | { is: 'unravelled'; stitches: number; lengthMm: number };

/** What is known of a yarn beside gauge. */
export type YarnKnown = { tex?: number | undefined; samples?: readonly LoopSample[] | undefined };

/** A figure with its coefficient of variation, in its own unit. */
type Sure = { value: number; cv: number };

/** One way by which the yarn in a stitch was told. */
type LoopSource = { from: 'gauge' | 'weighed' | 'unravelled'; mm: number; cv: number };

/** The yarn in one stitch, from all that is known of it. */
export type LoopEstimate = {
  mm: number;
  cv: number;
  /** What was measured; gauge, where nothing was. */
  from: LoopSource['from'] | 'combined';
  sources: readonly LoopSource[];
  /** Another first guess from the same gauge, where the tex is known: lower on open fabric. */
  peirceMm: number | undefined;
  /** Set where two sources are further apart than they should be. */
  differing: { least: LoopSource; most: LoopSource } | undefined;
  /** Grams in a stitch, weighed. On the scale that buys the yarn the tex cancels, so its error is not in it. */
  gPerStitch: Sure | undefined;
};

/** What weighing and unravelling leave unsure. From memory. */
const WEIGHED_CV = 0.02;
const UNRAVELLED_CV = 0.03;
/** However many swatches: lot, scale and tension are each one unknown. From memory. */
const LEAST_CV = 0.01;
/** Sources further apart than this share are doubted. From memory. */
const DIFFERING = 0.25;

/** Below this a kitchen scale's own steps spoil the figure: 1 g of 20 g is 1.4 %. */
export const WEIGH_AT_LEAST_G = 20;

/** What a scale reads to, told from what it showed: whole grams, else tenths. */
const shownTo = (massG: number): number => (Number.isInteger(massG) ? 1 : 0.1);

/** How far a weighed mass may be off for its yarn: 2 %, and half a step of the scale either way. */
export const weighedCv = (massG: number, resolutionG: number = shownTo(massG)): number =>
  Math.hypot(WEIGHED_CV, resolutionG / (Math.sqrt(12) * massG));

/** Figures together by inverse variance in logs; undefined for none. */
export function combined(figures: readonly Sure[]): Sure | undefined {
  if (figures.length === 0) return undefined;
  const weight = sum(figures, ({ cv }) => cv ** -2);
  const mean = sum(figures, ({ value, cv }) => Math.log(value) * cv ** -2) / weight;
  return { value: Math.exp(mean), cv: Math.max(LEAST_CV, weight ** -0.5) };
}

/**
 * The yarn in one stitch, in mm, by gauge and by all that was weighed or unravelled, each as sure as it is.
 * @param fabric stitch width and row height in mm, in their state; a stitch width that is not known leaves gauge out
 * @param known tex and samples, each with stitches and amounts above 0
 * @returns undefined where nothing tells it. Weighing tells a length only with the tex, but the mass of a stitch always
 */
export function loopEstimate(
  { stitchMm, rowMm, state }: { stitchMm: number | undefined; rowMm: number; state: Relaxation },
  { tex, samples = [] }: YarnKnown = {},
): LoopEstimate | undefined {
  const guessMm = stitchMm && loopLengthMm(stitchMm, rowMm, state);
  const guess: LoopSource[] = guessMm ? [{ from: 'gauge', mm: guessMm, cv: guessCv(guessMm, tex) }] : [];
  const sources = [...guess, ...samples.flatMap((sample) => measured(sample, tex))];
  const loop = combined(sources.map(({ mm, cv }) => ({ value: mm, cv })));
  if (loop === undefined) return undefined;
  return {
    mm: loop.value,
    cv: loop.cv,
    from: told(sources),
    sources,
    peirceMm: stitchMm && tex && peirceLoopMm(stitchMm, rowMm, tex),
    differing: differing(sources),
    gPerStitch: combined(samples.flatMap((sample) => stitchMass(sample, loop.value))),
  };
}

function measured(sample: LoopSample, tex: number | undefined): LoopSource[] {
  if (sample.is === 'unravelled')
    return [{ from: 'unravelled', mm: sample.lengthMm / sample.stitches, cv: UNRAVELLED_CV }];
  if (tex === undefined) return [];
  const { stitches, massG, otherMm = 0, resolutionG } = sample;
  const mm = ((1e6 * massG) / tex - otherMm) / stitches;
  return mm > 0 ? [{ from: 'weighed', mm, cv: weighedCv(massG, resolutionG) }] : [];
}

const stitchMass = (sample: LoopSample, loopMm: number): Sure[] =>
  sample.is === 'unravelled'
    ? []
    : [
        {
          value: sample.massG / (sample.stitches + (sample.otherMm ?? 0) / loopMm),
          cv: weighedCv(sample.massG, sample.resolutionG),
        },
      ];

function told(sources: readonly LoopSource[]): LoopEstimate['from'] {
  const [first, ...others] = new Set(sources.map(({ from }) => from).filter((from) => from !== 'gauge'));
  return others.length > 0 ? 'combined' : (first ?? 'gauge');
}

function differing(sources: readonly LoopSource[]): LoopEstimate['differing'] {
  const [least, most] = [...sources].sort((a, b) => a.mm - b.mm).filter((_, i, all) => i === 0 || i === all.length - 1);
  return least && most && most.mm > least.mm * (1 + DIFFERING) ? { least, most } : undefined;
}

const BY = { gauge: 'by gauge', weighed: 'by weight', unravelled: 'unravelled' } as const;

/** The doubt about sources that differ, in words; none where they agree. */
export const doubts = ({ differing }: Pick<LoopEstimate, 'differing'>): Words[] =>
  differing === undefined
    ? []
    : [
        say`the yarn in ten stitches is ${length(10 * differing.least.mm)} ${BY[differing.least.from]} and ${length(10 * differing.most.mm)} ${BY[differing.most.from]}, which is far apart: weigh a swatch of ${mass(WEIGH_AT_LEAST_G)} or more to settle it`,
      ];
