import type { Picture } from '../../pictures/pictureTypes.ts';

/** A place on the sheet: something to read, to tick, or to write on. */
export type SheetCell =
  | {
      readonly kind: 'text';
      readonly text: string;
      readonly size?: 'key' | 'strong' | 'small';
      /** The same figure in another unit, printed small behind it. */
      readonly note?: string;
    }
  /** Boxes to tick, one for each cup or item. */
  | { readonly kind: 'boxes'; readonly count: number }
  /** White space to write on, with the unit printed beside it. */
  | { readonly kind: 'write'; readonly unit: string };

/** A label with what belongs to it: `Quantity 40`. */
export interface SheetFact {
  readonly label: string;
  readonly cell: SheetCell;
}

export type SheetBlock =
  /** A row of labeled values. */
  | { readonly kind: 'facts'; readonly facts: readonly SheetFact[] }
  /** Sentences, one below the other. */
  | { readonly kind: 'lines'; readonly lines: readonly string[] }
  | { readonly kind: 'checklist'; readonly name: string; readonly items: readonly string[] }
  /** A picture as data: whoever draws the document draws it too. */
  | { readonly kind: 'picture'; readonly picture: Picture }
  | {
      readonly kind: 'table';
      readonly headings: readonly string[];
      /** Widths of the columns relative to each other. */
      readonly widths: readonly number[];
      readonly rows: readonly (readonly SheetCell[])[];
    };

export type SectionName =
  | 'cautions'
  | 'notes'
  | 'cups'
  | 'plate'
  | 'layers'
  | 'checklists'
  | 'outcome'
  | 'sign-off'
  | 'pictures';

export interface SheetSection {
  readonly name: SectionName;
  readonly heading: string;
  readonly blocks: readonly SheetBlock[];
}

/** Everything the run sheet says, in the shop's units and in reading order; print, screen and the tab draw this. */
export interface RunSheetDocument {
  readonly title: string;
  readonly shopName: string;
  readonly header: readonly SheetFact[];
  readonly sections: readonly SheetSection[];
}

/** What the plan does not know: which run this is. */
export interface RunIdentity {
  readonly runId: string;
  /** The day as it should print. */
  readonly date: string;
}
