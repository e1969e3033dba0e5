import type { ToWindow } from '../server/messageTypes.ts';
import { toast } from './addOn/toast.ts';
import { openConnection } from './connection.ts';
import { pageElement } from './htmlElement.ts';
import { whyStartedAgain } from './startAgain.ts';
import { exposeHook } from './testHook.ts';
import { type Start, startWorkbench, type Workbench } from './workbench.ts';

/** The add-on's menu item that the page chooses by itself when it opens. */
const OPENING = 'openSidebar';

const step = pageElement('step');
let workbench: Workbench | undefined;

step.textContent = 'Connecting to the workbook…';
const connection = openConnection({
  message: take,
  lost: () => {
    if (workbench) workbench.lost();
    else step.textContent = 'No connection. Open the address that the start command printed.';
  },
});

function take(message: ToWindow) {
  if (message.kind === 'start') draw(message);
  else if (workbench) workbench.take(message);
  else if (message.kind === 'progress') step.textContent = message.text;
}

function draw(start: Start) {
  pageElement('book').textContent = start.book;
  document.title = `${start.book} – Poursmith workbench`;
  workbench = startWorkbench(start, connection);
  void exposeHook(workbench);
  const because = whyStartedAgain();
  if (because !== undefined) toast(pageElement('toasts'), '', because, 'stay');
  const opening = start.menus.flatMap((menu) => menu.items).find((item) => item.run === OPENING);
  if (opening) void workbench.run(opening.label, OPENING);
}
