import { openDialog } from './page/dialog.ts';
import { purchasesPaper } from './views/purchasesPaper.ts';

openDialog('purchasesFor', (answer) => {
  document.getElementById('list')?.replaceChildren(...purchasesPaper(answer));
});
