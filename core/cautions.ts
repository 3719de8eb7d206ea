import type { Trait } from './piece.js';
import { say, type Words } from './words.js';

const whenever: Record<Trait, Words> = {
  small_parts: say`Small parts such as rings and closure pulls are not for children under three.`,
  long_loop: say`A strap is a long loop: keep it away from small children.`,
  neck_loop: say`A loop round the neck can catch: not for a small child at play, nor for one asleep.`,
  cord: say`Cords and drawstrings are not for small children's clothes or beds; keep them short.`,
  stuffed: say`Stuffing comes out of open fabric: not for children under three unless a test house says so.`,
  worn_on_head: say`Take it off a baby before sleep, and never leave a sleeping baby alone with it.`,
  bed: say`Not for the bed of a sleeping baby.`,
  holds_hot: say`A sleeve slows the heat, it does not stop it: mind hot vessels, steam and bare glass.`,
  near_flame: say`Keep it away from candles and flames.`,
  load: say`Straps and rings bear the load: test them with twice as much, and look at the seams.`,
};

const always: readonly Words[] = [
  say`Count pins and needles in and out, so that none stays in the piece.`,
  say`Rest hands and wrists; stop when they hurt.`,
  say`If you sell it: rules on labels and on children's goods differ by place; ask the local authority and a qualified test house.`,
];

/**
 * The cautions that go with a piece: reminders from common practice, never a finding that a rule is met.
 */
export const cautions = (traits: readonly Trait[]): readonly Words[] => [
  ...traits.map((trait) => whenever[trait]),
  ...always,
];
