import { describe, expect, test } from 'vitest';
import {
  CHECKLIST_COLUMNS,
  CHECKLIST_KEYS,
  checklistFormat,
  checklistHeight,
} from '../../../shared/day/checklist/checklistColumns.ts';

describe('columns of the checklist', () => {
  test('box, time, task, latest moment and person fit a phone held upright', () => {
    const first = CHECKLIST_KEYS.slice(0, 5);
    expect(first).toEqual(['done', 'from', 'text', 'latest', 'person']);
    // Phones are 360 to 430 px wide; most that are sold have 412 or more.
    const width = first.reduce((sum, key) => sum + CHECKLIST_COLUMNS[key].width, 0);
    expect(width).toBeLessThanOrEqual(430);
  });

  test('every heading is there once, and times are written as the shop writes them', () => {
    const headings = CHECKLIST_KEYS.map((key) => CHECKLIST_COLUMNS[key].heading);
    expect(new Set(headings).size).toBe(headings.length);
    expect(checklistFormat('from', 'US')).toBe('ddd h:mm am/pm');
    expect(checklistFormat('latest', 'metric')).toBe('H:mm');
    expect(checklistFormat('id', 'US')).toBe('@');
  });

  test('a line is high enough for its words and for a gloved finger', () => {
    expect(checklistHeight('pour')).toBe(40);
    expect(checklistHeight(['STOP:', '• one', '• two', '• three'].join('\n'))).toBe(4 * 19 + 8);
    expect(checklistHeight('x'.repeat(100))).toBe(5 * 19 + 8);
  });
});
