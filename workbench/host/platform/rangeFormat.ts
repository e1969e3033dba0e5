import type { IBorderData, IStyleData } from '@univerjs/core';
import { changesFor, patternAt, styleAt, writeCells } from '../sheetNamed.ts';
import { SELF } from '../standIn/protocolTypes.ts';
import { core } from '../univer.ts';
import { all, each, one, same } from './rangeValues.ts';
import { answerMethod, type Methods, type Session, writeMethod } from './session.ts';
import { type RangeRef, sheetOf } from './sheetOf.ts';
import { numberArgument, signatureError, textArgument } from './textArgument.ts';

type Style = (value: unknown) => IStyleData;

const background: Style = (value) => ({ bg: color(value) });
const fontColor: Style = (value) => ({ cl: color(value) });
const fontFamily: Style = (value) => ({ ff: value === null ? null : textArgument([value], 0) });
const fontSize: Style = (value) => ({ fs: numberArgument([value], 0) });
const fontWeight: Style = (value) => ({ bl: choice(value, { normal: 0, bold: 1 }) });
const fontStyle: Style = (value) => ({ it: choice(value, { normal: 0, italic: 1 }) });
const numberFormat: Style = (value) => ({ n: { pattern: textArgument([value], 0) } });
const wrap: Style = (value) => ({ tb: value === true ? 3 : 1 });
const wrapStrategy: Style = (value) => ({ tb: choice(value, { OVERFLOW: 1, CLIP: 2, WRAP: 3 }) });
const horizontal: Style = (value) => ({
  ht: choice(value, { normal: 0, left: 1, center: 2, right: 3 }),
});
const vertical: Style = (value) => ({ vt: choice(value, { top: 1, middle: 2, bottom: 3 }) });

function color(value: unknown): IStyleData['bg'] {
  return value === null ? null : { rgb: textArgument([value], 0) };
}

function choice(value: unknown, choices: Readonly<Record<string, number>>): number {
  const known = value === null ? 0 : choices[String(value)];
  if (known === undefined) throw signatureError([value]);
  return known;
}

function single(style: Style) {
  return writeMethod<RangeRef>(same((_session, _ref, value) => ({ s: style(value) })));
}

function plural(style: Style) {
  return writeMethod<RangeRef>(each((_session, _ref, value) => ({ s: style(value) })));
}

type ReadStyle = (style: IStyleData) => unknown;

function styleReader(read: ReadStyle) {
  return (session: Session, ref: RangeRef, row: number, column: number) =>
    read(styleAt(session.platform.engine, sheetOf(session, ref), row, column));
}

const readBackground = styleReader((style) => style.bg?.rgb ?? '#ffffff');
const readFontColor = styleReader((style) => style.cl?.rgb ?? '#000000');
const readWeight = styleReader((style) => (style.bl === 1 ? 'bold' : 'normal'));
const readSize = styleReader((style) => style.fs ?? 10);
const readWrap = styleReader((style) => style.tb === 3);
const readPattern = (session: Session, ref: RangeRef, row: number, column: number) => {
  const pattern = patternAt(session.platform.engine, sheetOf(session, ref), row, column);
  return pattern === '' ? 'General' : pattern;
};

const LINES: Readonly<Record<string, number>> = {
  SOLID: core.BorderStyleTypes.THIN,
  SOLID_MEDIUM: core.BorderStyleTypes.MEDIUM,
  SOLID_THICK: core.BorderStyleTypes.THICK,
  DOTTED: core.BorderStyleTypes.DOTTED,
  DASHED: core.BorderStyleTypes.DASHED,
  DOUBLE: core.BorderStyleTypes.DOUBLE,
};

/** `setBorder(top, left, bottom, right, vertical, horizontal, color, style)`: null leaves a line as it is. */
function setBorder(session: Session, ref: RangeRef, args: readonly unknown[]) {
  const [top, left, bottom, right, inner, between] = args.slice(0, 6);
  const line = {
    s: LINES[String(args[7] ?? 'SOLID')] ?? core.BorderStyleTypes.THIN,
    cl: { rgb: typeof args[6] === 'string' ? args[6] : '#000000' },
  };
  const edge = (wanted: unknown, side: keyof IBorderData): IBorderData =>
    typeof wanted === 'boolean' ? { [side]: wanted ? line : null } : {};
  const { startRow, startColumn, endRow, endColumn } = ref.box;
  const changes = changesFor(ref.box, (row, column) => ({
    s: {
      bd: {
        ...edge(row === startRow ? top : between, 't'),
        ...edge(row === endRow ? bottom : between, 'b'),
        ...edge(column === startColumn ? left : inner, 'l'),
        ...edge(column === endColumn ? right : inner, 'r'),
      },
    },
  }));
  writeCells(session.platform.engine, ref.sheet, changes);
  return SELF;
}

export const RANGE_FORMAT: Methods<GoogleAppsScript.Spreadsheet.Range, RangeRef> = {
  setBackground: single(background),
  setBackgrounds: plural(background),
  setFontColor: single(fontColor),
  setFontColors: plural(fontColor),
  setFontFamily: single(fontFamily),
  setFontFamilies: plural(fontFamily),
  setFontSize: single(fontSize),
  setFontSizes: plural(fontSize),
  setFontWeight: single(fontWeight),
  setFontWeights: plural(fontWeight),
  setFontStyle: single(fontStyle),
  setFontStyles: plural(fontStyle),
  setNumberFormat: single(numberFormat),
  setNumberFormats: plural(numberFormat),
  setWrap: single(wrap),
  setWraps: plural(wrap),
  setWrapStrategy: single(wrapStrategy),
  setWrapStrategies: plural(wrapStrategy),
  setHorizontalAlignment: single(horizontal),
  setHorizontalAlignments: plural(horizontal),
  setVerticalAlignment: single(vertical),
  setVerticalAlignments: plural(vertical),
  setBorder: writeMethod(setBorder),
  getBackground: answerMethod(one(readBackground)),
  getBackgrounds: answerMethod(all(readBackground)),
  getFontColor: answerMethod(one(readFontColor)),
  getFontWeight: answerMethod(one(readWeight)),
  getFontWeights: answerMethod(all(readWeight)),
  getFontSize: answerMethod(one(readSize)),
  getFontSizes: answerMethod(all(readSize)),
  getWrap: answerMethod(one(readWrap)),
  getNumberFormat: answerMethod(one(readPattern)),
  getNumberFormats: answerMethod(all(readPattern)),
};
