import { quoteElements } from '../../shared/paper/quote/quoteElements.ts';
import { drawElements } from '../page/drawElements.ts';
import { openDialog } from './openDialog.ts';

openDialog('quoteDocumentFor', ({ document: quote }) => {
  document.getElementById('quote')?.replaceChildren(drawElements(quoteElements(quote)));
});
