import type { CausesAnswer } from '../../shared/commands/causeCommands.ts';
import { causeParts } from '../causes/causeParts.ts';
import { roundLine } from '../causes/roundLine.ts';
import { el } from '../page/el.ts';
import { openDialog } from './openDialog.ts';

openDialog('causesFor', (answer) => {
  document.getElementById('causes')?.replaceChildren(...partsOf(answer));
});

function partsOf({ shopName, shown }: CausesAnswer): readonly HTMLElement[] {
  const name = shopName === '' ? 'What went wrong' : `What went wrong: ${shopName}`;
  if (shown === undefined)
    return [el('h1', {}, name), el('p', {}, 'No round of Pour log came out bad.')];
  return [
    el('h1', {}, name),
    el('p', {}, `${roundLine(shown)}. ${shown.pattern}, ${shown.mold}.`),
    ...causeParts(shown),
  ];
}
