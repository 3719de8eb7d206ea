import type { Batch, Day, Words } from '../../core/index.js';
import type { BatchStage } from '../asks/batch.js';
import type { BotProblem } from '../problems.js';

/** When so many pieces are ready, and the last days for them. */
export type Schedule = Pick<Batch, 'readiness' | 'readyDay' | 'slowReadyDay' | 'dueDay' | 'latest' | 'ways'> & {
  /** Still to be made. */
  pieces: number;
  today: Day;
  makers: readonly Dealt[];
  /** Where one knits and another finishes: who waits, in seconds worked and by the clock. */
  waits?: { finisherS: number; piecesS: number } | undefined;
  /** What was taken for granted. */
  assumed: readonly Words[];
};

/** The share of a maker: the day on which each of their pieces is done, as a rule, and the seconds of work in all. */
export type Dealt = { id: string; name: string; stage: BatchStage; days: readonly Day[]; workS: number };

/** One who makes a batch; `share`: pieces dealt to them in all. */
export type Member = { name: string; isOwn: boolean; stage: BatchStage; share: number; done: number };

export type BatchReply = {
  kind: 'batch';
  became: 'dealt' | 'replanned' | 'shown' | 'counted';
  label: string;
  pieces: number;
  done: number;
  dueDay: Day;
  today: Day;
  /** Of what is still to be made; undefined once all is, or where it cannot be told for `problems`. */
  schedule: Schedule | undefined;
  problems: readonly BotProblem[];
  members: readonly Member[];
  /** Rows and needles of the maker's own pieces, where they knit. */
  own: { rows: number; needles: number | undefined } | undefined;
  changed: readonly Words[];
};
