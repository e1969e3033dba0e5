import { purchasesPaper } from '../stock/purchasesPaper.ts';
import { openDialog } from './openDialog.ts';

openDialog('purchasesFor', (answer) => {
  document.getElementById('list')?.replaceChildren(...purchasesPaper(answer));
});
