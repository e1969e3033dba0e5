import type { ContactFit } from '../heat/fit/contactFit.ts';
import { fitContact } from '../heat/fit/fitContact.ts';
import { type ContactAndLoss, type HeatTrial, trialTops } from '../heat/fit/heatTrial.ts';
import type { PlateFacts } from '../runSheet/findPlate.ts';
import type { Gaps } from '../runSheet/gaps.ts';
import { usualFigures } from '../runSheet/heatFigures.ts';
import { topTargetOf } from '../runSheet/plateHeat.ts';
import { sayTemperature } from '../runSheet/say.ts';
import { findPlateOf } from './findPlateOf.ts';
import type { Heating } from './gatherHeat.ts';
import { moldBlock } from './heatRow.ts';
import { heatTrialOf } from './heatTrialOf.ts';
import type { ReadingOff, TrialPicture, TrialResult } from './proposal.ts';

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
 * @returns undefined, with the gaps noted, when the plate or every mold lacks what a heating needs
 */
export function proposeContact(
  gaps: Gaps,
  plateName: string,
  heatings: readonly Heating[],
): ContactFound | undefined {
  const { shop } = gaps.index.book;
  const plate = findPlateOf(gaps, plateName);
  if (plate === undefined) return undefined;
  const known = heatings.flatMap((heating) => {
    const mold = gaps.index.molds.get(heating.mold.trim().toLowerCase());
    const block = mold && moldBlock(gaps, mold);
    return block ? [{ heating, trial: heatTrialOf(heating, block, plate, shop) }] : [];
  });
  if (known.length === 0) return undefined;
  const assumedLoss = plate.lossShare ?? 1;
  const fit = fitContact(
    known.map(({ trial }) => trial),
    undefined,
    assumedLoss,
  );
  return {
    result: resultOf(
      fit,
      known.reduce((sum, { trial }) => sum + trial.readings.length, 0),
    ),
    heatings: known.map(({ heating }) => heating),
    pictures: picturesOf(gaps, known, fit, plate),
  };
}

function resultOf(fit: ContactFit, count: number): TrialResult {
  if (fit.kind === 'no fit') return fit;
  const { value, standardError, from } = fit.lossShare;
  const loss =
    from === 'readings' ? { heatLoss: { value, standardError } } : { assumedLoss: value };
  return { kind: 'fitted', figure: fit.contact, count, ...loss, remarks: fit.remarks };
}

interface Known {
  readonly heating: Heating;
  readonly trial: HeatTrial;
}

/** One picture for each way of heating; with no fit the curve is that of the figures in use. */
function picturesOf(
  gaps: Gaps,
  known: readonly Known[],
  fit: ContactFit,
  plate: PlateFacts,
): readonly TrialPicture[] {
  const usual = usualFigures(plate, gaps.index.book.shop);
  const at: ContactAndLoss =
    fit.kind === 'fitted'
      ? { contact: fit.contact.value, lossShare: fit.lossShare.value }
      : { contact: usual.contactConductance, lossShare: usual.lossShare };
  let place = 0;
  const groups = new Map<string, { known: Known; readings: ReadingOff[] }>();
  for (const one of known) {
    const offs = fit.kind === 'fitted' ? fit.residuals.slice(place) : [];
    place += one.trial.readings.length;
    const group = groups.get(setupKey(one.heating)) ?? { known: one, readings: [] };
    groups.set(setupKey(one.heating), group);
    group.readings.push(...readingsOf(one.heating, offs));
  }
  return [...groups.values()].map((group) => pictureOf(gaps, group.known, group.readings, at));
}

function readingsOf(heating: Heating, offs: readonly number[]): readonly ReadingOff[] {
  return heating.readings.map((reading, index) => {
    const off = offs[index];
    return { trial: heating.trial, ...reading, ...(off === undefined ? {} : { off }) };
  });
}

function setupKey({ mold, setting, roomTemperature, moldsOnPlate, start, lid }: Heating): string {
  return [mold.trim().toLowerCase(), setting, roomTemperature, moldsOnPlate, start, lid].join('\n');
}

function pictureOf(
  gaps: Gaps,
  { heating, trial }: Known,
  readings: readonly ReadingOff[],
  at: ContactAndLoss,
): TrialPicture {
  const last = Math.max(SHORTEST_CURVE, ...readings.map(({ seconds }) => seconds));
  const count = Math.ceil(last / CURVE_STEP);
  const times = Array.from({ length: count + 1 }, (_, index) => index * CURVE_STEP);
  const tops = trialTops(trial, times, at);
  const copies = heating.moldsOnPlate === 1 ? '' : `${heating.moldsOnPlate} × `;
  return {
    kind: 'heat-trial',
    title: `${copies}${heating.mold}, plate at ${sayTemperature(heating.setting, gaps.system)}`,
    system: gaps.system,
    target: topTargetOf(gaps.index.book.shop),
    curve: times.map((seconds, index) => ({ seconds, top: tops[index] ?? 0 })),
    readings,
  };
}
