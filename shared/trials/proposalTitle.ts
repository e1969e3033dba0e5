import { bondTexts, noBondText } from '../outcomes/bond/bondTexts.ts';
import type { UnitSystem } from '../units/measures.ts';
import { countText, listText, quantityText } from '../words/quantityText.ts';
import { puckText } from './bench/puckText.ts';
import { contactRemarkText, noContactText } from './contact/contactRemarkText.ts';
import { figureAdviceText } from './figureAdviceText.ts';
import { FIGURE_PARTS } from './figureCell.ts';
import { figureErrorText, figureText } from './figureText.ts';
import type { FigureKey, Proposal, ReadingOff, TrialUsed } from './proposal.ts';

const TITLES: Readonly<Record<FigureKey, string>> = {
  contact: 'Contact',
  setTemperature: 'Set temperature',
  dropVolume: 'Drop',
  microwaveEfficiency: 'Microwave efficiency',
  bondTemperature: 'Bond temperature',
};

/** What was measured, and of what: `Contact: Griddle A`. */
export function proposalTitle({ figure, of }: Pick<Proposal, 'figure' | 'of'>): string {
  return of === '' ? TITLES[figure] : `${TITLES[figure]}: ${of}`;
}

/** A value of the proposal's own figure in the user's units. */
export function proposalValue({ figure }: Proposal, value: number, system: UnitSystem): string {
  return figureText(FIGURE_PARTS[figure][0], value, system);
}

/** The figure in use and where it comes from. */
export function presentText(proposal: Proposal, system: UnitSystem): string {
  const { value, from } = proposal.present;
  const words = proposalValue(proposal, value, system);
  return from === 'default' ? `${words}, the usual figure` : words;
}

/** What the trials give: `81 W/m²·K ± 3 W/m²·K`; nothing where they give no figure. */
export function fittedText(proposal: Proposal, system: UnitSystem): string | undefined {
  const { figure, result } = proposal;
  if (result.kind !== 'fitted') return undefined;
  const { value, standardError } = result.figure;
  const error = figureErrorText(FIGURE_PARTS[figure][0], standardError, system);
  return `${proposalValue(proposal, value, system)} ± ${error}`;
}

/** The heat loss that goes with a fitted contact, told by the readings or taken for granted. */
export function heatLossText({ result }: Proposal, system: UnitSystem): string | undefined {
  if (result.kind !== 'fitted') return undefined;
  const { heatLoss, assumedLoss } = result;
  const loss = (value: number) => figureText('heat loss', value, system);
  if (heatLoss) return `${loss(heatLoss.value)} of the usual ± ${loss(heatLoss.standardError)}`;
  return assumedLoss === undefined ? undefined : `${loss(assumedLoss)} of the usual, assumed`;
}

/** Good enough for a microwave's and a drop's figure, as a share of it. */
const ENOUGH = { microwaveEfficiency: 0.1, dropVolume: 0.05 } as const;

/** What to make of the trials: phrases without capital and full stop, as `describe` words things. */
export function verdictTexts(proposal: Proposal, system: UnitSystem): readonly string[] {
  const { figure, result } = proposal;
  switch (result.kind) {
    case 'no trials':
      return ['the trials that it came from are not in the book any more'];
    case 'no fit':
      return [noContactText(result.because)];
    case 'no bond':
      return [noBondText(result.fit, system)];
    case 'beyond':
      return [`this cannot be: ${result.text}`];
    case 'fitted':
      break;
  }
  const { standardError } = result.figure;
  if (result.bond) return bondTexts(result.bond, system);
  if (figure === 'setTemperature') return [puckText(result.count, standardError)];
  if (figure === 'microwaveEfficiency')
    return [figureAdviceText(result.figure, ENOUGH[figure], 'heat further from cold in one burst')];
  if (figure === 'dropVolume')
    return [figureAdviceText(result.figure, ENOUGH[figure], 'count more drops')];
  const remarks = result.remarks.map((remark) => contactRemarkText(remark, system));
  const isWild = result.remarks.some(({ kind }) => kind === 'readings scatter more than the probe');
  return isWild ? [...remarks, ...farthestWords(proposal, system)] : remarks;
}

function farthestWords({ pictures }: Proposal, system: UnitSystem): readonly string[] {
  const readings = pictures.flatMap((picture) =>
    picture.kind === 'heat-trial' ? picture.readings : [],
  );
  const size = ({ off = 0 }: ReadingOff) => Math.abs(off);
  const [farthest] = [...readings].sort((one, other) => size(other) - size(one));
  if (farthest?.off === undefined) return [];
  const span = quantityText(size(farthest), 'temperatureDifference', system, 0);
  const side = farthest.off > 0 ? 'above' : 'below';
  return [`row ${farthest.row} of Heat trials lies ${span} ${side} the curve`];
}

/** One piece of the evidence for each figure. */
const EVIDENCE: Readonly<Record<FigureKey, string>> = {
  contact: 'reading',
  setTemperature: 'puck',
  dropVolume: 'count',
  microwaveEfficiency: 'heating',
  bondTemperature: 'joint',
};

/** What the figure rests on: `T-1 (2026-10-30) and T-3: 11 readings`. */
export function trialEvidenceText({ figure, result, trials }: Proposal): string {
  const names = listText(trials.map(trialWords));
  if (result.kind !== 'fitted') return names;
  return `${names}: ${countText(result.count, EVIDENCE[figure])}`;
}

function trialWords({ trial, date }: TrialUsed): string {
  return date === undefined ? trial : `${trial} (${date})`;
}
