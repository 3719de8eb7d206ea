import type { Stripe, Striped } from '../../core/index.js';

/** The stripes of a plan as they come out: of one part, which `times` says how often is made. */
export type StripesShown = Striped & {
  repeat: readonly Stripe[];
  times: number;
  /** False while the yarn in a stitch is not known. */
  hasYarn: boolean;
  inRound: boolean;
  /** The plan whose rows are held to the repeat, where this one's stripes do not meet. */
  met: { rows: number; chance: number } | undefined;
};
