import { runSheetElements } from '../shared/runSheet/runSheetElements.ts';
import { drawElements } from './drawElements.ts';
import { openDialog } from './page/dialog.ts';

openDialog('runSheetDocumentFor', ({ document: sheet }) => {
  const place = document.getElementById('sheet');
  place?.replaceChildren(drawElements(runSheetElements(sheet)));
  const choice = document.querySelector<HTMLInputElement>('#pictures');
  const follow = () => place?.classList.toggle('with-pictures', choice?.checked === true);
  choice?.addEventListener('change', follow);
  follow();
});
