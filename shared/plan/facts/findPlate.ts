import type { OrderRow } from '../../book/bookIndex.ts';
import {
  addRefused,
  findByName,
  type MissingCells,
  need,
  optional,
} from '../../book/missingCells.ts';
import { TABLES } from '../../book/tables.ts';

/** The hot plate of a run; m, degC, s, W, W/(m2 K). */
export interface PlateFacts {
  readonly name: string;
  readonly row: number;
  readonly kind: 'thin griddle' | 'flat thick plate';
  readonly usableLength: number | undefined;
  readonly usableWidth: number | undefined;
  readonly lowestSetting: number | undefined;
  readonly highestSetting: number;
  readonly warmUp: number;
  /** Fitted by the shop; undefined takes the default of the kind. */
  readonly contactConductance: number | undefined;
  /** Of that fit; undefined where it was not fitted. */
  readonly contactError: number | undefined;
  readonly watts: number | undefined;
  /** Off to on again, in all [K]; undefined takes the default of the kind. */
  readonly deadBand: number | undefined;
  /** Over the molds until their tops read the target. */
  readonly lid: 'none' | 'lid';
  /** Of molds on this plate without a lid, over the published loss. */
  readonly lossShare: number | undefined;
  /** Surface less dial [K]. */
  readonly dialOffset: number | undefined;
}

/** The plate an order names, else the first in Plates; undefined with every gap noted. */
export function findPlate(gaps: MissingCells, order: OrderRow): PlateFacts | undefined {
  const name = optional(gaps, TABLES.orders, order, 'plate');
  const [first] = gaps.index.book.plates;
  if (name === undefined && first === undefined)
    addRefused(
      gaps,
      { sheet: 'Plates', heading: 'Plate' },
      { field: 'plate', rule: { kind: 'given' }, value: '' },
    );
  const place = { sheet: 'Orders', row: order.row, heading: 'Plate', where: 'Plates' } as const;
  const row = name === undefined ? first : findByName(gaps, gaps.index.plates, name, place);
  if (row === undefined) return undefined;
  const table = TABLES.plates;
  const kind = need(gaps, table, row, 'kind');
  const highestSetting = need(gaps, table, row, 'highestSetting');
  const warmUp = need(gaps, table, row, 'warmUp');
  const lowestSetting = optional(gaps, table, row, 'lowestSetting');
  if (lowestSetting !== undefined && highestSetting !== undefined && lowestSetting > highestSetting)
    addRefused(
      gaps,
      { sheet: 'Plates', row: row.row, heading: 'Lowest setting' },
      {
        field: 'lowest setting',
        rule: { kind: 'at most', limit: highestSetting, what: 'highest setting' },
        value: lowestSetting,
        unit: 'degC',
      },
    );
  if (kind === undefined || highestSetting === undefined || warmUp === undefined) return undefined;
  return {
    name: row.record.plate ?? '',
    row: row.row,
    kind,
    usableLength: optional(gaps, table, row, 'usableLength'),
    usableWidth: optional(gaps, table, row, 'usableWidth'),
    lowestSetting,
    highestSetting,
    warmUp,
    contactConductance: optional(gaps, table, row, 'contactConductance'),
    contactError: optional(gaps, table, row, 'contactError'),
    watts: optional(gaps, table, row, 'watts'),
    deadBand: optional(gaps, table, row, 'deadBand'),
    lid: optional(gaps, table, row, 'lid') ?? 'none',
    lossShare: optional(gaps, table, row, 'heatLoss'),
    dialOffset: optional(gaps, table, row, 'dialOffset'),
  };
}
