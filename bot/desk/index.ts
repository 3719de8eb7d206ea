import type { Request, RequestKind } from '../request.js';
import { allowDesk } from './allow.js';
import { batchDesk, batchDoneDesk, batchWithoutDesk } from './batch.js';
import { buyDesk } from './buy.js';
import { clockDesk } from './clock.js';
import { correctDesk } from './correct.js';
import { costDesk } from './cost.js';
import type { At, Desk, DeskAnswer } from './desk.js';
import { explainChanceDesk } from './explain-chance.js';
import { finishDesk } from './finish.js';
import { formDesk } from './form.js';
import { giveUpDesk } from './give-up.js';
import { leaveShareDesk } from './leave-share.js';
import { logTimeDesk } from './log-time.js';
import { looserDesk } from './looser.js';
import { lostCountDesk } from './lost-count.js';
import { howToDesk, meaningDesk } from './meaning.js';
import { patternPriceDesk, shopPriceDesk } from './money-questions.js';
import { otherYarnDesk } from './other-yarn.js';
import { ownCountDesk } from './own-count.js';
import { planDesk } from './plan.js';
import { readingDesk } from './reading.js';
import { recordGaugeDesk } from './record-gauge.js';
import { remindDesk } from './remind.js';
import { sendChangeDesk } from './send-change.js';
import { sendResultDesk } from './send-result.js';
import { setCurrencyDesk } from './set-currency.js';
import { setHoursDesk } from './set-hours.js';
import { setRatesDesk, showRatesDesk } from './set-rates.js';
import { setStopDesk } from './set-stop.js';
import { setTimeZoneDesk } from './set-time-zone.js';
import { shareDesk } from './share.js';
import { showGaugeDesk } from './show-gauge.js';
import { showHoursDesk } from './show-hours.js';
import { showLogDesk } from './show-log.js';
import { showPiecesDesk } from './show-pieces.js';
import { showResultsDesk } from './show-results.js';
import { showSharesDesk } from './show-shares.js';
import { showShelfDesk } from './show-shelf.js';
import { showTimeDesk } from './show-time.js';
import { sizeShareDesk } from './size-share.js';
import { soldAsDesk } from './sold-as.js';
import { startDesk } from './start.js';
import { startOverDesk } from './start-over.js';
import { stepsDesk } from './steps.js';
import { stockDesk } from './stock.js';
import { takeBackDesk } from './take-back.js';
import { deletedDesk, dropDesk, helpDesk, setUnitsDesk, thanksDesk, unreadDesk } from './talk.js';
import { tallyDesk } from './tally.js';
import { tellGaugeDesk } from './tell-gauge.js';
import { undoDesk } from './undo.js';
import { whatHelpsDesk } from './what-helps.js';
import { whatToMakeDesk } from './what-to-make.js';
import { whereDesk } from './where.js';
import { whichMachineDesk } from './which-machine.js';
import { whichSizeDesk } from './which-size.js';
import { whyDesk } from './why.js';
import { whyApartDesk } from './why-apart.js';
import { withdrawShareDesk } from './withdraw-share.js';
import { yarnLeftDesk } from './yarn-left.js';

/** One desk a kind of request; a kind without its desk does not compile. */
const desks: { [K in RequestKind]: Desk<K> } = {
  plan: planDesk,
  which_machine: whichMachineDesk,
  record_gauge: recordGaugeDesk,
  tell_gauge: tellGaugeDesk,
  show_gauge: showGaugeDesk,
  show_pieces: showPiecesDesk,
  what_helps: whatHelpsDesk,
  why: whyDesk,
  explain_chance: explainChanceDesk,
  own_count: ownCountDesk,
  allow: allowDesk,
  looser: looserDesk,
  correct: correctDesk,
  take_back: takeBackDesk,
  start: startDesk,
  tally: tallyDesk,
  lost_count: lostCountDesk,
  reading: readingDesk,
  set_stop: setStopDesk,
  finish: finishDesk,
  give_up: giveUpDesk,
  start_over: startOverDesk,
  where: whereDesk,
  steps: stepsDesk,
  which_size: whichSizeDesk,
  stock: stockDesk,
  show_shelf: showShelfDesk,
  yarn_left: yarnLeftDesk,
  other_yarn: otherYarnDesk,
  what_to_make: whatToMakeDesk,
  sold_as: soldAsDesk,
  buy: buyDesk,
  set_rates: setRatesDesk,
  show_rates: showRatesDesk,
  cost: costDesk,
  shop_price: shopPriceDesk,
  pattern_price: patternPriceDesk,
  set_currency: setCurrencyDesk,
  log_time: logTimeDesk,
  clock: clockDesk,
  show_time: showTimeDesk,
  show_log: showLogDesk,
  set_hours: setHoursDesk,
  show_hours: showHoursDesk,
  set_time_zone: setTimeZoneDesk,
  share: shareDesk,
  withdraw_share: withdrawShareDesk,
  send_change: sendChangeDesk,
  size_share: sizeShareDesk,
  leave_share: leaveShareDesk,
  send_result: sendResultDesk,
  show_results: showResultsDesk,
  show_shares: showSharesDesk,
  why_apart: whyApartDesk,
  batch: batchDesk,
  batch_done: batchDoneDesk,
  batch_without: batchWithoutDesk,
  remind: remindDesk,
  set_units: setUnitsDesk,
  form: formDesk,
  undo: undoDesk,
  drop: dropDesk,
  help: helpDesk,
  thanks: thanksDesk,
  deleted: deletedDesk,
  meaning: meaningDesk,
  how_to: howToDesk,
  unread: unreadDesk,
};

/** The answer of the desk that a request belongs to. */
export const answer = <K extends RequestKind>(request: Extract<Request, { kind: K }>, at: At): Promise<DeskAnswer> =>
  desks[request.kind as K](request, at);
