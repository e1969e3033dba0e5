import type { Link } from '../../schedule/schedulingTypes.ts';
import { type DayPart, joinParts } from './dayPart.ts';
import { personModes } from './dayResources.ts';
import { dayTask } from './dayTask.ts';
import { piecesIn, roundTasks } from './roundTasks.ts';
import type { DayOrder, ShopDay } from './shopDay.ts';

/** All of an order but its colors: laying out, the rounds, packing, cleaning. */
export function orderTasks(day: ShopDay, order: DayOrder): DayPart {
  const { run, due, weight, release = 0 } = order;
  const { rules } = day;
  const rounds = Array.from({ length: run.pieces.rounds }, (_, place) => place + 1).filter(
    (round) => piecesIn(run, round) > 0,
  );
  const inRound = (what: Parameters<typeof dayTask>[1], round: number) =>
    dayTask(run.order, what, { round }).id;
  const layOut = dayTask(run.order, 'lay out');
  const pack = dayTask(run.order, 'pack');
  const clean = dayTask(run.order, 'clean');
  const packing = run.work.finishing * (1 - rules.demoldShare - rules.inspectShare);
  const links: Link[] = rounds.flatMap((round, place): readonly Link[] => {
    const set = inRound('set on the plate', round);
    const earlier = rounds[place - 1];
    return [
      { before: layOut.id, after: set },
      // Rounds are alike: keeping their order costs nothing and spares the search.
      ...(earlier === undefined
        ? []
        : [{ before: inRound('set on the plate', earlier), after: set, from: 'start' as const }]),
      ...run.layers.map(({ layer }) => ({
        before: dayTask(run.order, 'weigh and color').id,
        after: dayTask(run.order, 'cook', { round, layer }).id,
        // The plate heats up while the first round's colors are weighed.
        ...(earlier === undefined && { isTogether: true as const }),
      })),
      { before: inRound('inspect', round), after: pack.id },
      { before: inRound('demold', round), after: clean.id },
    ];
  });
  const own: DayPart = {
    tasks: [
      {
        ...layOut,
        duration: Math.ceil(run.work.setUp * rules.layOutShare),
        uses: [personModes(day, 'any')],
        release,
      },
      {
        ...pack,
        duration: Math.ceil(Math.max(0, packing)),
        uses: [personModes(day, 'finish')],
        ...(due !== undefined && { due }),
        ...(weight !== undefined && { weight }),
      },
      {
        ...clean,
        duration: Math.ceil(run.work.setUp * (1 - rules.layOutShare)),
        uses: [personModes(day, 'any')],
      },
    ],
    links,
    holds: [],
  };
  return joinParts([own, ...rounds.map((round) => roundTasks(day, order, round))]);
}
