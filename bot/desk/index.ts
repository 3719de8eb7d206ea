import type { Request, RequestKind } from '../request.js';
import type { At, Desk, DeskAnswer } from './desk.js';
import { planDesk } from './plan.js';
import { recordGaugeDesk } from './record-gauge.js';
import { showGaugeDesk } from './show-gauge.js';
import { stepsDesk } from './steps.js';
import { dropDesk, helpDesk, setUnitsDesk, thanksDesk, unreadDesk } from './talk.js';
import { undoDesk } from './undo.js';

/** One desk a kind of request; a kind without its desk does not compile. */
const desks: { [K in RequestKind]: Desk<K> } = {
  plan: planDesk,
  record_gauge: recordGaugeDesk,
  show_gauge: showGaugeDesk,
  steps: stepsDesk,
  set_units: setUnitsDesk,
  undo: undoDesk,
  drop: dropDesk,
  help: helpDesk,
  thanks: thanksDesk,
  unread: unreadDesk,
};

/** The answer of the desk that a request belongs to. */
export const answer = <K extends RequestKind>(request: Extract<Request, { kind: K }>, at: At): Promise<DeskAnswer> =>
  desks[request.kind as K](request, at);
