import type { PlainElement } from '../../elements/plainElement.ts';
import { FONT, GRAY, segment, textShape } from '../../elements/shape.ts';
import type { HeatTrialPictured } from '../../trials/trialPictureTypes.ts';
import { MEASURES } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';
import { type Axis, type Edges, niceAxis, plotFrame } from '../chart/plotFrame.ts';
import { pointMark } from '../chart/pointMark.ts';
import { trialResiduals } from './trialResiduals.ts';

/** Reading less curve: stems from zero, as much room above as below. */
export function residualStrip(
  trial: HeatTrialPictured,
  across: Axis,
  edges: Edges,
): readonly PlainElement[] {
  const { left, right, top, bottom } = edges;
  const unit = MEASURES.temperatureDifference[trial.system];
  const residuals = trialResiduals(trial).map((one) => ({
    ...one,
    residual: fromEngine(one.residual, unit),
  }));
  const most = Math.max(1, ...residuals.map(({ residual }) => Math.abs(residual)));
  const up = niceAxis([-most, most], {
    title: '',
    room: bottom - top,
    along: 'down',
    narrowest: 1,
  });
  const { x, y, drawn } = plotFrame(edges, across, up);
  const trials = [...new Set(trial.readings.map((reading) => reading.trial))];
  return [
    ...drawn,
    segment([left, y(0)], [right, y(0)], { stroke: GRAY.text }),
    ...residuals.flatMap(({ seconds, residual, trial: name }) => {
      const at = x(seconds);
      return [
        segment([at, y(0)], [at, y(residual)], { 'stroke-width': 1.6 }),
        pointMark([at, y(residual)], trials.indexOf(name)),
      ];
    }),
    textShape(left, top - 7, `reading less curve, ${UNITS[unit].label}`, { size: FONT.small }),
  ];
}
