import type { DosePlan, LayerPlan, OrderPlan } from '../../shared/plan/planTypes.ts';
import type { LayerBands } from '../../shared/plan/uncertainty/heatDetail.ts';
import { widestText } from '../../shared/plan/uncertainty/widestText.ts';
import { inBrackets } from '../../shared/words/bandText.ts';
import {
  countText,
  durationText,
  gramsText,
  shareText,
  stopwatchText,
  temperatureText,
  volumeText,
} from '../../shared/words/quantityText.ts';
import { sentence } from '../../shared/words/sentence.ts';
import { temperatureBandText, timeBandText } from '../../shared/words/timeBandText.ts';
import { card } from '../page/card.ts';
import { el } from '../page/el.ts';
import { type Fact, facts } from '../page/facts.ts';

/** One layer: its cups and what goes into each, its mark, and when it may follow the one below. */
export function layerCard(layer: LayerPlan, plan: OrderPlan): HTMLElement {
  const { system } = plan;
  const bands = plan.detail?.layers[plan.layers.indexOf(layer)];
  return card(
    `Layer ${layer.order}: ${layer.layer}`,
    facts([
      ['Cups', String(layer.cups)],
      ['In each cup', `${gramsText(layer.cupMass)} (${volumeText(layer.cupVolume, system)})`],
      ['Fill to', shareText(layer.fillMark)],
      ['Cup at', temperatureText(layer.pourTemperature, system)],
      ['Pour it', windowText(layer, plan, bands)],
      ...timingOf(layer, plan, bands),
      ['Sets', openText(layer, bands)],
    ]),
    ...certaintyOf(bands),
    el('p', { class: 'small' }, layer.lot === '' ? layer.base : `${layer.base}, lot ${layer.lot}`),
    el('ul', { class: 'doses' }, ...layer.doses.map(doseItem)),
  );
}

function timingOf(layer: LayerPlan, plan: OrderPlan, bands: LayerBands | undefined) {
  const { run, joint } = layer;
  const start: Fact[] =
    run.wait === undefined
      ? []
      : [['First cavity at', `${stopwatchText(run.firstAt)} on the stopwatch`]];
  const wait: Fact[] = run.wait === undefined ? [] : [['Each cavity waits', waitText(run.wait)]];
  const contact: Fact[] =
    joint === undefined
      ? []
      : [
          [
            'Meets it at',
            `${temperatureText(joint.contactTemperature, plan.system)}${inBrackets(temperatureBandText(bands?.contact, plan.system))}, ${joint.verdict === 'bonds' ? 'bonds' : 'too cool to bond'}`,
          ],
        ];
  return [...start, ...wait, ...contact];
}

function waitText({ shortest, longest }: NonNullable<LayerPlan['run']['wait']>): string {
  const most = durationText(longest, 'up');
  return shortest === longest ? most : `${durationText(shortest, 'down')} to ${most}`;
}

/** Rounded so that the window never opens wider than it is. */
function windowText({ window }: LayerPlan, plan: OrderPlan, bands: LayerBands | undefined): string {
  if (window === undefined)
    return plan.plate.kind === 'reachable' ? 'when the mold top is hot' : 'first';
  if (window.kind === 'none')
    return `${window.why === 'stays soft' ? 'would mix in' : 'will not bond'}: ${window.because}`;
  const earliest = `${durationText(window.earliest, 'up')}${inBrackets(timeBandText(bands?.earliest))}`;
  if (window.kind === 'from') return `${earliest} or more after the layer below`;
  const latest = `${durationText(window.latest, 'down')}${inBrackets(timeBandText(bands?.latest))}`;
  return `${earliest} to ${latest} after the layer below`;
}

function openText({ openTime }: LayerPlan, bands: LayerBands | undefined): string {
  return openTime.kind === 'stays open'
    ? 'not while the mold is hot'
    : `in about ${durationText(openTime.seconds)}${inBrackets(timeBandText(bands?.open))}`;
}

/** The trial that would make the times of a layer surer. */
function certaintyOf(bands: LayerBands | undefined): readonly HTMLElement[] {
  const widest = bands?.latest?.widest ?? bands?.earliest?.widest ?? bands?.open.widest;
  return widest === undefined
    ? []
    : [el('p', { class: 'small' }, `Brackets hold nine of ten draws. ${widestText(widest)}`)];
}

function doseItem(dose: DosePlan): HTMLElement {
  const [first] = dose.proposals;
  const advice = first === undefined ? [] : [el('span', { class: 'small' }, ` ${sentence(first)}`)];
  return el('li', {}, `${dose.material}: `, el('strong', {}, doseText(dose)), ...advice);
}

function doseText({ measure, mass }: DosePlan): string {
  switch (measure.kind) {
    case 'drops':
      return countText(measure.drops, 'drop');
    case 'powder':
      return `${gramsText(mass)} (${measure.spoons})`;
    case 'scale':
      return gramsText(mass);
  }
}
