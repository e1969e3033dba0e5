import type { ShownRequest } from '../../server/messageTypes.ts';
import type { Connection } from '../connection.ts';
import type { Grid } from '../grid/gridTypes.ts';
import { pageElement } from '../htmlElement.ts';
import type { Dialogs } from './dialogs.ts';
import type { Sidebar } from './sidebar.ts';
import { toast } from './toast.ts';

const CHOICES = {
  ok: [{ name: 'ok', label: 'OK' }],
  'ok-cancel': [
    { name: 'ok', label: 'OK' },
    { name: 'cancel', label: 'Cancel' },
  ],
  'yes-no': [
    { name: 'yes', label: 'Yes' },
    { name: 'no', label: 'No' },
  ],
} as const;

/** Shows what the add-on asks for, and carries the answers back. */
export function showRequests(parts: {
  readonly boxes: Dialogs;
  readonly panel: Sidebar;
  readonly grid: Grid;
  readonly connection: Connection;
}): (request: ShownRequest) => void {
  const { boxes, panel, grid, connection } = parts;
  return (request) => {
    switch (request.kind) {
      case 'sidebar':
        panel.show(request.title, request.source);
        return;
      case 'dialog':
        boxes.page(request.title, request.source, request);
        return;
      case 'toast':
        toast(pageElement('toasts'), request.title, request.text);
        return;
      case 'activate':
        grid.select(request.sheet, request.range);
        return;
      default:
        void boxes
          .ask(request.title, request.text, CHOICES[request.buttons])
          .then((button) => connection.send({ kind: 'answer', id: request.id, button }));
    }
  };
}
