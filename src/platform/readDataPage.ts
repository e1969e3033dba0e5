import { pageText } from './pageText.ts';

/**
 * Data that only a menu item needs, kept beside the script as JSON: the script itself, which every sheet-function call loads, stays
 * small.
 * @throws Error when it was not installed with the script
 */
export function readDataPage(name: 'DemoShop' | 'BookNotes'): unknown {
  return JSON.parse(pageText(name));
}
