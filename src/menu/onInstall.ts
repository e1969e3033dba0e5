import { onOpen } from './onOpen.ts';

/** Simple trigger: the file is already open when the add-on is installed in it. */
export function onInstall(): void {
  onOpen();
}
