import { OPTIONAL_TEXT } from '../sidebar/readPayload.ts';

/** What a page may ask of the causes. */
export const CAUSE_FIELDS = { row: OPTIONAL_TEXT, from: OPTIONAL_TEXT } as const;
