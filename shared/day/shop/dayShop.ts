import type { DayBook } from '../../book/book.ts';
import { DAY_RULES, type DayRules } from '../../book/settings/dayRules.ts';
import type { Shop } from '../../book/settings/settings.ts';
import type { ShopDay } from '../planning/shopDay.ts';
import { dayPeople } from './dayPeople.ts';
import type { DaysAsked } from './daysAsked.ts';

/** The shop over some days, and what was assumed of it. */
export interface DayShop {
  readonly day: ShopDay;
  readonly assumptions: readonly string[];
}

/** What the book says that the shop has on the days asked for. */
export function dayShop(book: DayBook, asked: DaysAsked): DayShop {
  const { shop } = book;
  const { people, assumptions } = dayPeople(book, asked);
  const plates = book.plates.flatMap(({ record }): ShopDay['plates'] => {
    const { plate, usableLength, usableWidth, watts, circuit } = record;
    if (plate === undefined || usableLength === undefined || usableWidth === undefined) return [];
    const plug = watts !== undefined && circuit ? { plug: { watts, circuit } } : {};
    return [{ name: plate, area: usableLength * usableWidth, rounds: shop.plateRounds, ...plug }];
  });
  const ovens = Array.from({ length: shop.microwaves }, (_, place) => ({
    name: shop.microwaves === 1 ? 'Microwave' : `Microwave ${place + 1}`,
    ...(shop.microwaveCircuit !== '' && {
      plug: { watts: shop.microwaveDraw, circuit: shop.microwaveCircuit },
    }),
  }));
  const over = [...plates, ...ovens].filter(({ plug }) => (plug?.watts ?? 0) > shop.circuitLimit);
  const circuits = [
    ...new Set([...plates, ...ovens].flatMap(({ plug }) => plug?.circuit ?? [])),
  ].map((name) => ({
    name,
    watts: Math.max(
      shop.circuitLimit,
      ...over.filter(({ plug }) => plug?.circuit === name).map(({ plug }) => plug?.watts ?? 0),
    ),
  }));
  return {
    day: {
      people,
      plates,
      molds: dayMolds(book),
      ovens,
      circuits,
      cups: shop.cupsOwned,
      rules: dayRules(shop),
    },
    assumptions: [
      ...assumptions,
      ...unmeasuredPlates(book),
      ...over.map(
        ({ name, plug }) =>
          `${name} alone takes more than the circuit limit lets ${plug?.circuit} bear: planned as if nothing else ran beside it.`,
      ),
    ],
  };
}

function unmeasuredPlates({ plates }: DayBook): readonly string[] {
  return plates.flatMap(({ row, record: { usableLength, usableWidth } }) =>
    usableLength === undefined || usableWidth === undefined
      ? [`In Plates, row ${row}: without its usable length and width nothing is planned on it.`]
      : [],
  );
}

function dayMolds({ molds }: DayBook): ShopDay['molds'] {
  const names = new Set<string>();
  return molds.flatMap(({ record: { mold, owned = 1, blockLength, blockWidth } }) => {
    if (mold === undefined || blockLength === undefined || blockWidth === undefined) return [];
    if (names.has(mold)) return [];
    names.add(mold);
    return [{ name: mold, owned, footprint: blockLength * blockWidth }];
  });
}

function dayRules(shop: Shop): DayRules {
  const { hotWait, cupWait, topOff, cookRest, stirThrough, colorChange, longestBatch } = shop;
  const { batchWithin, heatAttended, cookAttended, layOutShare, demoldShare, inspectShare } = shop;
  return {
    ...{ hotWait, cupWait, topOff, cookRest, stirThrough, colorChange, longestBatch },
    ...{ batchWithin, heatAttended, cookAttended, layOutShare, demoldShare, inspectShare },
    batchPause: DAY_RULES.batchPause,
  };
}
