import type { Piece } from '../piece.js';
import { cowl } from './cowl.js';
import { doubleHat } from './double-hat.js';
import { flatPanel } from './flat-panel.js';
import { hat } from './hat.js';
import { headband } from './headband.js';
import { limbWarmers } from './limb-warmers.js';
import { mugSleeve } from './mug-sleeve.js';
import { plainTube } from './plain-tube.js';
import { pouch } from './pouch.js';
import { scarf } from './scarf.js';
import { stuffedBall } from './stuffed-ball.js';
import { tieCord } from './tie-cord.js';
import { wreathCover } from './wreath-cover.js';

/** Every kind of piece. A new kind adds its line here and nowhere else. */
export const pieces: readonly Piece[] = [
  pouch,
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
  stuffedBall,
  tieCord,
];

/** The kind with this id, or undefined. */
export const pieceById = (id: string): Piece | undefined => pieces.find((p) => p.id === id);
