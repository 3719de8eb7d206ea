import { done, refused } from '../problems.js';
import { G_PER, MM_PER } from '../units/units.js';
import type { YarnOutcome } from './problems.js';

const YD_M = MM_PER.yd / 1000;

/** The tex of a yarn of which one hank of so many yards weighs a pound. */
const poundHank = (yards: number): number => (1000 * G_PER.lb) / (yards * YD_M);

/** How tex and the figure of each system go together: direct ones grow with the yarn, the others as it gets finer. */
const SYSTEMS = {
  tex: { direct: 1 },
  denier: { direct: 9 },
  /** Metric: km to the kg. */
  metric: { indirect: 1000 },
  cotton: { indirect: poundHank(840) },
  worsted: { indirect: poundHank(560) },
  woollen_run: { indirect: poundHank(1600) },
  /** Yorkshire woollen. */
  woollen_skein: { indirect: poundHank(256) },
  linen: { indirect: poundHank(300) },
  m_per_100_g: { indirect: 100_000 },
  m_per_50_g: { indirect: 50_000 },
  yd_per_oz: { indirect: (1000 * G_PER.oz) / YD_M },
  yd_per_lb: { indirect: poundHank(1) },
} as const satisfies Record<string, { direct: number } | { indirect: number }>;

export type YarnCountSystem = keyof typeof SYSTEMS;

/** Finer is sewing thread, coarser is rope. From memory. */
const TEX = { min: 20, max: 20_000 };

/**
 * The tex of a yarn, grams to the 1000 m, from its count in another system. Worsted here is the count, not the category
 * of hand yarn.
 * @source ASTM D2260-03 (agrees with ISO 2947) for the hanks; ISO 1144 for tex; pound and yard exact
 * @returns problems `count_not_above_zero`, `tex_out_of_range`
 */
export function texOf(count: number, system: YarnCountSystem): YarnOutcome<number> {
  if (!(count > 0)) return refused({ code: 'count_not_above_zero', given: count });
  const way = SYSTEMS[system];
  const tex = 'direct' in way ? count / way.direct : way.indirect / count;
  return tex >= TEX.min && tex <= TEX.max
    ? done(tex)
    : refused({ code: 'tex_out_of_range', givenTex: tex, minTex: TEX.min, maxTex: TEX.max });
}

/** The count of a yarn in a system, from its tex, above 0. */
export function countOf(tex: number, system: YarnCountSystem): number {
  const way = SYSTEMS[system];
  return 'direct' in way ? tex * way.direct : way.indirect / tex;
}

/** A ball as its label says. */
export type Ball = { massG: number; lengthM: number };

/** The tex of a ball by its label; problems `empty_ball`, `tex_out_of_range`. */
export function ballTex({ massG, lengthM }: Ball): YarnOutcome<number> {
  return massG > 0 && lengthM > 0
    ? texOf((1000 * massG) / lengthM, 'tex')
    : refused({ code: 'empty_ball', massG, lengthM });
}
