import { quoteElements } from '../shared/money/quote/quoteElements.ts';
import { drawElements } from './drawElements.ts';
import { openDialog } from './page/dialog.ts';

openDialog('quoteDocumentFor', ({ document: quote }) => {
  document.getElementById('quote')?.replaceChildren(drawElements(quoteElements(quote)));
});
