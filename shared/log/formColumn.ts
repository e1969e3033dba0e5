import type { Column } from '../book/column.ts';
import { unitOf } from '../book/reading/headingOf.ts';
import { DEFECT_KEYS, POUR_LOG, TEAR_KEYS } from '../book/tables/pourLog.ts';
import type { Bounds } from '../errors/requireNumber.ts';
import type { UnitSystem } from '../units/measures.ts';
import type { UnitName } from '../units/units.ts';

type LogKey = keyof typeof POUR_LOG.columns;

export const POUR_KEYS = ['pour1', 'pour2', 'pour3', 'pour4', 'pour5'] as const;
export const GAP_KEYS = ['gap12', 'gap23', 'gap34', 'gap45'] as const;

/** Columns of the log that a person fills, in the order of the form. The others follow from the order and the clock. */
export const FORM_KEYS = [
  'run',
  'round',
  'who',
  'moldTop',
  ...POUR_KEYS,
  ...GAP_KEYS,
  'poured',
  'good',
  ...DEFECT_KEYS,
  'tearTest',
  ...TEAR_KEYS,
  'pieceWeight',
  'weights',
  'notes',
] as const satisfies readonly LogKey[];

export type FormKey = (typeof FORM_KEYS)[number];

/** Fields without which an entry says too little. */
export const NEEDED: readonly FormKey[] = ['run', 'who', 'poured', 'good', 'tearTest'];

/** Longest text of a field [characters]. */
export const LONGEST = { run: 40, who: 20, weights: 300, notes: 500 } as const;

/**
 * Readings that can be true, narrower than the log's own bounds so that a slip of the finger or of the scale (°C for °F)
 * is caught. No cup pours below the boiling point of water or above what chars it. Common practice, no source. [degC]
 */
const PLAUSIBLE: Readonly<Partial<Record<FormKey, Bounds>>> = {
  moldTop: { atLeast: 5, atMost: 200 },
  pour1: { atLeast: 100, atMost: 230 },
  pour2: { atLeast: 100, atMost: 230 },
  pour3: { atLeast: 100, atMost: 230 },
  pour4: { atLeast: 100, atMost: 230 },
  pour5: { atLeast: 100, atMost: 230 },
};

/** The log's column as the form checks it. */
export function formColumn(key: FormKey): Column {
  const column: Column = POUR_LOG.columns[key];
  const bounds = PLAUSIBLE[key];
  return bounds && column.kind === 'number' ? { ...column, bounds } : column;
}

/** The unit that a field is typed in. */
export function formUnit(key: FormKey, system: UnitSystem): UnitName | undefined {
  return unitOf(POUR_LOG.columns[key], system);
}

/** The fields that a pattern of so many layers has. */
export function fieldsFor(layers: number): readonly FormKey[] {
  const beyond: readonly FormKey[] = [
    ...POUR_KEYS.slice(layers),
    ...GAP_KEYS.slice(Math.max(0, layers - 1)),
    ...TEAR_KEYS.slice(Math.max(0, layers - 1)),
  ];
  return FORM_KEYS.filter((key) => !beyond.includes(key));
}
