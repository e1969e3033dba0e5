import { purchasesPaper } from '../stock/purchasesPaper.ts';
import { openDialog } from './dialog.ts';

openDialog('purchasesFor', (answer) => {
  document.getElementById('list')?.replaceChildren(...purchasesPaper(answer));
});
