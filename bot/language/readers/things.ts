/** What yarn is counted in. */
const BALLS = new Set('ball balls skein skeins cone cones hank hanks cake cakes'.split(' '));

/** What is sewn on or put in, by the piece. */
const NOTIONS = new Set(
  `zip zips zipper zippers closure closures ring rings button buttons snap snaps popper poppers hook hooks buckle buckles clasp
clasps toggle toggles stopper stoppers label labels tag tags bead beads strap straps handle handles magnet magnets bell bells
karabiner karabiners carabiner carabiners form forms pad pads insert inserts`.split(/\s+/),
);

export const isBall = (word: string | undefined): boolean => BALLS.has(word ?? '');
export const isNotion = (word: string | undefined): boolean => NOTIONS.has(word ?? '');
/** True for what is sold by the piece. */
export const isThing = (word: string): boolean => isBall(word) || isNotion(word) || word === 'piece';
