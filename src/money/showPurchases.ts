import type { PurchasesShown } from '../../shared/commands/stockCommands.ts';
import { requestDialog } from '../sidebar/requestDialog.ts';

/** Page call: opens the dialog that shows and prints the purchase list; takes no payload. */
export function showPurchases(): PurchasesShown {
  requestDialog('Purchases', 'Purchase list', {});
  return { kind: 'ok' };
}
