/** The names of the pages and data files that go with the script. */
export type PageName =
  | 'Sidebar'
  | 'RunSheet'
  | 'Heat'
  | 'Quality'
  | 'Causes'
  | 'PourDay'
  | 'Purchases'
  | 'Quote'
  | 'DemoShop'
  | 'BookNotes';

/** Only in the one file to paste: each page as a function that gives its text packed, in parts. */
declare const PoursmithPages_: Readonly<Record<string, () => readonly string[]>> | undefined;

/**
 * The text of a page: from its HTML file of the project, or, where the script was pasted as one file, from inside it. Nothing is
 * unpacked before it is asked for.
 * @throws Error when the file was not installed with the script
 */
export function pageText(name: PageName): string {
  if (typeof PoursmithPages_ === 'undefined')
    return HtmlService.createHtmlOutputFromFile(name).getContent();
  const packed = PoursmithPages_[name];
  if (packed === undefined) throw new Error(`The page ${name} is not in the script.`);
  const bytes = Utilities.base64Decode(packed().join(''));
  return Utilities.ungzip(Utilities.newBlob(bytes, 'application/x-gzip')).getDataAsString('UTF-8');
}
