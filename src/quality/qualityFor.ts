import type { QualityAnswer, QualityPayload } from '../../shared/commands/qualityCommands.ts';
import { type Refused, refuse } from '../../shared/errors/refuse.ts';
import { CHART_POINTS } from '../../shared/outcomes/quality/chartSamples.ts';
import { qualitySummary } from '../../shared/outcomes/quality/qualitySummary.ts';
import { readBookNow } from '../platform/readBookNow.ts';
import { today } from '../platform/today.ts';
import { readPayload } from '../sidebar/readPayload.ts';
import { QUALITY_FIELDS } from './qualityFields.ts';

/**
 * Page call: yields, signals, charts and the worst of what was logged.
 * @param payload `{ mold?, pattern?, points? }`
 */
export function qualityFor(payload: unknown): QualityAnswer | Refused {
  const read = readPayload<QualityPayload>(QUALITY_FIELDS, payload);
  if (read.kind === 'refused') return read;
  const { mold, pattern, points: typed } = read.value;
  const points = CHART_POINTS.find((one) => one === (typed || 'rounds'));
  if (points === undefined)
    return refuse('points', `points must be one of ${CHART_POINTS.join(', ')}, got "${typed}"`);
  const asked = {
    points,
    ...(mold ? { mold } : {}),
    ...(pattern ? { pattern } : {}),
  };
  return { kind: 'ok', ...qualitySummary(readBookNow(['patterns', 'pourLog']), today(), asked) };
}
