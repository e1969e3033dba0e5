import { READING_ADVICE } from '../../shared/paper/runSheet/sections/plateSection.ts';

const ABOUT = [
  'Poursmith plans, prints and logs hand-poured soft plastic baits in this workbook. Its figures are estimates: check them on your own mold and material.',
  'The material’s SDS, the equipment manuals and local codes come first. Wiring and ventilation are for licensed trades.',
  'Hot plastisol burns. Wear a face shield, dry gloves and sleeves; run the extraction to the outdoors before any heat; keep water away from the melt; never leave heat unattended.',
  READING_ADVICE,
];

/** Menu item: what this is, and the cautions that go with it. */
export function showAbout(): void {
  const ui = SpreadsheetApp.getUi();
  ui.alert('About and cautions', ABOUT.join('\n\n'), ui.ButtonSet.OK);
}
