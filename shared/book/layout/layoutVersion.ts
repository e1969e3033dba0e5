/**
 * Version of the sheets' formats, notes and drop-downs. Raise it when any of them changes: the next set-up then dresses
 * every sheet of an older version anew.
 */
export const LAYOUT_VERSION = 3;

/** Keys of the developer metadata that a sheet of the book carries. */
export const TABLE_KEY = 'poursmithTable';
export const LAYOUT_KEY = 'poursmithLayout';

/** Rows of a new sheet, heading included. A log grows by itself. */
export const NEW_ROWS = 200;

/** Black on these is at least 16 to 1. */
export const HEADING_COLOR = '#dfeae6';
export const COMPUTED_COLOR = '#ececec';

/** Wider sheets keep their first column in sight. */
export const FREEZE_FROM_COLUMNS = 9;
