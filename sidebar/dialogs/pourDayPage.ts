import { dayElements } from '../../shared/paper/day/dayElements.ts';
import { drawElements } from '../page/drawElements.ts';
import { openDialog } from './openDialog.ts';

openDialog('dayPageFor', (answer) => {
  const place = document.getElementById('day');
  place?.replaceChildren(drawElements(dayElements(answer)));
  const choice = document.querySelector<HTMLInputElement>('#lists');
  const follow = () => place?.classList.toggle('with-lists', choice?.checked === true);
  choice?.addEventListener('change', follow);
  follow();
});
