/** Every function that a menu, a page, a trigger or a cell calls by name; the build makes a top-level function of each. */
export { fillDemoShop } from './book/fillDemoShop.ts';
export { setUpWorkbook } from './book/setUpWorkbook.ts';
export { callSheetFunction } from './functions/callSheetFunction.ts';
export { logOutcome } from './log/logOutcome.ts';
export { onInstall } from './menu/onInstall.ts';
export { onOpen } from './menu/onOpen.ts';
export { openSidebar } from './menu/openSidebar.ts';
export { recalculate } from './menu/recalculate.ts';
export { showAbout } from './menu/showAbout.ts';
export { makeRunSheet } from './sidebar/makeRunSheet.ts';
export { planSelectedOrder } from './sidebar/planSelectedOrder.ts';
export { printRunSheet } from './sidebar/printRunSheet.ts';
export { runSheetDocumentFor } from './sidebar/runSheetDocumentFor.ts';
export { startLog } from './sidebar/startLog.ts';
