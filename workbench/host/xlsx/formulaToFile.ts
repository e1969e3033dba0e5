import { closeOpenRanges, reopenRanges } from '../closeOpenRanges.ts';
import { formula } from '../univer.ts';

/** Functions that a file marks with one prefix more. */
const SHEET_FUNCTIONS: readonly string[] = ['FILTER', 'SORT'];

const CALL = /(?<![A-Za-z0-9_.])([A-Za-z][A-Za-z0-9.]*)\(/g;

/** A formula as an .xlsx file holds it: no sign, closed ranges, prefixes on newer functions and on names LET makes. */
export function formulaToFile(text: string): string {
  const closed = closeOpenRanges(text.replace(/^=/, ''));
  const names = localNames(closed);
  return outsideText(closed, (part) => {
    const called = part.replace(CALL, (whole, name: string) => {
      const upper = name.toUpperCase();
      if (SHEET_FUNCTIONS.includes(upper)) return `_xlfn._xlws.${whole}`;
      return isNewer(upper) ? `_xlfn.${whole}` : whole;
    });
    return names.reduce((changed, name) => changed.replace(word(name), `_xlpm.${name}`), called);
  });
}

/** The formula as it was typed, from the text in a file. */
export function formulaFromFile(text: string): string {
  const plain = outsideText(text, (part) => part.replace(/_xlfn\.(_xlws\.)?|_xlpm\./g, ''));
  return `=${reopenRanges(plain)}`;
}

function isNewer(name: string): boolean {
  return name === 'LET' || name === 'LAMBDA' || formula.NEW_EXCEL_FUNCTIONS.has(name);
}

function word(name: string): RegExp {
  return new RegExp(`(?<![A-Za-z0-9_.!$:'])${name}(?![A-Za-z0-9_.(!:])`, 'gi');
}

/** Names made by LET (every second argument but the last) and by LAMBDA (all but the last). */
function localNames(text: string): readonly string[] {
  const names = new Set<string>();
  for (const match of text.matchAll(/\b(LET|LAMBDA)\(/gi)) {
    const args = argumentsFrom(text, match.index + match[0].length);
    const every = match[1]?.toUpperCase() === 'LET' ? 2 : 1;
    args.slice(0, -1).forEach((arg, index) => {
      if (index % every === 0 && /^[A-Za-z_]\w*$/.test(arg.trim())) names.add(arg.trim());
    });
  }
  return [...names];
}

/** Arguments of a call whose bracket opened just before `start`. */
function argumentsFrom(text: string, start: number): readonly string[] {
  const args: string[] = [];
  let [depth, from, quoted] = [0, start, false];
  for (let at = start; at < text.length; at++) {
    const sign = text[at] ?? '';
    if (sign === '"') quoted = !quoted;
    if (quoted) continue;
    if (sign === ',' && depth === 0) {
      args.push(text.slice(from, at));
      from = at + 1;
    }
    if ('({'.includes(sign)) depth += 1;
    if (')}'.includes(sign)) depth -= 1;
    if (depth < 0) return [...args, text.slice(from, at)];
  }
  return args;
}

function outsideText(text: string, change: (part: string) => string): string {
  return text
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((part, index) => (index % 2 === 1 ? part : change(part)))
    .join('');
}
