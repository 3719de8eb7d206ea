import { type Gauge, MM_PER, say, spacingMm, unusualFor, type Words, YARN_WEIGHTS } from '../../../core/index.js';
import type { Yarn } from '../../store/ports.js';

/** A stitch gauge far outside what the standard gives for the yarn's category: named, never refused. */
export function yarnNotes({ category }: Pick<Yarn, 'category'>, { stitch }: Gauge): Words[] {
  const weight = YARN_WEIGHTS.find(({ number }) => number === category);
  if (weight === undefined || stitch === undefined) return [];
  const stitches = (4 * MM_PER.in) / spacingMm(stitch);
  const unusual = unusualFor(weight, stitches);
  if (unusual === undefined) return [];
  const { name, number, from, to } = weight;
  const way = stitches < from ? 'looser' : 'tighter';
  return [
    say`Unusual for ${name.toLowerCase()} yarn (${number}): ${stitches.toFixed(1)} stitches to 4 in, ${Math.round(100 * unusual.beyond)}% ${way} than the standard's ${from} to ${to}. Those are for hand knitting, and hand-cranked machines knit looser; if the yarn is another weight, say so.`,
  ];
}
