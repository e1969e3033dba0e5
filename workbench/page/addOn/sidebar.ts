import { htmlElement, pushButton } from '../htmlElement.ts';
import { addOnFrame, type FrameListeners } from './addOnFrame.ts';

export interface Sidebar {
  /** Shows a page of the add-on, in place of the last. */
  show(title: string, source: string): void;
}

/** The add-on's page at the right of the grid, as wide as on the platform. */
export function sidebar(
  place: HTMLElement,
  run: FrameListeners['run'],
  focusGrid: () => void,
): Sidebar {
  let forget = () => {};

  function close() {
    forget();
    place.replaceChildren();
    place.hidden = true;
    focusGrid();
  }

  return {
    show: (title, source) => {
      forget();
      const page = addOnFrame(source, title, {
        run,
        close,
        escape: () => leave(focusGrid),
        focus: focusGrid,
        size: () => {},
      });
      forget = page.forget;
      const head = htmlElement('h2', {}, title);
      const shut = pushButton('Close', close, { class: 'quiet', 'aria-label': `Close ${title}` });
      place.replaceChildren(htmlElement('header', {}, head, shut), page.frame);
      place.hidden = false;
    },
  };
}

/** A page keeps the keyboard when it opens a dialog, so its Escape is the dialog's. */
function leave(focusGrid: () => void): void {
  const dialogs = [...document.querySelectorAll<HTMLDialogElement>('dialog[open]')];
  const top = dialogs[dialogs.length - 1];
  if (top) top.close();
  else focusGrid();
}
