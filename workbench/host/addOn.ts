import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Comment, type FunctionDeclaration, parse } from 'acorn';

/** The built add-on as pushed to the platform. */
export interface AddOn {
  readonly code: string;
  /** Every top-level function: what menus, the sidebar and cells may name. */
  readonly functions: readonly string[];
  /** Those offered in cells: `@customfunction` stands in the doc comment. */
  readonly sheetFunctions: readonly string[];
  /** HTML files by name without ending. */
  readonly pages: Readonly<Record<string, string>>;
  /** The script's own zone, from the manifest. */
  readonly timeZone: string;
}

/** Reads a folder holding Code.js, appsscript.json and HTML files. */
export function readAddOn(dist: string): AddOn {
  const code = readFileSync(join(dist, 'Code.js'), 'utf8');
  const pages = readdirSync(dist)
    .filter((name) => name.endsWith('.html'))
    .map((name) => [name.replace(/\.html$/, ''), readFileSync(join(dist, name), 'utf8')] as const);
  return {
    code,
    ...topLevelFunctions(code),
    pages: Object.fromEntries(pages),
    timeZone: manifestZone(dist),
  };
}

function manifestZone(dist: string): string {
  const manifest: unknown = JSON.parse(readFileSync(join(dist, 'appsscript.json'), 'utf8'));
  const zone =
    typeof manifest === 'object' && manifest !== null && 'timeZone' in manifest
      ? manifest.timeZone
      : undefined;
  if (typeof zone !== 'string') throw new Error('appsscript.json names no timeZone');
  return zone;
}

/** Names of the declarations at the top level, and which of them carry `@customfunction`. */
export function topLevelFunctions(code: string): Pick<AddOn, 'functions' | 'sheetFunctions'> {
  const comments: Comment[] = [];
  const program = parse(code, { ecmaVersion: 2020, onComment: comments });
  const declared = program.body.filter(
    (node): node is FunctionDeclaration => node.type === 'FunctionDeclaration',
  );
  const name = (node: FunctionDeclaration) => node.id.name;
  return {
    functions: declared.map(name),
    sheetFunctions: declared
      .filter((node) => docComment(code, comments, node.start).includes('@customfunction'))
      .map(name),
  };
}

function docComment(code: string, comments: readonly Comment[], start: number): string {
  const before = comments.filter((comment) => comment.end <= start).at(-1);
  if (before?.type !== 'Block' || !before.value.startsWith('*')) return '';
  return code.slice(before.end, start).trim() === '' ? before.value : '';
}
