import { refuse } from '../../errors/refuse.ts';
import { CHART_POINTS } from '../../outcomes/quality/chartSamples.ts';
import { qualitySummary } from '../../outcomes/quality/qualitySummary.ts';
import { decided, readCommand, showCommand } from '../command.ts';
import { OPTIONAL_TEXT } from '../readPayload.ts';

/** Names in the book may be longer than an order's number. */
const NAME = { ...OPTIONAL_TEXT, longest: 200 };
const PAYLOAD = { mold: NAME, pattern: NAME, points: OPTIONAL_TEXT } as const;

/** Yields, signals, charts and the worst of what was logged. */
export const qualityFor = readCommand<'qualityFor', 'patterns' | 'pourLog'>({
  payload: PAYLOAD,
  tables: ['patterns', 'pourLog'],
  answer: ({ mold, pattern, points: typed }, book, context) => {
    const points = CHART_POINTS.find((one) => one === (typed || 'rounds'));
    if (points === undefined)
      return refuse('points', `points must be one of ${CHART_POINTS.join(', ')}, got "${typed}"`);
    const asked = { points, ...(mold ? { mold } : {}), ...(pattern ? { pattern } : {}) };
    return { kind: 'ok', ...qualitySummary(book, context.today(), asked) };
  },
});

/** Opens the dialog that shows and prints the quality; it asks for the figures itself. */
export const showQuality = showCommand<'showQuality'>({
  payload: PAYLOAD,
  tables: [],
  decide: (request) =>
    decided({ kind: 'ok' }, { shows: { dialog: 'Quality', title: 'Quality', request } }),
});
