import type { OrderPlan } from '../../plan/planTypes.ts';
import { countText, temperatureText } from '../../words/quantityText.ts';
import type { DayEntry } from '../planning/dayTimetable.ts';

/** What a line of the checklist tells of the order's plan. */
export type RunFacts = Pick<
  OrderPlan,
  | 'system'
  | 'mold'
  | 'moldsInUse'
  | 'pattern'
  | 'version'
  | 'cups'
  | 'plate'
  | 'cookTemperature'
  | 'lowestPour'
  | 'demoldTemperature'
  | 'layers'
>;

/** What to do, with the figures it takes: `2101 round 1: set 2 × Minnow on Griddle, dial at 270 °F`. */
export function taskText(entry: DayEntry, facts: RunFacts | undefined): string {
  const { order, round } = entry;
  const head = round === undefined ? order : `${order} round ${round}`;
  return `${head}: ${workText(entry, facts)}`;
}

function workText(entry: DayEntry, facts: RunFacts | undefined): string {
  const { what, layer = 'layer', oven, mold = facts?.mold ?? 'molds' } = entry;
  switch (what) {
    case 'lay out':
      return `lay out ${molds(facts, mold)}, cups and tools, all dry`;
    case 'weigh and color':
      return facts
        ? `weigh and color ${countText(facts.cups, 'cup')}, ${facts.pattern} v${facts.version}`
        : 'weigh and color';
    case 'wash up':
      return 'wash up scale, spoons and bench';
    case 'set on the plate':
      return `set ${molds(facts, mold)} on ${entry.plate ?? 'the plate'}${dial(facts)}`;
    case 'heat':
      return `heat until every mold top reads ${topOf(facts)}`;
    case 'cook':
      return `cook ${layer}${facts ? ` to ${temperatureText(facts.cookTemperature, facts.system, 'up')}` : ''}${oven === undefined ? '' : ` in ${oven}`}, stirred to the bottom`;
    case 'pour':
      return `pour ${layer} into every cavity${facts ? `, cup ${temperatureText(facts.lowestPour, facts.system, 'up')} or hotter` : ''}`;
    case 'top off':
      return 'top off slowly from the middle outward, then switch the plate off unless more follows';
    case 'cool':
      return 'cool off the plate, away from water';
    case 'demold':
      return facts
        ? `demold below ${temperatureText(facts.demoldTemperature, facts.system, 'down')}`
        : 'demold';
    case 'inspect':
      return 'inspect, tear one piece, count good and bad by defect';
    case 'pack':
      return 'pack and label';
    case 'clean':
      return 'clean up, leftovers labeled with their heat';
  }
}

function molds(facts: RunFacts | undefined, mold: string): string {
  return facts === undefined || facts.moldsInUse === 1 ? mold : `${facts.moldsInUse} × ${mold}`;
}

function dial(facts: RunFacts | undefined): string {
  if (facts?.plate.kind !== 'reachable') return '';
  return `, dial at ${temperatureText(facts.plate.setting, facts.system)}, switch on`;
}

function topOf(facts: RunFacts | undefined): string {
  if (facts?.plate.kind !== 'reachable') return 'its target';
  return temperatureText(facts.plate.topTarget, facts.system, 'up');
}
