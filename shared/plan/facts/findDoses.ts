import { type DoseRow, type MaterialRow, nameKey } from '../../book/bookIndex.ts';
import { addRefused, findByName, type MissingCells, need } from '../../book/missingCells.ts';
import type { DOSE_UNITS } from '../../book/tables/doses.ts';
import { TABLES } from '../../book/tables.ts';
import type { LayerFacts, PatternFacts } from './findPattern.ts';

/** One colorant or additive of a layer as the recipe gives it. */
export interface DoseFacts {
  readonly row: number;
  readonly material: MaterialRow;
  readonly amount: number;
  readonly unit: (typeof DOSE_UNITS)[number];
  /** Cold base that the amount belongs to [m3]. */
  readonly per: number;
}

/** Doses by layer, in the order of `pattern.layers`; undefined with every gap noted. */
export function findDoses(
  gaps: MissingCells,
  pattern: PatternFacts,
): readonly (readonly DoseFacts[])[] | undefined {
  const { doses } = gaps.index;
  for (const loose of doses.get(nameKey(pattern.name, undefined)) ?? [])
    need(gaps, TABLES.doses, loose, 'version');
  const rows = doses.get(nameKey(pattern.name, pattern.version)) ?? [];
  noteStrays(gaps, pattern, rows);
  const before = gaps.missing.length;
  const byLayer = pattern.layers.map((layer) => dosesOf(gaps, layer, rows));
  return gaps.missing.length > before ? undefined : byLayer;
}

function dosesOf(
  gaps: MissingCells,
  layer: LayerFacts,
  rows: readonly DoseRow[],
): readonly DoseFacts[] {
  return rows
    .filter(({ record }) => nameKey(record.layer) === nameKey(layer.layer))
    .map((row) => doseOf(gaps, row))
    .filter((dose) => dose !== undefined);
}

function doseOf(gaps: MissingCells, row: DoseRow): DoseFacts | undefined {
  const name = need(gaps, TABLES.doses, row, 'material');
  const amount = need(gaps, TABLES.doses, row, 'amount');
  const unit = need(gaps, TABLES.doses, row, 'unit');
  const per = need(gaps, TABLES.doses, row, 'per');
  const place = { sheet: 'Doses', row: row.row, heading: 'Material', where: 'Materials' } as const;
  const material = findByName(gaps, gaps.index.materials, name, place);
  if (material === undefined || amount === undefined || unit === undefined || per === undefined)
    return undefined;
  return { row: row.row, material, amount, unit, per };
}

/** A dose for a layer that the version does not have would be left out of every cup without a word. */
function noteStrays(gaps: MissingCells, pattern: PatternFacts, rows: readonly DoseRow[]): void {
  for (const row of rows) {
    const layer = need(gaps, TABLES.doses, row, 'layer');
    if (layer === undefined) continue;
    if (pattern.layers.some((one) => nameKey(one.layer) === nameKey(layer))) continue;
    addRefused(
      gaps,
      { sheet: 'Doses', row: row.row, heading: 'Layer' },
      {
        field: 'layer',
        rule: { kind: 'one of', choices: pattern.layers.map((one) => one.layer) },
        value: layer,
      },
    );
  }
}
