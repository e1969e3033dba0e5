import { type MaterialRow, nameKey, type OrderRow, type PatternRow } from '../../book/bookIndex.ts';
import {
  addMissing,
  addRefused,
  findByName,
  findOnce,
  type MissingCells,
  need,
  optional,
} from '../../book/missingCells.ts';
import { TABLES } from '../../book/tables.ts';

/** One layer of the pattern version that an order pours. */
export interface LayerFacts {
  readonly row: number;
  readonly order: number;
  readonly layer: string;
  readonly share: number | undefined;
  readonly fillMark: number | undefined;
  readonly base: MaterialRow;
  readonly pourTemperature: number;
}

export interface PatternFacts {
  readonly name: string;
  readonly version: number;
  /** In the order they are poured. */
  readonly layers: readonly LayerFacts[];
}

/** The version an order names, else the newest, with its layers; undefined with every gap noted. */
export function findPattern(
  gaps: MissingCells,
  order: OrderRow,
  name: string,
): PatternFacts | undefined {
  const versions = findByName(gaps, gaps.index.patterns, name, {
    sheet: 'Orders',
    row: order.row,
    heading: 'Pattern',
    where: 'Patterns',
  });
  const asked = optional(gaps, TABLES.orders, order, 'version');
  if (versions === undefined) return undefined;
  const version = asked ?? Math.max(0, ...versions.keys());
  const rows = versions.get(version);
  if (rows === undefined) {
    addRefused(
      gaps,
      { sheet: 'Orders', row: order.row, heading: 'Version' },
      { field: `version of ${name}`, rule: { kind: 'known', where: 'Patterns' }, value: version },
    );
    return undefined;
  }
  return findOnce(gaps, nameKey('layers', name, version), (own) => {
    const layers = layersOf(own, rows);
    return layers && { name, version, layers };
  });
}

function layersOf(
  gaps: MissingCells,
  rows: readonly PatternRow[],
): readonly LayerFacts[] | undefined {
  const layers = rows.map((row) => layerOf(gaps, row));
  const whole = layers.filter((layer) => layer !== undefined);
  if (whole.length < layers.length) return undefined;
  const sorted = [...whole].sort((one, other) => one.order - other.order);
  return areApart(gaps, sorted) ? sorted : undefined;
}

function layerOf(gaps: MissingCells, row: PatternRow): LayerFacts | undefined {
  const order = need(gaps, TABLES.patterns, row, 'layerOrder');
  const layer = need(gaps, TABLES.patterns, row, 'layer');
  const baseName = need(gaps, TABLES.patterns, row, 'base');
  const share = optional(gaps, TABLES.patterns, row, 'share');
  const fillMark = optional(gaps, TABLES.patterns, row, 'fillMark');
  const pourTemperature = optional(gaps, TABLES.patterns, row, 'pourTemperature');
  const place = { sheet: 'Patterns', row: row.row, heading: 'Base', where: 'Materials' } as const;
  const base = findByName(gaps, gaps.index.materials, baseName, place);
  if (order === undefined || layer === undefined || base === undefined) return undefined;
  return {
    row: row.row,
    order,
    layer,
    share,
    fillMark,
    base,
    pourTemperature: pourTemperature ?? gaps.index.book.shop.pourTemperature,
  };
}

/** Two layers of one order or one name cannot be told apart: doses are found by name, windows by order. */
function areApart(gaps: MissingCells, layers: readonly LayerFacts[]): boolean {
  let apart = true;
  layers.forEach((layer, index) => {
    const before = layers.slice(0, index);
    const sameOrder = before.find((one) => one.order === layer.order);
    const sameName = before.find((one) => nameKey(one.layer) === nameKey(layer.layer));
    if (sameOrder === undefined && sameName === undefined) return;
    apart = false;
    addMissing(gaps, {
      sheet: 'Patterns',
      row: layer.row,
      heading: sameOrder ? 'Layer order' : 'Layer',
      text: sameOrder
        ? `layer order must differ from row ${sameOrder.row} of the same version, got ${layer.order}`
        : `layer must differ from row ${sameName?.row} of the same version, got "${layer.layer}"`,
    });
  });
  return apart;
}
