import type { Dimension } from '../piece.js';

type Side = Pick<Dimension, 'id' | 'figure' | 'label' | 'adjective'>;

/** The sides that most pieces have, as they are named and told. */
export const SIDES = {
  width: { id: 'width', figure: 'widthMm', label: 'Width', adjective: 'wide' },
  height: { id: 'height', figure: 'heightMm', label: 'Height', adjective: 'tall' },
  length: { id: 'length', figure: 'lengthMm', label: 'Length', adjective: 'long' },
  girth: { id: 'girth', figure: 'girthMm', label: 'Girth', adjective: 'round' },
  depth: { id: 'depth', figure: 'heightMm', label: 'Depth', adjective: 'deep' },
} as const satisfies Record<string, Side>;
