/** Every function that a menu, a trigger, a cell or a page calls; the build makes a top-level function of each, and of each command. */
export { fillDemoShop } from './book/fillDemoShop.ts';
export { setUpWorkbook } from './book/setUpWorkbook.ts';
export { onEdit } from './checklist/onEdit.ts';
export { runCommand } from './commands/runCommand.ts';
export { callSheetFunction } from './functions/runFunction.ts';
export { onInstall } from './menu/onInstall.ts';
export { onOpen } from './menu/onOpen.ts';
export { openSidebar } from './menu/openSidebar.ts';
export { overviewFromMenu } from './menu/overviewFromMenu.ts';
export { recalculate } from './menu/recalculate.ts';
export { showAbout } from './menu/showAbout.ts';
