import type { Metadata } from '../extras.ts';
import { type ObjectMark, SELF } from '../standIn/protocolTypes.ts';
import { optionalText, text } from './optionalText.ts';
import { answer, type Methods, type Session, write } from './session.ts';

export interface MetadataRef {
  readonly metadata: number;
}

function mark(item: Metadata): ObjectMark {
  return { $object: 'DeveloperMetadata', ref: { metadata: item.id } satisfies MetadataRef };
}

/** `addDeveloperMetadata(key, value)` on a sheet, or on the spreadsheet when `sheet` is undefined. */
export function addMetadata(session: Session, sheet: string | undefined, args: readonly unknown[]) {
  const { metadata } = session.platform.extras();
  const made: Metadata = {
    id: Math.max(0, ...metadata.map((item) => item.id)) + 1,
    ...(sheet === undefined ? {} : { sheet }),
    key: text(args, 0),
    value: optionalText(args, 1) ?? '',
  };
  session.platform.change({ metadata: [...metadata, made] });
  return SELF;
}

export function metadataOf(session: Session, sheet: string | undefined): readonly ObjectMark[] {
  const { metadata } = session.platform.extras();
  return metadata.filter((item) => item.sheet === sheet).map(mark);
}

function find(session: Session, ref: MetadataRef): Metadata {
  const found = session.platform.extras().metadata.find((item) => item.id === ref.metadata);
  if (!found) throw new Error('The developer metadata was removed');
  return found;
}

function replace(session: Session, ref: MetadataRef, change: (item: Metadata) => Metadata[]) {
  find(session, ref);
  const { metadata } = session.platform.extras();
  session.platform.change({
    metadata: metadata.flatMap((item) => (item.id === ref.metadata ? change(item) : [item])),
  });
}

export const DEVELOPER_METADATA: Methods<
  GoogleAppsScript.Spreadsheet.DeveloperMetadata,
  MetadataRef
> = {
  getId: answer((_session, ref) => ref.metadata),
  getKey: answer((session, ref) => find(session, ref).key),
  getValue: answer((session, ref) => find(session, ref).value),
  setValue: write((session, ref, args) => {
    replace(session, ref, (item) => [{ ...item, value: text(args, 0) }]);
    return SELF;
  }),
  remove: write((session, ref) => replace(session, ref, () => [])),
};
