import { describe, expect, test } from 'vitest';
import { POUR_LOG } from '../../../shared/book/tables/pourLog.ts';
import { runSheetDocument } from '../../../shared/paper/runSheet/runSheetDocument.ts';
import type {
  RunSheetDocument,
  SheetBlock,
  SheetCell,
} from '../../../shared/paper/runSheet/runSheetTypes.ts';
import { planOrder } from '../../../shared/plan/planOrder.ts';
import type { OrderPlan } from '../../../shared/plan/planTypes.ts';
import { DEMO, type DemoChanges, demoBook, withChange } from '../../book/demoBook.ts';

const RUN = { runId: '2041-1', date: '2026-12-01' };

function planned(order: string, changes: DemoChanges = {}): OrderPlan {
  const plan = planOrder(demoBook(changes), order);
  if (plan.kind === 'missing') throw new Error(plan.missing.map((gap) => gap.text).join('; '));
  return plan;
}

function sheetOf(order = '2041', changes: DemoChanges = {}): RunSheetDocument {
  return runSheetDocument(planned(order, changes), RUN);
}

function blocksOf(document: RunSheetDocument, name: string): readonly SheetBlock[] {
  return document.sections.find((section) => section.name === name)?.blocks ?? [];
}

function shown(cell: SheetCell): string {
  if (cell.kind === 'text') return cell.note ? `${cell.text} (${cell.note})` : cell.text;
  return cell.kind === 'boxes' ? '☐'.repeat(cell.count) : `__${cell.unit}`;
}

function tableOf(document: RunSheetDocument, name: string): readonly string[] {
  const table = blocksOf(document, name).find((block) => block.kind === 'table');
  return table?.kind === 'table' ? table.rows.map((row) => row.map(shown).join(' | ')) : [];
}

function linesOf(document: RunSheetDocument, name: string): readonly string[] {
  return blocksOf(document, name).flatMap((block) => (block.kind === 'lines' ? block.lines : []));
}

describe('runSheetDocument', () => {
  test('reads in the order of the work', () => {
    expect(sheetOf().sections.map((section) => section.name)).toEqual([
      'cautions',
      'notes',
      'cups',
      'plate',
      'layers',
      'checklists',
      'outcome',
      'sign-off',
      'pictures',
    ]);
  });

  test('names order, pieces, pattern, mold, run and date', () => {
    const facts = sheetOf().header.map(({ label, cell }) => `${label}: ${shown(cell)}`);
    expect(facts).toEqual([
      'Order: 2041',
      'Pour: 48',
      'Good wanted: 40',
      'Pattern: Creek minnow v2',
      'Mold: 2 × Ribbed 4 in',
      'Due: 2026-12-04',
      'Run: 2041-1',
      'Date: 2026-12-01',
      'Initials: __',
    ]);
  });

  test('gives every cup its base and doses, a box for each cup', () => {
    const document = sheetOf();
    expect(document.sections[2]?.heading).toBe('5 cups, 17.1 fl oz of plastisol (520 g)');
    expect(tableOf(document, 'cups')).toEqual([
      '1 belly | Soft plastisol | P-311 | 91.6 g (3.0 fl oz) | ☐☐ | __',
      ' | White dispersion | W-12 | 0.28 g | ☐☐ | __',
      ' | Pearl powder | PP-2 | 0.16 g (3 × 1/32 tsp) | ☐☐ | __',
      '2 vein | Soft plastisol | P-311 | 57.8 g (1.9 fl oz) | ☐ | __',
      ' | Black dispersion | K-3 | 2 drops | ☐ | __',
      '3 back | Soft plastisol | P-311 | 139 g (4.6 fl oz) | ☐☐ | __',
      ' | Green dispersion | G-7 | 6 drops | ☐☐ | __',
      ' | Fine glitter | GL-1 | 0.85 g (1/4 tsp) | ☐☐ | __',
    ]);
    expect(linesOf(document, 'cups')).toEqual([
      'belly, White dispersion: fill each cup to 3.1 fl oz cold and count 5 drops (off by 8 %), with 0.17 g of Pearl powder.',
      'Label leftovers with their heat so far, in minutes at 338 °F of 60: belly 5, vein 8 and back 6.',
    ]);
  });

  test('gives each layer its mark, its cup and its window', () => {
    expect(tableOf(sheetOf(), 'layers')).toEqual([
      '1 belly | 46 % | 329 °F | 9:30 am | – | –',
      '2 vein | 55 % | 329 °F | 2:28 | 60 s | any time',
      '3 back | 100 % | 329 °F | 5:09 | 8 s | any time',
    ]);
  });

  test('rounds a window inward and says when there is none', () => {
    const plan = planned('2041');
    const layers = plan.layers.map((layer) => {
      if (layer.order === 2)
        return { ...layer, window: { kind: 'between', earliest: 91.2, latest: 299 } as const };
      if (layer.order === 3)
        return {
          ...layer,
          window: { kind: 'none', why: 'too cool', because: 'of a test' } as const,
        };
      return layer;
    });
    const rows = tableOf(runSheetDocument({ ...plan, layers }, RUN), 'layers');
    expect(rows[1]).toContain('| 1 min 35 s | 4 min 55 s');
    expect(rows[2]).toContain('| – | will not bond');
  });

  test('has a line for every round, with the columns of the pour log', () => {
    const document = sheetOf('2041', { orders: withChange(DEMO.orders, 0, { moldsInUse: 1 }) });
    const [table] = blocksOf(document, 'outcome');
    if (table?.kind !== 'table') throw new Error('no table');
    expect(table.rows.map(([first]) => first && shown(first))).toEqual([
      '1',
      '2',
      '3',
      '4',
      '5',
      '6',
    ]);
    expect(table.headings).toEqual([
      'Round',
      'Mold top °F',
      'Pour 1 °F',
      'Gap 1-2 min',
      'Pour 2 °F',
      'Gap 2-3 min',
      'Pour 3 °F',
      'Poured',
      'Good',
      'Cold crack',
      'Peeled layer',
      'Uneven line',
      'Trapped air',
      'Dimple',
      'Short fill',
      'Flash',
      'Scorch',
      'Bleed',
      'Other',
    ]);
    const logged = Object.values(POUR_LOG.columns).map((column) => column.heading);
    const unitless = table.headings.slice(1).map((heading) => heading.replace(/ (?:°F|min)$/, ''));
    expect(logged).toEqual(expect.arrayContaining(unitless));
  });

  test('tells when to switch on and how to read a mold', () => {
    const document = sheetOf();
    const facts = blocksOf(document, 'plate').flatMap((block) =>
      block.kind === 'facts' ? block.facts : [],
    );
    expect(facts.map(({ label, cell }) => `${label}: ${shown(cell)}`)).toEqual([
      'Set to: 260 °F',
      'On at: 9:04 am',
      'Mold top must read: 215 °F (water boils here at 209 °F)',
    ]);
    expect(linesOf(document, 'plate')).toEqual([
      'Hot about 21 min after switching on.',
      'Read the mold top with a surface probe, or infrared on tape or matt paint: bare metal reads far too low.',
      'Cook each cup to 351 °F in 4 short bursts, about 1 min 40 s in all; stir between.',
    ]);
  });

  test('a plate that cannot make it says so where its figures would stand', () => {
    const plates = withChange(DEMO.plates, 0, { highestSetting: 95 });
    expect(linesOf(sheetOf('2041', { plates }), 'plate')[0]).toBe(
      'The mold will not get hot enough: at its highest setting, 203 °F, Long griddle is not as hot as the 215 °F that the mold top must read (water boils at 209 °F here): use a plate that can be set to 260 °F.',
    );
  });

  test('cautions print whatever the order, with the hard stop in the shop’s unit, and give way to SDS, manual, codes and trades', () => {
    for (const order of ['2041', '2042', '2043']) {
      const lines = linesOf(sheetOf(order), 'cautions');
      expect(lines).toHaveLength(9);
      expect(lines[0]).toBe(
        'SDS, equipment manual, local codes come first. Leave wiring and vents to licensed trades.',
      );
      expect(lines).toContain('No cup above 374 °F, nor above a material’s own maximum.');
    }
    const metric = linesOf(sheetOf('2041', { shop: { units: 'metric' } }), 'cautions');
    expect(metric).toContain('No cup above 190 °C, nor above a material’s own maximum.');
  });

  test('four pauses of five to nine items, each short enough to read at a glance', () => {
    const lists = blocksOf(sheetOf(), 'checklists').flatMap((block) =>
      block.kind === 'checklist' ? [block] : [],
    );
    expect(lists.map((list) => list.name)).toEqual([
      'Before heat',
      'Before the first pour',
      'Between layers',
      'Before packing',
    ]);
    for (const list of lists) {
      expect(list.items.length).toBeGreaterThanOrEqual(5);
      expect(list.items.length).toBeLessThanOrEqual(9);
      for (const item of list.items) expect(item.length).toBeLessThanOrEqual(40);
    }
  });

  test('never advises wetting a mold', () => {
    const words = JSON.stringify(sheetOf()).toLowerCase();
    expect(words).not.toMatch(/droplet|spit|drop of water|wet the/);
  });

  test('notes and warnings stand first, and only where there are any', () => {
    expect(linesOf(sheetOf(), 'notes')[0]).toBe('Note: Pearl in the belly only');
    const sections = sheetOf('2042').sections.map((section) => section.name);
    expect(sections).not.toContain('notes');
  });

  test('metric shops read °C, mL and g only', () => {
    const words = JSON.stringify(sheetOf('2041', { shop: { units: 'metric' } }));
    expect(words).not.toMatch(/°F|fl oz|\boz\b/);
    expect(words).toContain('°C');
  });
});
