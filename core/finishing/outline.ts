import type { Outline } from '../piece.js';
import { length, say } from '../words.js';

type Side = Outline['lines'][number]['is'];

/** A piece that lies flat as a rectangle: its sides in turn from the bottom, then right, top and left. */
export function rectangle(
  widthMm: number,
  heightMm: number,
  sides: { bottom: Side; right: Side; top: Side; left: Side },
): Outline {
  return {
    points: [
      [0, 0],
      [widthMm, 0],
      [widthMm, heightMm],
      [0, heightMm],
    ],
    lines: [
      { is: sides.bottom, from: 0, to: 1 },
      { is: sides.right, from: 1, to: 2 },
      { is: sides.top, from: 2, to: 3 },
      { is: sides.left, from: 3, to: 0 },
    ],
    labels: [
      { line: 0, say: say`${length(widthMm)}` },
      { line: 1, say: say`${length(heightMm)}` },
    ],
  };
}
