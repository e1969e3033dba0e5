import { ROOMS } from './rooms.ts';

const START = '<!-- rooms: written by npm run generate -->';
const END = '<!-- /rooms -->';

/** DEVELOPERS.md with the map of rooms between its two marks. @throws Error where a mark is missing */
export function withRoomsTable(text: string): string {
  const [before, rest] = split(text, START);
  const [, after] = split(rest, END);
  return `${before}${START}\n${roomsTable()}${END}${after}`;
}

function roomsTable(): string {
  const rows = ROOMS.map(
    ({ room, holds, imports }) =>
      `| \`${room}\` | ${holds} | ${imports.map((one) => one.replace(/^shared\//, '')).join(', ') || 'nothing'} |\n`,
  );
  return `| room | what it holds | imports |\n| --- | --- | --- |\n${rows.join('')}`;
}

function split(text: string, mark: string): readonly [string, string] {
  const at = text.indexOf(mark);
  if (at < 0) throw new Error(`DEVELOPERS.md lacks the mark ${mark}`);
  return [text.slice(0, at), text.slice(at + mark.length)];
}
