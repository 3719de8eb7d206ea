import type { Offered } from './reply.js';

/** On the card that shows a plan. */
const shown = (shareId: string): Offered[] => [
  { button: 'Size to My Gauge', say: 'size it to my gauge', request: { kind: 'size_share', shareId }, primary: true },
  { button: 'Not Now', say: 'not now', request: { kind: 'leave_share', shareId } },
];

/** On the card that tells of a change. */
const changed = (shareId: string): Offered[] => [
  { button: 'Take the Change', say: 'take the change', request: { kind: 'size_share', shareId, change: true } },
  { button: 'Keep Mine', say: 'keep mine', request: { kind: 'leave_share', shareId, keep: true } },
];

const CARDS = { share: shown, change: changed };
type CardOfShare = keyof typeof CARDS;

/** The turn of a card about a share. */
export const turnOfShare = (card: CardOfShare, shareId: string): string => `${card}:${shareId}`;

/**
 * What such a card offers, by its turn alone: it reaches makers in whose talks nothing was offered yet, or whole
 * channels. Whether a share is for the one who presses is for its desk to say.
 */
export function offersOfShare(turn: string): readonly Offered[] {
  const [card = '', shareId = ''] = turn.split(':');
  return card === 'share' || card === 'change' ? CARDS[card](shareId) : [];
}
