/** Words for counts of the trade. */
export const COUNT_NOUNS: Record<string, 'rows' | 'stitches' | 'needles'> = {
  rows: 'rows',
  row: 'rows',
  rnds: 'rows',
  rnd: 'rows',
  rounds: 'rows',
  courses: 'rows',
  stitches: 'stitches',
  stitch: 'stitches',
  sts: 'stitches',
  st: 'stitches',
  wales: 'stitches',
  needles: 'needles',
  needle: 'needles',
  ndls: 'needles',
  ndl: 'needles',
  n: 'needles',
};

export const STATE_WORDS: Record<string, 'hanging' | 'rested' | 'washed'> = {
  hanging: 'hanging',
  hung: 'hanging',
  lifted: 'hanging',
  weighted: 'hanging',
  rested: 'rested',
  relaxed: 'rested',
  resting: 'rested',
  rest: 'rested',
  lying: 'rested',
  laid: 'rested',
  washed: 'washed',
  blocked: 'washed',
  laundered: 'washed',
};

/** Words that name a flat tube's width. */
export const FLAT_WORDS = ['flat', 'folded'];

/** Words that tell that a plan is wanted, not only a record. */
export const PLAN_WORDS = [
  'how',
  'many',
  'plan',
  'make',
  'making',
  'want',
  'need',
  'needs',
  'knit',
  'size',
  'fit',
  'fits',
  'for',
];

/** Other words of the trade and of asking, so that a typo is mended and a known word never is. */
export const TRADE_WORDS = [
  'gauge',
  'tension',
  'swatch',
  'machine',
  'yarn',
  'graft',
  'grafted',
  'grafting',
  'seam',
  'waste',
  'tail',
  'steps',
  'help',
  'undo',
  'inches',
  'centimetres',
  'rows',
  'stitches',
  'needles',
  'hanging',
  'rested',
  'washed',
  'measured',
  'measures',
  'closure',
  'zipper',
  'folded',
  'width',
  'height',
  'length',
  'across',
];

const EVERYDAY =
  `a able about above actually after again all almost already also always am an and another any anyone anything approx
approximately are around as ask at away back be because been before being below best better between big bit both bottom but by came can
cannot come comes could couple crank cranked cranking cut day days did do does doing done down each earlier edge edges either else end
ends enough even every exact exactly few fine finish finished first fits fold for from full get gets getting give gives go goes going
gonna good got had half hand has have having hello here hey hi hold holds how however i if im in inside instead into is isnt it its just keep
kept know large last later lay lays least left less let lets like little live long look looking lot made make makes making many
maybe me mean measure measured measures measuring medium might mine minus more most much must my myself near need needed needs never new
next nice no not nothing now of off oh ok okay old on once one only onto open or other our out over own pair per perhaps piece pieces plain
please plus probably put quite rather ready really right roughly round said same say see set several shall she should show side sides
since size sized sizes small so some something soon sort still stop such sure take taken takes tell than thank thanks that thats the their
them then there these they thing think this those though three through till time times to today together tomorrow too top total toward turn two
under until up us use used using usual usually very want wanted wants was way we week weeks well went were what whats when where which while who
whole why will wish with within without wont work works would yes yet you your yours youre tube panel market monday tuesday wednesday thursday
friday saturday sunday january february march april may june july august september october november december due ease easy loose looser
tight tighter thick thin heavy light lace bulky fine hers his him her rip start started finish colour color colours colors`.split(
    /\s+/,
  );

const known = new Set([
  ...EVERYDAY,
  ...TRADE_WORDS,
  ...Object.keys(COUNT_NOUNS),
  ...Object.keys(STATE_WORDS),
  ...FLAT_WORDS,
  ...PLAN_WORDS,
]);

/** True for a word that needs no explaining: everyday or of the trade. */
export const isKnownWord = (word: string): boolean => known.has(word);
