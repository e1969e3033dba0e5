import { describe, expect, test } from 'vitest';
import { POUR_LOG } from '../../shared/book/tables/pourLog.ts';
import { FORM_KEYS, fieldsFor } from '../../shared/log/formColumn.ts';

describe('formFields', () => {
  test('every column of the log is in the form or follows from the order, the clock and the row corrected', () => {
    const others = ['entry', 'loggedAt', 'order', 'mold', 'pattern', 'version', 'corrects'];
    expect([...FORM_KEYS, ...others].sort()).toEqual(Object.keys(POUR_LOG.columns).sort());
  });

  test('a pattern has one pour a layer, and between two a gap and a tear test', () => {
    const readings = (layers: number) => fieldsFor(layers).filter((key) => /\d/.test(key));
    expect(readings(1)).toEqual(['pour1']);
    expect(readings(3)).toEqual(['pour1', 'pour2', 'pour3', 'gap12', 'gap23', 'tear12', 'tear23']);
    expect(readings(5)).toHaveLength(13);
  });
});
