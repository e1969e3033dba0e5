import type { OrderPlan } from '../../plan/planTypes.ts';
import { temperatureText } from '../../words/quantityText.ts';
import { layerWait } from '../planning/layerWait.ts';
import type { TimerChoice } from './timerTypes.ts';

/** What the timers of an order take from its plan. */
type TimedRun = Pick<
  OrderPlan,
  'system' | 'plate' | 'layers' | 'cupTime' | 'lowestPour' | 'coolTime' | 'demoldTemperature'
>;

/**
 * The timers of an order in the sequence of a round: plate, cup, each layer, cooling. Earliest times are rounded up and latest ones down, to
 * whole seconds. A layer timer runs from the first cavity of a layer to the first cavity of the next; every cavity waits as long.
 */
export function timerChoices(plan: TimedRun): readonly TimerChoice[] {
  return [...plateTimer(plan), cupTimer(plan), ...layerTimers(plan), coolTimer(plan)];
}

function plateTimer({ plate, system }: TimedRun): readonly TimerChoice[] {
  if (plate.kind === 'unreachable') return [];
  const target = temperatureText(plate.topTarget, system, 'up');
  return [
    {
      key: 'plate',
      label: `${plate.plate} on, mold on it`,
      cues: [
        {
          kind: 'ready',
          after: Math.ceil(plate.heatUp),
          text: `Read every mold top: pour at ${target} or more, not by this clock`,
        },
      ],
    },
  ];
}

function cupTimer({ cupTime, lowestPour, system }: TimedRun): TimerChoice {
  const lowest = temperatureText(lowestPour, system, 'up');
  return {
    key: 'cup',
    label: 'Cup cooked, pouring begins',
    cues: [
      {
        kind: 'too cool',
        after: Math.floor(cupTime),
        text: `Read the cup: below ${lowest} it goes back to heat`,
      },
    ],
  };
}

function layerTimers({ layers }: TimedRun): readonly TimerChoice[] {
  return layers.slice(1).flatMap((above, index): readonly TimerChoice[] => {
    const below = layers[index];
    const wait = below && layerWait(below, above);
    if (below === undefined || wait?.kind !== 'wait') return [];
    const { least, most } = wait;
    return [
      {
        key: `layer ${index + 1}`,
        label: `First cavity of ${below.layer} poured`,
        cues: [
          {
            kind: 'earliest',
            after: least,
            text: `Pour ${above.layer} as soon as the skin is firm`,
          },
          ...(most === undefined
            ? []
            : [
                {
                  kind: 'latest',
                  after: most,
                  text: `Too late for ${above.layer}: it may peel`,
                } as const,
              ]),
        ],
      },
    ];
  });
}

function coolTimer({ coolTime, demoldTemperature, system }: TimedRun): TimerChoice {
  const below = temperatureText(demoldTemperature, system, 'down');
  return {
    key: 'cool',
    label: 'Molds off the plate',
    cues: [
      { kind: 'ready', after: Math.ceil(coolTime), text: `Read the mold: demold below ${below}` },
    ],
  };
}
