import { pictureText } from '../../pictures/pictureText.ts';
import type { RunSheetDocument, SheetBlock } from './runSheetTypes.ts';
import { addChecklists, addFacts, addLine, addTableBlock } from './tab/addTableBlock.ts';
import { type RunSheetCells, type RunSheetDraft, TAB_WIDTHS } from './tab/tabTypes.ts';

type Checklist = Extract<SheetBlock, { readonly kind: 'checklist' }>;

/** The run sheet laid out as cells for the *Run sheet* tab: the same document as the printed page, boxes to tick on a tablet. */
export function runSheetCells(document: RunSheetDocument): RunSheetCells {
  const draft: RunSheetDraft = { rows: [], merges: [], frames: [], ticks: [] };
  const { shopName, title } = document;
  addLine(draft, shopName === '' ? title : `${shopName} – ${title}`, 'title');
  addFacts(draft, document.header);
  for (const section of document.sections) {
    addLine(draft, section.heading, 'heading');
    const lists = section.blocks.filter((block): block is Checklist => block.kind === 'checklist');
    if (lists.length > 0) addChecklists(draft, lists);
    for (const block of section.blocks) addBlock(draft, block);
  }
  return { columnWidths: TAB_WIDTHS, ...draft };
}

function addBlock(draft: RunSheetDraft, block: SheetBlock): void {
  switch (block.kind) {
    case 'facts':
      addFacts(draft, block.facts);
      return;
    case 'lines':
      for (const line of block.lines) addLine(draft, line, 'small');
      return;
    case 'picture':
      addLine(draft, pictureText(block.picture), 'small');
      return;
    case 'table':
      addTableBlock(draft, block);
      return;
    case 'checklist':
      return;
  }
}
