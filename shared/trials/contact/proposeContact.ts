import { nameKey } from '../../book/bookIndex.ts';
import type { MissingCells } from '../../book/missingCells.ts';
import type { ContactFit } from '../../heat/fit/contactFit.ts';
import { fitContact } from '../../heat/fit/fitContact.ts';
import { type ContactAndLoss, type HeatTrial, trialTops } from '../../heat/fit/heatTrial.ts';
import type { PlateFacts } from '../../plan/facts/findPlate.ts';
import { usualFigures } from '../../plan/heat/heatFigures.ts';
import { topTargetOf } from '../../plan/heat/plateHeat.ts';
import { temperatureText } from '../../words/quantityText.ts';
import { findPlateOf } from '../findPlateOf.ts';
import type { ReadingOff, TrialPicture, TrialResult } from '../proposal.ts';
import type { Heating } from './gatherHeat.ts';
import { moldBlock } from './heatRow.ts';
import { heatTrialOf } from './heatTrialOf.ts';

/** What the heatings of one plate give. */
export interface ContactFound {
  readonly result: TrialResult;
  readonly heatings: readonly Heating[];
  readonly pictures: readonly TrialPicture[];
}

/** Of a drawn curve: at least this long, and between its points [s]. */
const SHORTEST_CURVE = 1800;
const CURVE_STEP = 60;

/**
 * Contact, and heat loss where the readings tell it, of one plate from all its heatings together, whatever molds stood on it.
 * @returns undefined, with the gaps noted, when the plate or every mold lacks what a heating needs; the bounds of
 * their columns are narrower than the model's own
 */
export function proposeContact(
  gaps: MissingCells,
  plateName: string,
  heatings: readonly Heating[],
): ContactFound | undefined {
  const plate = findPlateOf(gaps, plateName);
  if (plate === undefined) return undefined;
  const setups = setupsOf(gaps, plate, heatings);
  if (setups.length === 0) return undefined;
  const fit = fitContact(
    setups.map(({ trial }) => trial),
    undefined,
    plate.lossShare ?? 1,
  );
  const count = setups.reduce((sum, { readings }) => sum + readings.length, 0);
  return {
    result: resultOf(fit, count),
    heatings: setups.flatMap((setup) => setup.heatings),
    pictures: picturesOf(gaps, setups, fit, plate),
  };
}

/** One way of heating, with the readings of every trial that was made so: they are computed and drawn together. */
interface Setup {
  readonly trial: HeatTrial;
  readonly heatings: readonly Heating[];
  readonly readings: readonly ReadingOff[];
}

function setupsOf(
  gaps: MissingCells,
  plate: PlateFacts,
  heatings: readonly Heating[],
): readonly Setup[] {
  const groups = new Map<string, [Heating, ...Heating[]]>();
  for (const heating of heatings) {
    const group = groups.get(setupKey(heating));
    if (group) group.push(heating);
    else groups.set(setupKey(heating), [heating]);
  }
  return [...groups.values()].flatMap((alike) => {
    const mold = gaps.index.molds.get(nameKey(alike[0].mold));
    const block = mold && moldBlock(gaps, mold);
    if (block === undefined) return [];
    const trial = heatTrialOf(alike[0], block, plate, gaps.index.book.shop);
    const readings = alike.flatMap((heating) =>
      heating.readings.map((reading) => ({ trial: heating.trial, ...reading })),
    );
    const times = readings.map(({ seconds, top }) => ({ seconds, top }));
    return [{ trial: { ...trial, readings: times }, heatings: alike, readings }];
  });
}

function setupKey({ mold, setting, roomTemperature, moldsOnPlate, start, lid }: Heating): string {
  return nameKey(mold, setting, roomTemperature, moldsOnPlate, start, lid);
}

function resultOf(fit: ContactFit, count: number): TrialResult {
  if (fit.kind === 'no fit') return fit;
  const { value, standardError, from } = fit.lossShare;
  const loss =
    from === 'readings' ? { heatLoss: { value, standardError } } : { assumedLoss: value };
  return { kind: 'fitted', figure: fit.contact, count, ...loss, remarks: fit.remarks };
}

/** One picture for each way of heating; with no fit the curve is that of the figures in use. */
function picturesOf(
  gaps: MissingCells,
  setups: readonly Setup[],
  fit: ContactFit,
  plate: PlateFacts,
): readonly TrialPicture[] {
  const usual = usualFigures(plate, gaps.index.book.shop);
  const at: ContactAndLoss =
    fit.kind === 'fitted'
      ? { contact: fit.contact.value, lossShare: fit.lossShare.value }
      : { contact: usual.contactConductance, lossShare: usual.lossShare };
  const offs = fit.kind === 'fitted' ? [...fit.residuals] : [];
  return setups.map((setup) => {
    const readings = setup.readings.map((reading) => {
      const off = offs.shift();
      return off === undefined ? reading : { ...reading, off };
    });
    return pictureOf(gaps, setup, readings, at);
  });
}

function pictureOf(
  gaps: MissingCells,
  { heatings, trial }: Setup,
  readings: readonly ReadingOff[],
  at: ContactAndLoss,
): TrialPicture {
  const last = Math.max(SHORTEST_CURVE, ...readings.map(({ seconds }) => seconds));
  const count = Math.ceil(last / CURVE_STEP);
  const times = Array.from({ length: count + 1 }, (_, index) => index * CURVE_STEP);
  const tops = trialTops(trial, times, at);
  const { mold = '', setting = 0, moldsOnPlate = 1 } = heatings[0] ?? {};
  const copies = moldsOnPlate === 1 ? '' : `${moldsOnPlate} × `;
  return {
    kind: 'heat-trial',
    title: `${copies}${mold}, plate at ${temperatureText(setting, gaps.system)}`,
    system: gaps.system,
    target: topTargetOf(gaps.index.book.shop),
    curve: times.map((seconds, index) => ({ seconds, top: tops[index] ?? 0 })),
    readings,
  };
}
