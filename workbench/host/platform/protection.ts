import type { Box } from '../parseA1.ts';
import type { Protection } from '../platformState.ts';
import { sheetById } from '../sheetNamed.ts';
import { type ObjectMark, SELF } from '../standIn/protocolTypes.ts';
import { answerMethod, type Methods, type Session, writeMethod } from './session.ts';
import { type RangeRef, rangeMark } from './sheetOf.ts';
import { booleanArgument, objectArgument, textArgument } from './textArgument.ts';

export interface ProtectionRef {
  readonly protection: number;
}

function mark(id: number): ObjectMark {
  return { $object: 'Protection', ref: { protection: id } satisfies ProtectionRef };
}

/** Each call makes another protection, also on the same range: the platform does not merge them. */
export function addProtection(session: Session, sheet: string, box: Box | undefined): ObjectMark {
  const { platform } = session;
  const { protections } = platform.state();
  const id = Math.max(0, ...protections.map((item) => item.id)) + 1;
  const made: Protection = {
    id,
    sheet,
    ...(box ? { box } : {}),
    description: '',
    warningOnly: false,
  };
  platform.change({ protections: [...protections, made] });
  return mark(id);
}

/** Protections of a sheet of one kind; `RANGE` or `SHEET`. */
export function protectionsOf(
  session: Session,
  sheet: string | undefined,
  kind: string,
): readonly ObjectMark[] {
  if (kind !== 'RANGE' && kind !== 'SHEET') throw new Error(`There is no protection type ${kind}`);
  return session.platform
    .state()
    .protections.filter((item) => sheet === undefined || item.sheet === sheet)
    .filter((item) => (item.box === undefined) === (kind === 'SHEET'))
    .map((item) => mark(item.id));
}

function find(session: Session, ref: ProtectionRef): Protection {
  const found = session.platform.state().protections.find((item) => item.id === ref.protection);
  if (!found) throw new Error('The protection was removed');
  return found;
}

function update(session: Session, ref: ProtectionRef, part: Partial<Protection>) {
  const changed = { ...find(session, ref), ...part };
  const { protections } = session.platform.state();
  session.platform.change({
    protections: protections.map((item) => (item.id === ref.protection ? changed : item)),
  });
  return SELF;
}

function remove(session: Session, ref: ProtectionRef) {
  find(session, ref);
  const { protections } = session.platform.state();
  session.platform.change({
    protections: protections.filter((item) => item.id !== ref.protection),
  });
}

export const PROTECTION: Methods<GoogleAppsScript.Spreadsheet.Protection, ProtectionRef> = {
  getDescription: answerMethod((session, ref) => find(session, ref).description),
  isWarningOnly: answerMethod((session, ref) => find(session, ref).warningOnly),
  getProtectionType: answerMethod((session, ref) => (find(session, ref).box ? 'RANGE' : 'SHEET')),
  getRange: answerMethod((session, ref) => {
    const { sheet, box } = find(session, ref);
    const rows = sheetById(session.platform.engine, sheet);
    const whole: Box = {
      startRow: 0,
      startColumn: 0,
      endRow: rows.getRowCount() - 1,
      endColumn: rows.getColumnCount() - 1,
    };
    return rangeMark(sheet, box ?? whole);
  }),
  canEdit: answerMethod(() => true),
  setDescription: writeMethod((session, ref, args) =>
    update(session, ref, { description: textArgument(args, 0) }),
  ),
  setWarningOnly: writeMethod((session, ref, args) =>
    update(session, ref, { warningOnly: booleanArgument(args, 0) }),
  ),
  setRange: writeMethod((session, ref, args) => {
    const { sheet, box } = objectArgument<RangeRef>(args, 0, 'Range');
    return update(session, ref, { sheet, box });
  }),
  remove: writeMethod(remove),
};
