import { element, headCell, titledSection } from '../../elements/element.ts';
import type { PlainElement } from '../../elements/plainElement.ts';
import type { QuoteDocument, QuoteFact } from '../../money/quote/quoteDocument.ts';

/** The quote as a tree of elements that any page can draw; the look is in one stylesheet, by class. */
export function quoteElements(document: QuoteDocument): PlainElement {
  const { shopName, head, goods, lines, sums, breaks, notes, terms } = document;
  return element('article', 'quote', [
    element('header', '', [
      element('div', 'title', [element('h1', '', ['Quote']), element('div', 'shop', [shopName])]),
      factsOf(head),
    ]),
    titledSection('goods', 'What we pour for you', [factsOf(goods)]),
    titledSection('price', 'Price', [
      element('table', 'sum', [element('tbody', '', [...lines.map(lineOf), ...sums.map(sumOf)])]),
    ]),
    ...(terms.length === 0 ? [] : [titledSection('terms', 'Terms', [listOf(terms)])]),
    element('div', breaks.length === 0 ? '' : 'pair', [
      ...(breaks.length === 0 ? [] : [breaksOf(breaks)]),
      element('div', 'side', [
        titledSection('notes', 'Good to know', [listOf(notes)]),
        element('div', 'signature', [
          element('span', '', ['Accepted by']),
          element('span', '', ['Date']),
        ]),
      ]),
    ]),
  ]);
}

function factsOf(facts: readonly QuoteFact[]): PlainElement {
  return element(
    'div',
    'facts',
    facts.map(([label, words]) =>
      element('div', 'fact', [
        element('span', 'label', [label]),
        element('span', 'value', [words]),
      ]),
    ),
  );
}

function lineOf([label, amount]: QuoteFact): PlainElement {
  return element('tr', '', [headCell('row', label), element('td', 'amount', [amount])]);
}

function sumOf(fact: QuoteFact, index: number): PlainElement {
  return { ...lineOf(fact), attributes: { class: index === 0 ? 'total' : 'due' } };
}

function breaksOf(breaks: QuoteDocument['breaks']): PlainElement {
  const heads = ['Pieces', 'Price of a piece', 'Price of the pieces'].map((text) =>
    headCell('col', text),
  );
  const rows = breaks.map(([quantity, each, pieces]) =>
    element('tr', '', [
      headCell('row', quantity),
      element('td', 'amount', [each]),
      element('td', 'amount', [pieces]),
    ]),
  );
  return titledSection('breaks', 'Price by quantity, same pattern and mold', [
    element('table', 'steps', [
      element('thead', '', [element('tr', '', heads)]),
      element('tbody', '', rows),
    ]),
    element('p', '', ['Before charges, discount, shipping and sales tax.']),
  ]);
}

function listOf(texts: readonly string[]): PlainElement {
  return element(
    'div',
    'lines',
    texts.map((text) => element('p', '', [text])),
  );
}
