import { OPTIONAL_TEXT } from '../sidebar/readPayload.ts';

/** Names in the book may be longer than an order's number. */
const NAME = { ...OPTIONAL_TEXT, longest: 200 };

/** What a page may ask of the quality. */
export const QUALITY_FIELDS = { mold: NAME, pattern: NAME, points: OPTIONAL_TEXT } as const;
