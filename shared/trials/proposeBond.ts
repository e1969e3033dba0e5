import { addMissing, type MissingCells } from '../book/missingCells.ts';
import { bondJoints, type LoggedJoint } from '../outcomes/bond/bondJoints.ts';
import { bondFit } from '../quality/bond/bondFit.ts';
import type { Found } from './proposal.ts';
import type { TrialBook } from './trialBook.ts';
import type { BondPictured } from './trialPictureTypes.ts';

/** The bond temperature of the shop from the torn joints of its log; rows with a test that cannot be used are noted. */
export function proposeBond({ index }: TrialBook, gaps: MissingCells): readonly Found[] {
  const { joints, leftOut } = bondJoints(index);
  for (const { row, because } of leftOut)
    addMissing(gaps, { sheet: 'Pour log', row, heading: 'Tear test', text: because });
  if (joints.length === 0) return [];
  const fit = bondFit(joints);
  const picture: BondPictured = {
    kind: 'bond',
    title: 'Torn joints by contact temperature',
    system: gaps.system,
    inUse: index.book.shop.bondTemperature,
    joints: joints.map(({ contactTemperature, tear }) => ({ contactTemperature, tear })),
    ...(fit.kind === 'fitted'
      ? {
          curve: { intercept: fit.curve.intercept, slope: fit.curve.slope },
          threshold: fit.threshold,
        }
      : {}),
  };
  const found = { figure: 'bondTemperature', of: '', trials: [rowsOf(joints)] } as const;
  if (fit.kind !== 'fitted')
    return [{ ...found, result: { kind: 'no bond', fit }, pictures: [picture] }];
  const { value, standardError } = fit.threshold;
  const figure = { value, standardError };
  const result = { kind: 'fitted', figure, count: fit.joints, remarks: [], bond: fit } as const;
  return [{ ...found, result, pictures: [picture] }];
}

function rowsOf(joints: readonly LoggedJoint[]) {
  const rows = joints.map(({ row }) => row);
  const [first, last] = [Math.min(...rows), Math.max(...rows)];
  const where = first === last ? `row ${first}` : `rows ${first} to ${last}`;
  return { trial: `Pour log ${where}` };
}
