import { htmlElement, pushButton } from '../htmlElement.ts';
import { addOnFrame, type FrameListeners } from './addOnFrame.ts';

export interface Dialogs {
  /** A page of the add-on over the grid; Escape closes it. */
  page(
    title: string,
    source: string,
    size: { readonly width: number; readonly height: number },
  ): void;
  /** A question with buttons; resolves with the name of the chosen one, `close` for Escape. */
  ask(
    title: string,
    text: string,
    choices: readonly { readonly name: string; readonly label: string }[],
  ): Promise<string>;
  /** Whether an edit inside a protected range is meant. */
  confirmEdit(description: string, range: string): Promise<boolean>;
}

const EDIT_CHOICES = [
  { name: 'ok', label: 'Change it' },
  { name: 'cancel', label: 'Leave it' },
] as const;

let heads = 0;

/** @param focusGrid - gives the keyboard back to the grid */
export function dialogs(run: FrameListeners['run'], focusGrid: () => void): Dialogs {
  function open(title: string, classes: string, closed: () => void, ...inside: readonly Node[]) {
    heads += 1;
    const id = `dialog-${heads}`;
    const dialog = htmlElement('dialog', { class: classes, 'aria-labelledby': id });
    dialog.append(htmlElement('h2', { id }, title), ...inside);
    dialog.addEventListener('close', () => {
      dialog.remove();
      closed();
      focusGrid();
    });
    // Keys typed here are not the grid's.
    dialog.addEventListener('keydown', (event) => event.stopPropagation());
    document.body.append(dialog);
    dialog.showModal();
    return dialog;
  }

  const ask: Dialogs['ask'] = (title, text, choices) =>
    new Promise((resolve) => {
      const buttons = choices.map(({ name, label }) =>
        pushButton(label, () => dialog.close(name), { 'data-name': name }),
      );
      const dialog = open(
        title,
        'question',
        () => resolve(dialog.returnValue || 'close'),
        htmlElement('p', {}, text),
        htmlElement('div', { class: 'choices' }, ...buttons),
      );
      buttons[0]?.focus();
    });

  return {
    page: (title, source, size) => {
      let dialog: HTMLDialogElement | undefined;
      const close = () => dialog?.close();
      const { frame, forget } = addOnFrame(source, title, {
        run,
        close,
        escape: close,
        focus: focusGrid,
        size: (width, height) => resize(frame, width, height),
      });
      resize(frame, size.width, size.height);
      const shut = pushButton('Close', close, { class: 'quiet', 'aria-label': `Close ${title}` });
      dialog = open(title, 'page-dialog', forget, shut, frame);
    },
    ask,
    confirmEdit: async (description, range) => {
      const text =
        description === '' ? `${range} is protected.` : `${range} is protected: ${description}.`;
      return (await ask('Change a protected cell?', text, EDIT_CHOICES)) === 'ok';
    },
  };
}

function resize(frame: HTMLElement, width: number | undefined, height: number | undefined): void {
  if (width !== undefined) frame.style.width = `${width}px`;
  if (height !== undefined) frame.style.height = `${height}px`;
}
