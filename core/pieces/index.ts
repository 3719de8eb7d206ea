import type { Piece } from '../piece.js';
import { flatPanel } from './flat-panel.js';
import { plainTube } from './plain-tube.js';
import { pouch } from './pouch.js';

/** Every kind of piece. A new kind adds its line here and nowhere else. */
export const pieces: readonly Piece[] = [pouch, plainTube, flatPanel];

/** The kind with this id, or undefined. */
export const pieceById = (id: string): Piece | undefined => pieces.find((p) => p.id === id);
