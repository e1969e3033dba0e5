import type { QuoteDocument } from './quoteDocument.ts';

const PAIRS = ['head', 'goods', 'lines', 'sums'] as const;
const TEXTS = ['notes', 'terms'] as const;

/** A quote from the text it was kept as; undefined where that was changed so that it is none any more. */
export function readQuoteDocument(text: string): QuoteDocument | undefined {
  const kept = parsed(text);
  if (kept === undefined || typeof kept['shopName'] !== 'string') return undefined;
  const isWhole =
    PAIRS.every((name) => isRows(kept[name], 2)) &&
    isRows(kept['breaks'], 3) &&
    TEXTS.every((name) => isTexts(kept[name]));
  return isWhole ? (kept as unknown as QuoteDocument) : undefined; // every part of it was just checked
}

function parsed(text: string): Readonly<Record<string, unknown>> | undefined {
  try {
    const kept: unknown = JSON.parse(text);
    return typeof kept === 'object' && kept !== null ? { ...kept } : undefined;
  } catch {
    return undefined;
  }
}

function isRows(value: unknown, length: number): boolean {
  return Array.isArray(value) && value.every((row) => isTexts(row) && row.length === length);
}

function isTexts(value: unknown): value is readonly string[] {
  return Array.isArray(value) && value.every((one) => typeof one === 'string');
}
