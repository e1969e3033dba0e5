import { describe, expect, test } from 'vitest';
import type { Missing } from '../../shared/book/missingCells.ts';
import { InputError } from '../../shared/errors/InputError.ts';
import { planOrder } from '../../shared/plan/planOrder.ts';
import { DEMO, type DemoChanges, demoBook, withChange } from '../book/demoBook.ts';

function missingOf(order: string, changes: DemoChanges): readonly Missing[] {
  const plan = planOrder(demoBook(changes), order);
  return plan.kind === 'missing' ? plan.missing : [];
}

const PATTERN_ROW = 3; // Creek minnow v2 starts on sheet row 3

describe('planOrder names what is missing, where, in one sentence', () => {
  test.each<{ what: string; order?: string; changes: DemoChanges; gap: Missing }>([
    {
      what: 'a mold that is not listed',
      changes: { orders: withChange(DEMO.orders, 0, { mold: 'Minnow 9' }) },
      gap: {
        sheet: 'Orders',
        row: 2,
        heading: 'Mold',
        text: 'mold must be listed in Molds, got "Minnow 9"',
      },
    },
    {
      what: 'a pattern that is not listed',
      changes: { orders: withChange(DEMO.orders, 0, { pattern: 'Nobody' }) },
      gap: {
        sheet: 'Orders',
        row: 2,
        heading: 'Pattern',
        text: 'pattern must be listed in Patterns, got "Nobody"',
      },
    },
    {
      what: 'a version that is not there',
      changes: { orders: withChange(DEMO.orders, 0, { version: 7 }) },
      gap: {
        sheet: 'Orders',
        row: 2,
        heading: 'Version',
        text: 'version of Creek minnow must be listed in Patterns, got 7',
      },
    },
    {
      what: 'a blank quantity',
      changes: { orders: withChange(DEMO.orders, 0, { quantity: undefined }) },
      gap: {
        sheet: 'Orders',
        row: 2,
        heading: 'Quantity',
        text: 'quantity must be given, got nothing',
      },
    },
    {
      what: 'a quantity that the reader refused, in its words',
      changes: {
        orders: withChange(DEMO.orders, 0, { quantity: undefined }),
        problems: [
          {
            sheet: 'Orders',
            row: 2,
            heading: 'Quantity',
            error: new InputError({
              field: 'quantity',
              rule: { kind: 'at least', limit: 1 },
              value: 0,
            }),
          },
        ],
      },
      gap: {
        sheet: 'Orders',
        row: 2,
        heading: 'Quantity',
        text: 'quantity must be at least 1, got 0',
      },
    },
    {
      what: 'a column that is gone',
      changes: {
        orders: withChange(DEMO.orders, 0, { quantity: undefined }),
        problems: [
          {
            sheet: 'Orders',
            heading: 'Quantity',
            error: new InputError({
              field: 'the column Quantity',
              rule: { kind: 'known', where: 'Orders' },
              value: '',
            }),
          },
        ],
      },
      gap: {
        sheet: 'Orders',
        row: 1,
        heading: 'Quantity',
        text: 'the column Quantity must be listed in Orders, got nothing',
      },
    },
    {
      what: 'more molds in use than owned',
      changes: { orders: withChange(DEMO.orders, 0, { moldsInUse: 3 }) },
      gap: {
        sheet: 'Orders',
        row: 2,
        heading: 'Molds in use',
        text: 'molds in use must be at most the copies of Ribbed 4 in owned (2), got 3',
      },
    },
    {
      what: 'a plate that is not listed',
      changes: { orders: withChange(DEMO.orders, 0, { plate: 'Stove' }) },
      gap: {
        sheet: 'Orders',
        row: 2,
        heading: 'Plate',
        text: 'plate must be listed in Plates, got "Stove"',
      },
    },
    {
      what: 'a book without plates',
      order: '2042',
      changes: { plates: [] },
      gap: { sheet: 'Plates', heading: 'Plate', text: 'plate must be given, got nothing' },
    },
    {
      what: 'a plate without its highest setting',
      changes: { plates: withChange(DEMO.plates, 0, { highestSetting: undefined }) },
      gap: {
        sheet: 'Plates',
        row: 2,
        heading: 'Highest setting',
        text: 'highest setting must be given, got nothing',
      },
    },
    {
      what: 'a mold with neither volume nor weight',
      changes: { molds: withChange(DEMO.molds, 0, { cavityVolume: undefined }) },
      gap: {
        sheet: 'Molds',
        row: 2,
        heading: 'Cavity volume',
        text: 'cavity volume or piece weight must be given, got nothing',
      },
    },
    {
      what: 'a mold without its block height',
      changes: { molds: withChange(DEMO.molds, 0, { blockHeight: undefined }) },
      gap: {
        sheet: 'Molds',
        row: 2,
        heading: 'Block height',
        text: 'block height must be given, got nothing',
      },
    },
    {
      what: 'shares that do not add up',
      changes: { patterns: withChange(DEMO.patterns, 2, { share: 0.2 }) },
      gap: {
        sheet: 'Patterns',
        row: PATTERN_ROW,
        heading: 'Share',
        text: 'the shares of Creek minnow must add up to 100 %, got 110 %',
      },
    },
    {
      what: 'a layer with neither share nor mark',
      changes: { patterns: withChange(DEMO.patterns, 2, { share: undefined }) },
      gap: {
        sheet: 'Patterns',
        row: 4,
        heading: 'Share',
        text: 'every layer of Creek minnow must have a share, or every layer a fill mark, got neither for vein',
      },
    },
    {
      what: 'a mark below the one before it',
      order: '2042',
      changes: {
        patterns: withChange(withChange(DEMO.patterns, 4, { fillMark: 0.7 }), 5, { fillMark: 0.6 }),
      },
      gap: {
        sheet: 'Patterns',
        row: 7,
        heading: 'Fill mark',
        text: 'fill mark must be greater than the mark of the layer below (70 %), got 60 %',
      },
    },
    {
      what: 'a last mark short of the top',
      order: '2042',
      changes: { patterns: withChange(DEMO.patterns, 5, { fillMark: 0.9 }) },
      gap: {
        sheet: 'Patterns',
        row: 7,
        heading: 'Fill mark',
        text: 'last fill mark of Two tone must be 100 %, got 90 %',
      },
    },
    {
      what: 'two layers of one order',
      changes: { patterns: withChange(DEMO.patterns, 2, { layerOrder: 1 }) },
      gap: {
        sheet: 'Patterns',
        row: 4,
        heading: 'Layer order',
        text: 'layer order must differ from row 3 of the same version, got 1',
      },
    },
    {
      what: 'a base that is not listed',
      changes: { patterns: withChange(DEMO.patterns, 1, { base: 'Jelly' }) },
      gap: {
        sheet: 'Patterns',
        row: PATTERN_ROW,
        heading: 'Base',
        text: 'base must be listed in Materials, got "Jelly"',
      },
    },
    {
      what: 'a dose for a layer the version does not have',
      changes: { doses: withChange(DEMO.doses, 0, { layer: 'bely' }) },
      gap: {
        sheet: 'Doses',
        row: 2,
        heading: 'Layer',
        text: 'layer must be one of belly, vein, back, got "bely"',
      },
    },
    {
      what: 'a dose of a material that is not listed',
      changes: { doses: withChange(DEMO.doses, 0, { material: 'Chalk' }) },
      gap: {
        sheet: 'Doses',
        row: 2,
        heading: 'Material',
        text: 'material must be listed in Materials, got "Chalk"',
      },
    },
    {
      what: 'a dose without its version',
      changes: { doses: withChange(DEMO.doses, 0, { version: undefined }) },
      gap: {
        sheet: 'Doses',
        row: 2,
        heading: 'Version',
        text: 'version must be given, got nothing',
      },
    },
    {
      what: 'a pour below the pour band',
      changes: { patterns: withChange(DEMO.patterns, 2, { pourTemperature: 150 }) },
      gap: {
        sheet: 'Patterns',
        row: 4,
        heading: 'Pour temperature',
        text: 'pour temperature must be greater than lowest pour temperature (311 °F), got 302 °F',
      },
    },
    {
      what: 'a dial upside down',
      changes: { plates: withChange(DEMO.plates, 0, { lowestSetting: 260 }) },
      gap: {
        sheet: 'Plates',
        row: 2,
        heading: 'Lowest setting',
        text: 'lowest setting must be at most highest setting (399.2 °F), got 500 °F',
      },
    },
    {
      what: 'a room as warm as the demold temperature',
      changes: { shop: { demoldTemperature: 30, roomTemperature: 35 } },
      gap: {
        sheet: 'Shop',
        heading: 'Demold temperature',
        text: 'demold temperature must be greater than room temperature (95 °F), got 86 °F',
      },
    },
    {
      what: 'a cup that its own loss fills',
      changes: { shop: { cupFill: 5e-6, cupLoss: 0.0052 } },
      gap: {
        sheet: 'Shop',
        heading: 'Cup fill',
        text: 'cup fill must be greater than what stays in each cup (0.187911 fl oz), got 0.16907 fl oz',
      },
    },
  ])('$what', ({ order = '2041', changes, gap }) => {
    expect(missingOf(order, changes)).toContainEqual(gap);
  });

  test('lists every gap at once', () => {
    const orders = withChange(DEMO.orders, 0, {
      mold: 'A',
      pattern: 'B',
      plate: 'C',
      quantity: undefined,
    });
    expect(missingOf('2041', { orders }).map((gap) => gap.heading)).toEqual([
      'Quantity',
      'Mold',
      'Pattern',
      'Plate',
    ]);
  });

  test('an order that is not there, by number and by row', () => {
    expect(planOrder(demoBook(), '9999')).toEqual({
      kind: 'missing',
      order: '9999',
      row: 0,
      missing: [
        { sheet: 'Orders', heading: 'Order', text: 'order must be listed in Orders, got "9999"' },
      ],
    });
    expect(planOrder(demoBook(), 40)).toEqual({
      kind: 'missing',
      order: '',
      row: 40,
      missing: [
        { sheet: 'Orders', row: 40, heading: 'Order', text: 'row 40 of Orders holds no order' },
      ],
    });
  });

  test('a record so poor that no number of pieces is enough is a sentence, not a number', () => {
    const pourLog = [{ ...DEMO.pourLog[0], poured: 5000, good: 1 }];
    const [gap] = missingOf('2041', { pourLog });
    expect(gap).toEqual({
      sheet: 'Orders',
      row: 2,
      heading: 'Quantity',
      text: expect.stringMatching(
        /^no number of pieces of Creek minnow in Ribbed 4 in is enough: even \d+ pieces would not give 40 good ones with that confidence: mend the yield first$/,
      ),
    });
  });
});
