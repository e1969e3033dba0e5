import type { SheetCell } from './runSheetTypes.ts';

/** Something to read; `key` and `strong` stand out. */
export function textCell(text: string, size?: 'key' | 'strong' | 'small'): SheetCell {
  return size ? { kind: 'text', text, size } : { kind: 'text', text };
}

/** White space to write on by hand, with its unit. */
export function writeCell(unit = ''): SheetCell {
  return { kind: 'write', unit };
}
