import type { Piece } from '../piece.js';
import { cowl } from './cowl.js';
import { cushionCover } from './cushion-cover.js';
import { doubleHat } from './double-hat.js';
import { flatPanel } from './flat-panel.js';
import { hat } from './hat.js';
import { headband } from './headband.js';
import { limbWarmers } from './limb-warmers.js';
import { mugSleeve } from './mug-sleeve.js';
import { plainTube } from './plain-tube.js';
import { pouch } from './pouch.js';
import { scarf } from './scarf.js';
import { stripBlanket } from './strip-blanket.js';
import { stuffedBall } from './stuffed-ball.js';
import { tieCord } from './tie-cord.js';
import { uprightPouch } from './upright-pouch.js';
import { wreathCover } from './wreath-cover.js';

/** Every kind of piece. A new kind adds its line here and nowhere else. */
export const pieces: readonly Piece[] = [
  pouch,
  uprightPouch,
  plainTube,
  flatPanel,
  cowl,
  headband,
  hat,
  doubleHat,
  limbWarmers,
  mugSleeve,
  wreathCover,
  scarf,
  cushionCover,
  stripBlanket,
  stuffedBall,
  tieCord,
];

/** The kind with this id, or undefined. */
export const pieceById = (id: string): Piece | undefined => pieces.find((p) => p.id === id);
