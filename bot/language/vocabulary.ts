import { aspects } from '../../core/index.js';

/** Words for counts of the trade. */
export const COUNT_NOUNS: Record<string, 'rows' | 'stitches' | 'needles'> = {
  rows: 'rows',
  row: 'rows',
  rws: 'rows',
  rw: 'rows',
  r: 'rows',
  rpi: 'rows',
  rnds: 'rows',
  rds: 'rows',
  rd: 'rows',
  rnd: 'rows',
  rounds: 'rows',
  courses: 'rows',
  stitches: 'stitches',
  stitch: 'stitches',
  sts: 'stitches',
  st: 'stitches',
  wales: 'stitches',
  spi: 'stitches',
  needles: 'needles',
  needle: 'needles',
  ndls: 'needles',
  ndl: 'needles',
  n: 'needles',
};

/** Words for one row, before its number: `row 40`. */
export const ROW_WORDS = ['row', 'rnd', 'rw', 'course'];

export const STATE_WORDS: Record<string, 'hanging' | 'rested' | 'washed'> = {
  hanging: 'hanging',
  hung: 'hanging',
  hangs: 'hanging',
  lifted: 'hanging',
  weighted: 'hanging',
  rested: 'rested',
  relaxed: 'rested',
  resting: 'rested',
  rest: 'rested',
  lying: 'rested',
  laid: 'rested',
  washed: 'washed',
  washing: 'washed',
  wash: 'washed',
  laundered: 'washed',
};

/** Words that name a flat tube's width. */
export const FLAT_WORDS = ['flat', 'folded'];

const LABELS = new Set<string>([...Object.keys(COUNT_NOUNS), ...FLAT_WORDS, ...Object.values(aspects).flat()]);

/** True for a word that names what a number measures or counts. */
export const isLabelWord = (word: string): boolean => LABELS.has(word);

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

/** Words that tell one yarn from another. Weights are standard terms of the trade and what makers say for them. */
export const YARN_WEIGHTS = new Set(
  'lace fingering sport dk worsted aran chunky fine light medium bulky thick thin heavy small'.split(' '),
);
export const FIBRES = new Set(
  'wool cotton linen alpaca mohair silk acrylic merino nylon bamboo cashmere hemp polyester'.split(' '),
);
export const COLOURS = new Set(
  `black white grey gray red blue green yellow orange purple pink brown navy teal cream beige gold silver ivory
maroon olive mustard charcoal turquoise violet lilac dark pale rust`.split(/\s+/),
);

/** Other words of the trade and of asking, so that a typo is mended and a known word never is. */
export const TRADE_WORDS = [
  'gauge',
  'tension',
  'swatch',
  'machine',
  'machines',
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
  'finished',
  'unravelled',
  'count',
  'counter',
  'weighs',
  'stripe',
  'stripes',
  'striped',
  'striping',
  'notions',
  'haberdashery',
  'checklist',
];

const EVERYDAY =
  `a w able about above actually after again all almost already also always am an and another any anyone anything approx
approximately are around as ask at away back be because been before being below best better between big bit both bottom but buy by came can
cannot come comes could couple cover covers crank cranked cranking cut day days did do does doing done down each earlier edge edges either else end
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
friday saturday sunday january february march april may june july august september october november december due ease easy loose looser wider
narrower taller longer deeper shorter bigger larger smaller higher broader fewer tight tighter thick thin heavy light lace fine hers his him her start started finish colour color colours colors
id ill im ive youd hows wanna pls plz thx ty cheers kindly hiya morning evening afternoon sorry yeah yep wondering wonder tried dont
add adding lose skip skipping drop remove omit change changed changing swap rather prefer knitted knitting dried dry
list notion short brief min max minimum maximum ish circa above up than lost track counts counters says shows reads weigh weighed unraveled frogged ripped pulled
scrap sewn meant cranked row tally dial setting compare compared suits suited versus vs against nearest closest different
recommend yards yds metres meters whether possibly idea wait matching course overnight trouble suggest hm hmm`.split(
    /\s+/,
  );

/** Ordinary words one slip away from a word of the trade: they are not typos, and stay themselves. */
const LOOKALIKES = new Set(
  `nation nations aground bans bars bass bats bays begs bogs brad bread breath brood bugs closed crutch deed deem deer dept edged gauze gouge graph
grift handing heap held hell helm hemp inched itches lengthen lengthy lone lung machined needled needless pane paned panes parse penal
poach poached poaches pooch porch porches pounce pulse pure puree purge purser pursue rang rented rind rinds rink robs rods roes rosy rots rung rungs
rusted scam seal seals sear seat seats seem seems sham sketches slam slams snitches spam steam steep stems stitched stops stretches swam swath switch
switches tale talk tally toil toll trail tuba tuber tubs tune tunes undone unto wade washer washes wasted wastes widen wife wine wipe
wire wise wished yard yawn zaps folder folds pouched clause finishes finisher furnished unrivalled court
counted county weight weights threw hanks cones cards socks`.split(/\s+/),
);

/** True for a word that could be a mistyped word of the trade. */
export const mayBeTypo = (word: string): boolean => !known.has(word) && !LOOKALIKES.has(word);

export const MONTHS =
  'january february march april may june july august september october november december jan feb mar apr jun jul aug sep sept oct nov dec'.split(
    ' ',
  );
/** What a number can count or date that is no size. */
export const NO_SIZE_WORDS = [
  ...MONTHS,
  ...'colour color colours colors day days week weeks month months year years time times side sides end ends edge edges'.split(
    ' ',
  ),
];

/** A side with more or less of it. Before a number it names the side; behind one it makes that a difference. */
export const COMPARATIVES: Record<string, string> = {
  wider: 'wide',
  narrower: 'wide',
  broader: 'wide',
  taller: 'tall',
  deeper: 'deep',
  higher: 'high',
  longer: 'long',
};

/** Words that make a number a difference from what was, which is no size either. */
export const MORE_WORDS =
  'more less fewer extra wider narrower taller longer deeper shorter bigger larger smaller higher broader'.split(' ');

const known = new Set([
  ...EVERYDAY,
  ...TRADE_WORDS,
  ...Object.keys(COUNT_NOUNS),
  ...Object.keys(STATE_WORDS),
  ...FLAT_WORDS,
  ...PLAN_WORDS,
  ...Object.values(aspects).flat(),
]);

const everyday = new Set(EVERYDAY);

/** True for a word of everyday speech, of whatever else it may be the name. */
export const isEveryday = (word: string): boolean => everyday.has(word);

/** True for a word that needs no explaining: everyday or of the trade. */
export const isKnownWord = (word: string): boolean => known.has(word);
