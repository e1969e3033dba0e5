import type { PlatformApi, ServiceCall, ServiceReply } from '../standIn/protocolTypes.ts';
import { BLOB, PACKING } from './blob.ts';
import { DATA_VALIDATION, DATA_VALIDATION_BUILDER } from './dataValidation.ts';
import { DEVELOPER_METADATA } from './developerMetadata.ts';
import {
  CHART_BUILDER,
  COLUMN_CHART_BUILDER,
  EMBEDDED_CHART,
  LINE_CHART_BUILDER,
} from './embeddedChart.ts';
import {
  CONSOLE,
  LOCK,
  LOCK_SERVICE,
  LOGGER,
  PROPERTIES,
  PROPERTIES_SERVICE,
  SESSION,
  USER,
  UTILITIES,
} from './lockService.ts';
import { PROTECTION } from './protection.ts';
import { RANGE } from './range.ts';
import { isWithSelf, type Method, type Session } from './session.ts';
import { FILTER, SHEET } from './sheet.ts';
import { SPREADSHEET, SPREADSHEET_APP } from './spreadsheet.ts';
import { HTML_OUTPUT, HTML_SERVICE, MENU, UI } from './ui.ts';

/** Every platform class the stand-in knows, by the name its objects carry. */
const CLASSES = {
  SpreadsheetApp: SPREADSHEET_APP,
  Spreadsheet: SPREADSHEET,
  Sheet: SHEET,
  Range: RANGE,
  Protection: PROTECTION,
  Filter: FILTER,
  EmbeddedChart: EMBEDDED_CHART,
  EmbeddedChartBuilder: CHART_BUILDER,
  EmbeddedColumnChartBuilder: COLUMN_CHART_BUILDER,
  EmbeddedLineChartBuilder: LINE_CHART_BUILDER,
  DataValidationBuilder: DATA_VALIDATION_BUILDER,
  DataValidation: DATA_VALIDATION,
  DeveloperMetadata: DEVELOPER_METADATA,
  HtmlService: HTML_SERVICE,
  HtmlOutput: HTML_OUTPUT,
  Ui: UI,
  Menu: MENU,
  LockService: LOCK_SERVICE,
  Lock: LOCK,
  PropertiesService: PROPERTIES_SERVICE,
  Properties: PROPERTIES,
  Utilities: { ...UTILITIES, ...PACKING },
  Blob: BLOB,
  Session: SESSION,
  User: USER,
  Console: CONSOLE,
  Logger: LOGGER,
  ScriptApp: {},
} as const;

const COMPARISONS = [
  'EQUAL_TO',
  'NOT_EQUAL_TO',
  'GREATER_THAN',
  'GREATER_THAN_OR_EQUAL_TO',
  'LESS_THAN',
  'LESS_THAN_OR_EQUAL_TO',
  'BETWEEN',
  'NOT_BETWEEN',
];

/** Names without calls: the platform's enumerations. */
const CONSTANTS = {
  SpreadsheetApp: {
    ProtectionType: ['RANGE', 'SHEET'],
    BorderStyle: ['DOTTED', 'DASHED', 'SOLID', 'SOLID_MEDIUM', 'SOLID_THICK', 'DOUBLE'],
    WrapStrategy: ['WRAP', 'OVERFLOW', 'CLIP'],
    DataValidationCriteria: [
      ...['VALUE_IN_LIST', 'VALUE_IN_RANGE', 'CHECKBOX', 'CUSTOM_FORMULA', 'DATE_IS_VALID_DATE'],
      ...[
        'DATE_AFTER',
        'DATE_BEFORE',
        'DATE_ON_OR_AFTER',
        'DATE_ON_OR_BEFORE',
        'DATE_EQUAL_TO',
        'DATE_BETWEEN',
      ],
      ...COMPARISONS.map((name) => `NUMBER_${name}`),
    ],
    DeveloperMetadataVisibility: ['DOCUMENT', 'PROJECT'],
  },
  Ui: {
    Button: ['OK', 'CANCEL', 'YES', 'NO', 'CLOSE'],
    ButtonSet: ['OK', 'OK_CANCEL', 'YES_NO'],
  },
  ScriptApp: { AuthMode: ['NONE', 'CUSTOM_FUNCTION', 'LIMITED', 'FULL'] },
} as const;

const GLOBALS = [
  'SpreadsheetApp',
  'HtmlService',
  'LockService',
  'PropertiesService',
  'Utilities',
  'Session',
  'ScriptApp',
  'Logger',
];

export const PLATFORM_API: PlatformApi = {
  methods: Object.fromEntries(
    Object.entries(CLASSES).map(([name, methods]) => [name, Object.keys(methods)]),
  ),
  constants: CONSTANTS,
  globals: { ...Object.fromEntries(GLOBALS.map((name) => [name, name])), console: 'Console' },
};

/** Finds the method of a call; the reference was made by the method table of its class, so the types agree. */
export function methodOf(call: ServiceCall): Method<unknown> | undefined {
  const methods: Readonly<Record<string, unknown>> =
    CLASSES[call.object as keyof typeof CLASSES] ?? {};
  return Object.hasOwn(methods, call.method)
    ? (methods[call.method] as Method<unknown>)
    : undefined;
}

/** @throws Error in the platform's words when a run of this kind may not do that */
export function requireAllowed(session: Session, call: ServiceCall, method: Method<unknown>): void {
  const name = `${call.object}.${call.method}`;
  if (
    session.mode === 'custom function' &&
    method.effect !== 'none' &&
    method.effect !== 'values'
  ) {
    throw new Error(`You do not have permission to call ${call.method}`);
  }
  if (session.mode === 'simple trigger' && method.effect === 'ui') {
    throw new Error(
      `You do not have permission to call ${name}. Required permissions: https://www.googleapis.com/auth/script.container.ui`,
    );
  }
}

export function replyOf(result: unknown): ServiceReply {
  if (isWithSelf(result)) return { kind: 'value', value: result.value, self: result.$ref };
  return { kind: 'value', value: result };
}
