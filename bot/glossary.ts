/**
 * Terms of the trade, a plain sentence or two for each. In our own words; common practice, no source. `steps`: those of
 * a plan in which it matters.
 */
type Term = { words: readonly string[]; means: string; steps?: readonly string[] };

export const GLOSSARY: readonly Term[] = [
  {
    words: ['gauge', 'tension'],
    means:
      'How many rows and stitches your knitting has over a length. It differs by maker, machine and yarn, so I count in yours.',
  },
  {
    words: ['swatch', 'swatches'],
    means: 'A piece knitted to be measured. The more rows it has, the surer its gauge.',
  },
  {
    words: ['row', 'rows', 'course', 'courses', 'round', 'rounds'],
    means: 'One turn of the crank: every needle knits once. Rows add up to the length of the tube.',
  },
  {
    words: ['stitch', 'stitches', 'wale', 'wales'],
    means: 'One loop of one needle. Side by side, stitches make the width.',
  },
  { words: ['tube', 'tubes'], means: 'What the machine knits when it goes round and round on all its needles.' },
  {
    words: ['flat panel', 'panel', 'panels', 'flat knitting'],
    means: 'A flat piece, knitted to and fro on some of the needles, with an edge at each side.',
  },
  { words: ['flat width', 'flat'], means: 'How wide a tube lies when it is pressed flat: half of the way round it.' },
  {
    words: ['grafting', 'graft', 'grafted', 'kitchener stitch', 'kitchener'],
    means: 'Joining live stitches with a threaded needle so that the seam is a row of knitting and does not show.',
    steps: ['graft', 'shut'],
  },
  {
    words: ['graft row', 'grafting row', 'graft rows'],
    means: 'The row that grafting makes. It counts for the size, so you crank one row fewer.',
    steps: ['graft', 'shut'],
  },
  {
    words: ['waste yarn', 'scrap yarn', 'waste rows', 'waste'],
    means:
      'Yarn of another colour, knitted before and after the piece. It holds the stitches until they are joined, and is taken out again.',
    steps: ['waste_on', 'take_out_waste'],
  },
  {
    words: ['live stitches', 'open stitches', 'live stitch'],
    means: 'Stitches that nothing holds yet: they would run down if you pulled. Waste yarn keeps them.',
    steps: ['waste_on', 'take_out_waste'],
  },
  {
    words: ['cast on', 'casting on'],
    means: 'Putting the first loops on the needles, so that rows can follow.',
    steps: ['set_up'],
  },
  {
    words: ['cast off', 'casting off', 'bind off', 'binding off', 'bound off'],
    means: 'Finishing an edge by drawing each stitch through the next, so that it cannot run.',
    steps: ['cast_off'],
  },
  {
    words: ['tail', 'tails', 'yarn tail'],
    means: 'The end of yarn that is left long to sew or graft with.',
    steps: ['cut_main'],
  },
  {
    words: ['mattress stitch', 'mattress seam', 'mattress'],
    means: 'Sewing two edges from the right side, a bar of each in turn, so that the seam sinks in.',
    steps: ['mattress'],
  },
  {
    words: ['bar', 'bars', 'bar of a stitch'],
    means: 'The short strand between two stitches of a row. A seam takes up one of each edge.',
    steps: ['mattress'],
  },
  {
    words: ['gather', 'gathering', 'gathered'],
    means: 'Threading the last loops on their yarn and drawing them up to close an end.',
    steps: ['gather'],
  },
  {
    words: ['hem', 'hems'],
    means: 'An edge that is folded in and sewn down, often so that a cord or elastic can run in it.',
    steps: ['hem'],
  },
  {
    words: ['ease', 'negative ease'],
    means:
      'The difference between a piece and what it goes on. What sits on a head is made smaller than the head, so that it grips; a cover for a closure is made wider.',
  },
  {
    words: ['hanging'],
    means: 'Measured on the machine, with its weights pulling. It comes out longer than it will be at rest.',
  },
  {
    words: ['rested', 'relaxed', 'at rest'],
    means: 'Measured off the machine after it has lain flat for a while. Finished sizes are meant so.',
  },
  {
    words: ['blocking', 'blocked', 'block', 'washed'],
    means:
      'Wetting a piece, laying it out to its size and letting it dry. It can change the gauge, so say "washed" when you measure after it.',
  },
  {
    words: ['dye lot', 'dye lots', 'lot', 'lot number'],
    means:
      'Yarn dyed in one bath; its number stands on the band. Another lot of the same colour may look different, so I never mix them in one piece.',
  },
  {
    words: ['rough', 'how sure', 'fair', 'sure'],
    means:
      'How well I know your gauge. Rough is one piece or little measured; it grows with each piece that you measure.',
  },
  {
    words: ['window', 'give or take', 'tolerance'],
    means: 'The sizes that will do, from the least to the most.',
  },
  {
    words: ['checkpoint', 'check point', 'measure at row'],
    means: 'A row to stop at and measure, while there are rows left to put the length right.',
  },
  { words: ['tally', 'row counter'], means: 'The count of the rows you have cranked, kept here or on the machine.' },
  {
    words: ['notions', 'haberdashery'],
    means: 'What a piece takes beside yarn: closures, rings, buttons, elastic, cord.',
  },
  {
    words: ['rings', 'ring'],
    means: 'Metal rings that are sewn in at the sides, for a strap to clip on.',
    steps: ['rings'],
  },
  {
    words: ['closure', 'closures'],
    means: 'A zip or the like. Its length is that of the chain, from stop to stop.',
    steps: ['pin_closure'],
  },
  { words: ['i-cord', 'icord', 'i cord'], means: 'A narrow tube of three to eight stitches, used as a cord.' },
  {
    words: ['wraps per inch', 'wpi'],
    means: 'How often yarn goes round a ruler in an inch, side by side: the more, the thinner it is.',
  },
  {
    words: ['tex', 'nm', 'denier'],
    means: 'How thick yarn is by its weight: tex is the grams of 1000 m, denier of 9000 m; Nm is the metres of a gram.',
  },
  {
    words: ['latch needle', 'latch needles', 'cylinder'],
    means:
      'The machine holds latch needles in a cylinder: hooks that close by themselves as they draw a loop through. Their number is that of your stitches round.',
  },
  {
    words: ['weights', 'weight hanger'],
    means: 'What hangs on the knitting, so that each new loop comes off its needle.',
  },
  {
    words: ['ladder', 'dropped stitch', 'dropped stitches', 'drop a stitch'],
    means: 'A stitch that slipped off its needle and leaves a run of bars. A latch tool takes it up again, bar by bar.',
  },
];

/** Parts of the work that makers ask how to do, by the steps that do them. */
export const HOW_TO: readonly { words: RegExp; steps: readonly string[] }[] = [
  {
    words: /\b(?:graft|join|close)\b/,
    steps: ['turn_for_graft', 'graft', 'shut', 'gather', 'join', 'cast_off', 'take_out_waste'],
  },
  { words: /\b(?:zip|zipper|closure)\b/, steps: ['shorten_closure', 'pin_closure', 'sew_closure'] },
  { words: /\b(?:seam|side|bottom)\b/, steps: ['mattress', 'fold', 'markers'] },
  { words: /\b(?:cast|bind) off\b/, steps: ['cast_off'] },
  { words: /\b(?:weave|ends in)\b/, steps: ['weave_in'] },
  { words: /\bwaste\b/, steps: ['take_out_waste'] },
  { words: /\brings?\b/, steps: ['rings', 'ring'] },
  { words: /\bgather|\bcrown\b/, steps: ['gather'] },
  { words: /\b(?:lining|line it)\b/, steps: ['lining'] },
  { words: /\belastic\b/, steps: ['elastic'] },
  { words: /\bfringe|\btassels?\b/, steps: ['cut_fringe', 'fringe', 'trim_fringe'] },
  { words: /\bbuttons?\b/, steps: ['buttons', 'loops'] },
  { words: /\b(?:stuff|fill)\b/, steps: ['stuff'] },
  { words: /\bdrawstring\b/, steps: ['drawstring', 'hem'] },
  { words: /\bstrap\b/, steps: ['strap'] },
];
