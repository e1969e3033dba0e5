import { element, headCell, textList, titledSection } from '../../elements/element.ts';
import type { PlainElement } from '../../elements/plainElement.ts';
import { drawPicture } from '../../pictures/drawPicture.ts';
import { pictureText } from '../../pictures/pictureText.ts';
import type {
  RunSheetDocument,
  SectionName,
  SheetBlock,
  SheetCell,
  SheetFact,
  SheetSection,
} from './runSheetTypes.ts';

/** Sections side by side at the top of the page, and those across it below. */
const SIDE: readonly SectionName[] = ['cautions', 'plate'];
const MAIN: readonly SectionName[] = ['notes', 'cups', 'layers'];
const BELOW: readonly SectionName[] = ['checklists', 'outcome', 'sign-off', 'pictures'];

/** A picture fills the page; wider than a page is at the size of its letters [px], so they print a little smaller. */
const PICTURE_WIDTH = 740;

/** The document as a tree of elements that any page can draw; the look is in one stylesheet, by class. */
export function runSheetElements(document: RunSheetDocument): PlainElement {
  const title =
    document.shopName === '' ? document.title : `${document.shopName} – ${document.title}`;
  return element('article', 'run-sheet', [
    element('header', 'sheet-header', [
      element('h1', '', [title]),
      element('div', 'facts', document.header.map(factElement)),
    ]),
    element('div', 'columns', [
      element('div', 'side', sectionsIn(document, SIDE)),
      element('div', 'main', sectionsIn(document, MAIN)),
    ]),
    ...sectionsIn(document, BELOW),
  ]);
}

function sectionsIn(
  { sections }: RunSheetDocument,
  names: readonly SectionName[],
): readonly PlainElement[] {
  return sections.filter(({ name }) => names.includes(name)).map(sectionElement);
}

function sectionElement(section: SheetSection): PlainElement {
  return titledSection(`section ${section.name}`, section.heading, [
    element('div', 'blocks', section.blocks.map(blockElement)),
  ]);
}

function blockElement(block: SheetBlock): PlainElement {
  switch (block.kind) {
    case 'facts':
      return element('div', 'facts', block.facts.map(factElement));
    case 'lines':
      return textList('lines', block.lines);
    case 'checklist':
      return element('div', 'checklist', [
        element('h3', '', [block.name]),
        element('ul', '', block.items.map(itemElement)),
      ]);
    case 'picture':
      return element('figure', '', [
        drawPicture(block.picture, PICTURE_WIDTH),
        element('figcaption', '', [pictureText(block.picture)]),
      ]);
    case 'table':
      return tableElement(block);
  }
}

function tableElement(block: Extract<SheetBlock, { readonly kind: 'table' }>): PlainElement {
  const total = block.widths.reduce((sum, width) => sum + width, 0);
  const columns = block.widths.map((width) => ({
    tag: 'col' as const,
    attributes: { width: `${((width / total) * 100).toFixed(2)}%` },
    children: [],
  }));
  const heads = block.headings.map((heading) => headCell('col', heading));
  const rows = block.rows.map((cells) =>
    element(
      'tr',
      '',
      cells.map((cell) => element('td', '', [cellElement(cell)])),
    ),
  );
  return element('table', '', [
    element('colgroup', '', columns),
    element('thead', '', [element('tr', '', heads)]),
    element('tbody', '', rows),
  ]);
}

function factElement({ label, cell }: SheetFact): PlainElement {
  const kind = cell.kind === 'text' && cell.size ? cell.size : cell.kind;
  return element('div', `fact ${kind}`, [element('span', 'label', [label]), cellElement(cell)]);
}

function itemElement(item: string): PlainElement {
  return element('li', '', [box(`tick: ${item}`), element('span', 'item', [item])]);
}

function cellElement(cell: SheetCell): PlainElement {
  switch (cell.kind) {
    case 'text':
      return element('span', cell.size ? `value ${cell.size}` : 'value', [
        ...(cell.note === undefined
          ? [cell.text]
          : [element('span', 'whole', [cell.text]), element('span', 'note', [cell.note])]),
      ]);
    case 'boxes':
      return element(
        'span',
        'boxes',
        Array.from({ length: cell.count }, (_, index) => box(`tick ${index + 1}`)),
      );
    case 'write':
      return element(
        'span',
        'write',
        cell.unit === '' ? [] : [element('span', 'unit', [cell.unit])],
      );
  }
}

function box(label: string): PlainElement {
  return { tag: 'span', attributes: { class: 'box', 'aria-label': label }, children: [] };
}
