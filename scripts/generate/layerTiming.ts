import { bondWindow } from '../../shared/heat/bondWindow.ts';
import { openTime } from '../../shared/heat/openTime.ts';
import { openTimeOneTerm } from '../../shared/heat/openTimeOneTerm.ts';
import { solveLayers } from '../../shared/heat/solver/solveLayers.ts';
import { type Compared, closedFormError, errorText, largest, timeText } from './timeText.ts';

const MILLIMETERS = [2, 3, 5, 9];
const MOLDS = [50, 60, 71, 85, 100, 115];
/** As the layer lands; the tables print the middle one, the largest errors are over all. */
const POURS = [150, 165, 175];
const PRINTED = 165;
/** When the second layer of a stack lands [s]: firm on a cool mold, still in time. */
const SECOND = 60;
const HOUR = 3600;

interface Case {
  readonly mold: number;
  readonly millimeters: number;
  readonly pour: number;
}

interface Row extends Case {
  readonly open: Compared;
  readonly oneTerm: Compared;
  readonly latest: Compared;
}

/** docs/layer-timing.md: closed forms against the layer solver over the working range. */
export function layerTiming(): string {
  const single = eachCase(1);
  const stacked = eachCase(2);
  return [
    '# Layer times: closed forms against the solver\n',
    `${INTRODUCTION}\n`,
    '## One layer\n',
    `${ONE_LAYER}\n`,
    ...table(single),
    '',
    ...largestErrors(single),
    '\n## Second layer of a stack\n',
    `${STACK}\n`,
    ...table(stacked),
    '',
    ...largestErrors(stacked),
    '',
  ].join('\n');
}

const INTRODUCTION =
  'Written by `npm run generate`; do not edit. Default plastic, default air, a mold held at its temperature, solved for one hour. ' +
  'The layer lands at 165 °C in the tables; the largest errors are over 150, 165 and 175 °C. Errors are of the closed form against the solver ' +
  '(`solveLayers`): + is late, and more than 15 % is bold. *Series* is `openTime` and `bondWindow`, *one term* is `openTimeOneTerm`; ' +
  'the latest next pour is for a layer of the same temperature. Near the verdict "stays open" a small difference in temperature is a long one in time.';
const ONE_LAYER =
  'The series is the exact solution of what the solver solves, so its column is the error of the solver’s grid and steps.';
const STACK =
  'Two equal layers, the second poured 60 s after the first. The closed forms know one layer only and take the whole stack as one thickness, ' +
  'as if all of it had been poured with the second layer, and its mean for that of the upper layer, which is the cooler half once heat comes ' +
  'from the mold. Times count from the second pour. Stacks are better planned with the solver.';

function eachCase(layers: 1 | 2): readonly Row[] {
  return MOLDS.flatMap((mold) =>
    MILLIMETERS.flatMap((millimeters) =>
      POURS.map((pour) => comparedRow({ mold, millimeters, pour }, layers)),
    ),
  );
}

/** The top layer of a stack of one or two. */
function comparedRow(given: Case, layers: 1 | 2): Row {
  const { mold, millimeters, pour } = given;
  const thickness = millimeters / 1000;
  const times = layers === 1 ? [0] : [0, SECOND];
  const pours = times.map((time) => ({ time, thickness, temperature: pour }));
  const solved = solveLayers({ pours, mold, until: HOUR + SECOND }).layers[layers - 1];
  if (solved === undefined) throw new Error('one solved layer per pour');
  const closed = {
    thickness: layers * thickness,
    startTemperature: pour,
    moldTemperature: mold,
  };
  const { open, latest } = solved;
  return {
    ...given,
    open: { solved: open, closed: openTime(closed) },
    oneTerm: { solved: open, closed: openTimeOneTerm(closed) },
    latest: { solved: latest, closed: bondWindow(closed, { pourTemperature: pour }).latest },
  };
}

function table(rows: readonly Row[]): readonly string[] {
  return [
    '| mold °C | layer mm | open time s | series | one term | latest next pour s | series |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...rows
      .filter(({ pour }) => pour === PRINTED)
      .map(({ mold, millimeters, open, oneTerm, latest }) => {
        const times = [timeText(open.solved), errorText(open), errorText(oneTerm)];
        const cells = [mold, millimeters, ...times, timeText(latest.solved), errorText(latest)];
        return `| ${cells.join(' | ')} |`;
      }),
  ];
}

function largestErrors(rows: readonly Row[]): readonly string[] {
  const named = [
    ['Open time, series', rows.map(({ open }) => open)],
    ['Open time, one term', rows.map(({ oneTerm }) => oneTerm)],
    ['Latest next pour, series', rows.map(({ latest }) => latest)],
  ] as const;
  return named.map(([name, compared]) => {
    const other = compared.filter((one) => closedFormError(one) === undefined).length;
    const verdicts = other === 0 ? '' : `; another verdict in ${other} of ${compared.length}`;
    return `- ${name}: largest error ${largest(compared)}${verdicts}`;
  });
}
