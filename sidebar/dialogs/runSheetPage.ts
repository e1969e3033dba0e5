import { runSheetElements } from '../../shared/paper/runSheet/runSheetElements.ts';
import { drawElements } from '../page/drawElements.ts';
import { openDialog } from './openDialog.ts';

openDialog('runSheetDocumentFor', ({ document: sheet }) => {
  const place = document.getElementById('sheet');
  place?.replaceChildren(drawElements(runSheetElements(sheet)));
  const choice = document.querySelector<HTMLInputElement>('#pictures');
  const follow = () => place?.classList.toggle('with-pictures', choice?.checked === true);
  choice?.addEventListener('change', follow);
  follow();
});
