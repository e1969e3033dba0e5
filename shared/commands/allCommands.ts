import { closeMonth } from './books/closeMonth.ts';
import { exportRows, readBooks } from './books/readBooks.ts';
import { updateOverview } from './books/updateOverview.ts';
import type { Command } from './command.ts';
import type { CommandName } from './commandTypes.ts';
import { dayPageFor, showDay } from './day/dayPageFor.ts';
import { planDayFor } from './day/planDayFor.ts';
import { replanDayFor } from './day/replanDayFor.ts';
import { startDay } from './day/startDay.ts';
import { updateChecklist, writeChecklist } from './day/writeChecklist.ts';
import { logOutcome } from './log/logOutcome.ts';
import { startLog } from './log/startLog.ts';
import { heatPicturesFor } from './plan/heatPicturesFor.ts';
import { makeRunSheet } from './plan/makeRunSheet.ts';
import { planSelectedOrder } from './plan/planSelectedOrder.ts';
import { printRunSheet, runSheetDocumentFor } from './plan/runSheetDocumentFor.ts';
import { showHeat } from './plan/showHeat.ts';
import { causesFor, showCauses } from './quality/causesFor.ts';
import { qualityFor, showQuality } from './quality/qualityFor.ts';
import { acceptQuote } from './quote/acceptQuote.ts';
import { makeQuote } from './quote/makeQuote.ts';
import { printQuote, quoteDocumentFor } from './quote/quoteDocumentFor.ts';
import { quoteFor } from './quote/quoteFor.ts';
import { startQuote } from './quote/startQuote.ts';
import { postUse } from './stock/postUse.ts';
import { purchasesFor, readStock, showPurchases, traceLot } from './stock/readStock.ts';
import { startUse } from './stock/startUse.ts';
import { startTimer } from './timers/startTimer.ts';
import { stopTimer } from './timers/stopTimer.ts';
import { timersFor } from './timers/timersFor.ts';
import { adoptFigure } from './trials/adoptFigure.ts';
import { readTrials } from './trials/readTrials.ts';
import { revertFigure } from './trials/revertFigure.ts';

/** Every command by the name that a page calls it by; the build makes a top-level function of each. */
export const ALL_COMMANDS: Readonly<Record<CommandName, Command>> = {
  acceptQuote,
  adoptFigure,
  causesFor,
  closeMonth,
  dayPageFor,
  exportRows,
  heatPicturesFor,
  logOutcome,
  makeQuote,
  makeRunSheet,
  planDayFor,
  planSelectedOrder,
  postUse,
  printQuote,
  printRunSheet,
  purchasesFor,
  qualityFor,
  quoteDocumentFor,
  quoteFor,
  readBooks,
  readStock,
  readTrials,
  replanDayFor,
  revertFigure,
  runSheetDocumentFor,
  showCauses,
  showDay,
  showHeat,
  showPurchases,
  showQuality,
  startDay,
  startLog,
  startQuote,
  startTimer,
  startUse,
  stopTimer,
  timersFor,
  traceLot,
  updateChecklist,
  updateOverview,
  writeChecklist,
};
