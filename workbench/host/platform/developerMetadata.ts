import type { Metadata } from '../platformState.ts';
import { type ObjectMark, SELF } from '../standIn/protocolTypes.ts';
import { answerMethod, type Methods, type Session, writeMethod } from './session.ts';
import { optionalTextArgument, textArgument } from './textArgument.ts';

export interface MetadataRef {
  readonly metadata: number;
}

function mark(item: Metadata): ObjectMark {
  return { $object: 'DeveloperMetadata', ref: { metadata: item.id } satisfies MetadataRef };
}

/** `addDeveloperMetadata(key, value)` on a sheet, or on the spreadsheet when `sheet` is undefined. */
export function addMetadata(session: Session, sheet: string | undefined, args: readonly unknown[]) {
  const { metadata } = session.platform.state();
  const made: Metadata = {
    id: Math.max(0, ...metadata.map((item) => item.id)) + 1,
    ...(sheet === undefined ? {} : { sheet }),
    key: textArgument(args, 0),
    value: optionalTextArgument(args, 1) ?? '',
  };
  session.platform.change({ metadata: [...metadata, made] });
  return SELF;
}

export function metadataOf(session: Session, sheet: string | undefined): readonly ObjectMark[] {
  const { metadata } = session.platform.state();
  return metadata.filter((item) => item.sheet === sheet).map(mark);
}

function find(session: Session, ref: MetadataRef): Metadata {
  const found = session.platform.state().metadata.find((item) => item.id === ref.metadata);
  if (!found) throw new Error('The developer metadata was removed');
  return found;
}

function replace(session: Session, ref: MetadataRef, change: (item: Metadata) => Metadata[]) {
  find(session, ref);
  const { metadata } = session.platform.state();
  session.platform.change({
    metadata: metadata.flatMap((item) => (item.id === ref.metadata ? change(item) : [item])),
  });
}

export const DEVELOPER_METADATA: Methods<
  GoogleAppsScript.Spreadsheet.DeveloperMetadata,
  MetadataRef
> = {
  getId: answerMethod((_session, ref) => ref.metadata),
  getKey: answerMethod((session, ref) => find(session, ref).key),
  getValue: answerMethod((session, ref) => find(session, ref).value),
  setValue: writeMethod((session, ref, args) => {
    replace(session, ref, (item) => [{ ...item, value: textArgument(args, 0) }]);
    return SELF;
  }),
  remove: writeMethod((session, ref) => replace(session, ref, () => [])),
};
