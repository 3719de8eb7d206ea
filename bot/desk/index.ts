import type { Request, RequestKind } from '../request.js';
import { batchDesk, batchDoneDesk, batchWithoutDesk } from './batch/batch.js';
import type { At, Desk, DeskAnswer } from './desk.js';
import { formDesk } from './form.js';
import { recordGaugeDesk } from './gauge/record-gauge.js';
import { showGaugeDesk } from './gauge/show-gauge.js';
import { showPiecesDesk } from './gauge/show-pieces.js';
import { takeBackDesk } from './gauge/take-back.js';
import { tellGaugeDesk } from './gauge/tell-gauge.js';
import { howToDesk, meaningDesk } from './meaning.js';
import { costDesk } from './money/cost.js';
import { patternPriceDesk, shopPriceDesk } from './money/money-questions.js';
import { setCurrencyDesk } from './money/set-currency.js';
import { setRatesDesk, showRatesDesk } from './money/set-rates.js';
import { allowDesk } from './plan/allow.js';
import { explainChanceDesk } from './plan/explain-chance.js';
import { looserDesk } from './plan/looser.js';
import { planDesk } from './plan/plan.js';
import { stepsDesk } from './plan/steps.js';
import { whatHelpsDesk } from './plan/what-helps.js';
import { whatToMakeDesk } from './plan/what-to-make.js';
import { whichMachineDesk } from './plan/which-machine.js';
import { whichSizeDesk } from './plan/which-size.js';
import { whyDesk } from './plan/why.js';
import { leaveShareDesk } from './share/leave-share.js';
import { sendChangeDesk } from './share/send-change.js';
import { sendResultDesk } from './share/send-result.js';
import { shareDesk } from './share/share.js';
import { showResultsDesk } from './share/show-results.js';
import { showSharesDesk } from './share/show-shares.js';
import { sizeShareDesk } from './share/size-share.js';
import { whyApartDesk } from './share/why-apart.js';
import { withdrawShareDesk } from './share/withdraw-share.js';
import { deletedDesk, dropDesk, helpDesk, setUnitsDesk, thanksDesk, unreadDesk } from './talk.js';
import { clockDesk } from './time/clock.js';
import { logTimeDesk } from './time/log-time.js';
import { remindDesk } from './time/remind.js';
import { setHoursDesk } from './time/set-hours.js';
import { setTimeZoneDesk } from './time/set-time-zone.js';
import { showHoursDesk } from './time/show-hours.js';
import { showLogDesk } from './time/show-log.js';
import { showTimeDesk } from './time/show-time.js';
import { undoDesk } from './undo.js';
import { correctDesk } from './work/correct.js';
import { finishDesk } from './work/finish.js';
import { giveUpDesk } from './work/give-up.js';
import { lostCountDesk } from './work/lost-count.js';
import { ownCountDesk } from './work/own-count.js';
import { readingDesk } from './work/reading.js';
import { setStopDesk } from './work/set-stop.js';
import { startDesk } from './work/start.js';
import { startOverDesk } from './work/start-over.js';
import { tallyDesk } from './work/tally.js';
import { whereDesk } from './work/where.js';
import { yarnLeftDesk } from './work/yarn-left.js';
import { buyDesk } from './yarn/buy.js';
import { otherYarnDesk } from './yarn/other-yarn.js';
import { showShelfDesk } from './yarn/show-shelf.js';
import { soldAsDesk } from './yarn/sold-as.js';
import { stockDesk } from './yarn/stock.js';

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
