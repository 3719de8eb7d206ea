import type { Driver, Stage } from '../core/index.js';

/** A part of the work as makers name it: all of a stage, or steps by their drivers, the first of these that a piece has. */
type BenchPart = { words: string; of: Stage | readonly (readonly Driver[])[] };

const part = (words: string, ...of: (readonly Driver[])[]): BenchPart => ({ words, of });

/** The parts that time is logged for, by name. `words` is the source of a regular expression. */
const BENCH_PARTS = {
  knitting: { words: 'knit(?:ted|ting)?|(?:at|on) the machine', of: 'knit' },
  finishing: { words: 'finishing|sewing (?:it )?up|making up|assembl(?:y|ing)|(?:at|on) the table', of: 'finish' },
  cranking: part('crank(?:ed|ing)?', ['crank']),
  'setting up': part('set(?:ting)? up|cast(?:ing)? on', ['set_up']),
  'changing yarn': part('chang(?:ing|ed) (?:the )?yarns?|yarn changes', ['change']),
  measuring: part('measuring', ['measure']),
  'taking off': part('taking (?:it )?off|running off', ['run_off']),
  seaming: part('seam(?:s|ing|ed)?|mattress stitch(?:ing)?', ['mattress'], ['graft', 'turn_for_graft']),
  grafting: part('graft(?:ed|ing)?', ['graft', 'turn_for_graft']),
  closure: part('(?:sewing in )?(?:the )?(?:zip(?:per)?s?|closures?)', ['pin_closure', 'sew_closure']),
  rings: part('rings?', ['ring']),
  straps: part('straps?', ['strap']),
  lining: part('linings?', ['lining']),
  hemming: part('hem(?:s|ming|med)?', ['hem']),
  stuffing: part('stuff(?:ing|ed)', ['stuff']),
  fringe: part('fring(?:es?|ing)', ['fringe']),
  buttons: part('buttons?', ['button', 'loop']),
  cords: part('cords?|drawstrings?', ['drawstring']),
  elastic: part('elastic', ['elastic']),
  pompoms: part('pom-?poms?', ['pompom']),
  ends: part('(?:weaving|sewing) in(?: (?:the )?ends)?|ends', ['weave_in']),
  border: part('borders?', ['border']),
  folding: part('folding', ['fold']),
  checking: part('checking', ['check']),
  'casting off': part('(?:cast(?:ing)?|bind(?:ing)?) off', ['cast_off']),
  gathering: part('gather(?:ing|ed)', ['gather']),
  'taking out waste': part('taking out (?:the )?waste(?: yarn)?', ['take_out_waste']),
} satisfies Record<string, BenchPart>;

export type BenchPartName = keyof typeof BENCH_PARTS;

export const BENCH_PART_NAMES = Object.keys(BENCH_PARTS) as [BenchPartName, ...BenchPartName[]];

export const benchPart = (name: BenchPartName): BenchPart => BENCH_PARTS[name];
