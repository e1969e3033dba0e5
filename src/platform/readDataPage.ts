/**
 * Data that only a menu item needs, kept in an HTML file of the project as JSON: the script itself, which every
 * sheet-function call loads, stays small.
 * @throws Error when the file was not installed with the script
 */
export function readDataPage(name: 'DemoShop' | 'BookNotes'): unknown {
  return JSON.parse(HtmlService.createHtmlOutputFromFile(name).getContent());
}
