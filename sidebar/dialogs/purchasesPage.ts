import { purchasesElements } from '../../shared/paper/purchases/purchasesElements.ts';
import { drawElements } from '../page/drawElements.ts';
import { openDialog } from './openDialog.ts';

openDialog('purchasesFor', (answer) => {
  document.getElementById('list')?.replaceChildren(drawElements(purchasesElements(answer)));
});
