import type { OrderPlan, PlatePlan } from '../../../plan/planTypes.ts';
import { plateOnText } from '../../../plan/plateOnText.ts';
import { widestText } from '../../../plan/uncertainty/widestText.ts';
import { countText, durationText, temperatureText } from '../../../words/quantityText.ts';
import { timeBandText } from '../../../words/timeBandText.ts';
import type { SheetBlock, SheetFact, SheetSection } from '../runSheetTypes.ts';
import { textCell } from '../textCell.ts';

/** Said wherever a mold reading is asked for. */
export const READING_ADVICE =
  'Read the mold top with a surface probe, or infrared on tape or matt paint: bare metal reads far too low.';

/** The plate: dial, when on, and the reading that starts the run. */
export function plateSection(plan: OrderPlan): SheetSection {
  const { plate } = plan;
  if (plate.kind === 'unreachable')
    return {
      name: 'plate',
      heading: 'Heat',
      blocks: [
        {
          kind: 'lines',
          lines: [`The mold will not get hot enough: ${plate.because}.`, READING_ADVICE],
        },
      ],
    };
  const facts: SheetBlock = { kind: 'facts', facts: factsOf(plan, plate) };
  return {
    name: 'plate',
    heading: `Heat: ${plate.plate}`,
    blocks: [
      facts,
      { kind: 'lines', lines: [heatUpLine(plan, plate), READING_ADVICE, cookingLine(plan)] },
    ],
  };
}

/** How long the mold takes, how sure that is, and the trial that would tell. */
export function heatUpLine({ detail }: OrderPlan, plate: PlatePlan): string {
  const band = timeBandText(detail?.heatUp);
  const sure = band === '' ? '' : ` (${band})`;
  const widest = detail?.heatUp?.widest;
  const why = widest === undefined ? '' : ` ${widestText(widest)}`;
  return `Hot about ${durationText(plate.heatUp, 'up')}${sure} after switching on.${why}`;
}

function cookingLine(plan: OrderPlan): string {
  const cooked = temperatureText(plan.cookTemperature, plan.system);
  const bursts = countText(plan.cookBursts, 'short burst');
  return `Cook each cup to ${cooked} in ${bursts}, about ${durationText(plan.cookTime)} in all; stir between.`;
}

function factsOf(plan: OrderPlan, plate: PlatePlan): readonly SheetFact[] {
  const { system } = plan;
  return [
    { label: 'Set to', cell: textCell(temperatureText(plate.setting, system), 'key') },
    { label: 'On at', cell: textCell(plateOnText(plan, plate), 'key') },
    {
      label: 'Mold top must read',
      cell: {
        kind: 'text',
        text: temperatureText(plate.topTarget, system, 'up'),
        size: 'key',
        note: `water boils here at ${temperatureText(plate.boilingPoint, system)}`,
      },
    },
  ];
}
