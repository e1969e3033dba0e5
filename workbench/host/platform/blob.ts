import { gunzipSync } from 'node:zlib';
import { answerMethod, type Methods } from './session.ts';
import {
  arrayArgument,
  numberArgument,
  objectArgument,
  optionalTextArgument,
  textArgument,
} from './textArgument.ts';

/** Bytes as the platform has them, -128 to 127, and what they are said to be. */
interface BlobRef {
  readonly bytes: readonly number[];
  readonly type: string;
}

const GZIP = ['application/x-gzip', 'application/gzip'];

function blob(bytes: Buffer, type: string) {
  const signed = new Int8Array(bytes.buffer, bytes.byteOffset, bytes.length);
  return { $object: 'Blob', ref: { bytes: [...signed], type } satisfies BlobRef };
}

/** The part of the platform's utilities that packs and unpacks. */
export const PACKING: Methods<GoogleAppsScript.Utilities.Utilities, null> = {
  base64Decode: answerMethod((_session, _ref, args) => {
    const bytes = Buffer.from(textArgument(args, 0), 'base64');
    return [...new Int8Array(bytes.buffer, bytes.byteOffset, bytes.length)];
  }),
  newBlob: answerMethod((_session, _ref, args) => {
    const bytes = arrayArgument(args, 0).map((_, index, all) => numberArgument(all, index));
    return blob(Buffer.from(Int8Array.from(bytes).buffer), optionalTextArgument(args, 1) ?? '');
  }),
  ungzip: answerMethod((_session, _ref, args) => {
    const { bytes, type } = objectArgument<BlobRef>(args, 0, 'Blob');
    if (!GZIP.includes(type)) throw new Error('Could not decompress gzip.');
    return blob(gunzipSync(Buffer.from(Int8Array.from(bytes).buffer)), 'text/plain');
  }),
};

export const BLOB: Methods<GoogleAppsScript.Base.Blob, BlobRef> = {
  getDataAsString: answerMethod((_session, { bytes }, args) => {
    const charset = optionalTextArgument(args, 0) ?? 'UTF-8';
    if (charset !== 'UTF-8') throw new Error(`The stand-in does not know the charset ${charset}`);
    return Buffer.from(Int8Array.from(bytes).buffer).toString('utf8');
  }),
};
