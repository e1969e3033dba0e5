import { POUR_LOG } from '../../book/tables/pourLog.ts';
import { temperatureText } from '../../words/quantityText.ts';
import type { CauseRule } from './causeRule.ts';
import { CUP_CAUSES } from './cupCauses.ts';
import { JOINT_CAUSES } from './jointCauses.ts';
import { MOLD_CAUSES } from './moldCauses.ts';
import { OTHER_CHECKS } from './otherChecks.ts';
import type { Defect, RunFigures } from './runFigures.ts';

export const CAUSE_RULES: readonly CauseRule[] = [...JOINT_CAUSES, ...MOLD_CAUSES, ...CUP_CAUSES];

/** A cause with what speaks for it and what to do; phrases without full stop. */
interface LikelyCause {
  readonly cause: string;
  readonly because: string;
  readonly cure: string;
  /** How strongly it makes the defect times how far its figure is beyond the limit */
  readonly worth: number;
}

/** What became of one kind of defect. */
export interface Diagnosis {
  /** As the log calls it */
  readonly name: string;
  /** Bad pieces; 0 where only a tear test tells of it */
  readonly count: number;
  /** `unread` where too little was read to say that heat is not the cause */
  readonly verdict: 'explained' | 'not by heat' | 'unread';
  /** Likeliest first; empty unless explained */
  readonly causes: readonly LikelyCause[];
  /** Causes other than heat, most usual first */
  readonly checks: readonly string[];
}

/** A figure beyond its limit by more spans than this is as certain as it gets. */
const CERTAIN = 4;

/**
 * Likely causes of one kind of defect in a run, ranked.
 *
 * Each rule that makes the defect is asked what in the run speaks for it; a rule is worth how strongly it makes the defect
 * times how far its figure lies beyond the limit, in spans of that figure's doubt. A rule whose figure is inside its limit
 * says nothing, so a run inside its windows is not blamed on heat. How strongly a cause makes a defect is a judgment of the
 * trade, not a measurement.
 * @source TRADE, and the key beside each rule
 */
export function diagnose(run: RunFigures, defect: Defect, count: number): Diagnosis {
  const causes = CAUSE_RULES.flatMap(({ cause, makes, speaks }): LikelyCause[] => {
    const strength = makes[defect];
    const evidence = strength === undefined ? undefined : speaks(run);
    if (strength === undefined || evidence === undefined) return [];
    const { excess, because, cure } = evidence;
    return [{ cause, because, cure, worth: strength * Math.min(CERTAIN, excess) }];
  }).sort((one, other) => other.worth - one.worth);
  return {
    name: POUR_LOG.columns[defect].heading,
    count,
    verdict: causes.length > 0 ? 'explained' : isUnread(run, defect) ? 'unread' : 'not by heat',
    causes,
    checks: OTHER_CHECKS[defect].look,
  };
}

/** A reading that a rule for this defect would have looked at is not there. */
function isUnread({ blanks, isTwoPiece }: RunFigures, defect: Defect): boolean {
  const hasRule = (rules: readonly CauseRule[]) =>
    rules.some(({ makes }) => makes[defect] !== undefined);
  return (blanks.length > 0 && hasRule(CAUSE_RULES)) || (isTwoPiece && hasRule(JOINT_CAUSES));
}

/** What the heat record shows: the mold, the coolest joint. A phrase; absent where nothing was read. */
export function heatRecord({
  moldTop,
  joints,
  bondTemperature,
  system,
}: RunFigures): string | undefined {
  const coolest = [...joints].sort(
    (one, other) => one.contactTemperature - other.contactTemperature,
  )[0];
  const parts = [
    ...(moldTop === undefined ? [] : [`the mold top read ${temperatureText(moldTop, system)}`]),
    ...(coolest === undefined
      ? []
      : [
          `the ${coolest.above} met the ${coolest.below} at ${temperatureText(coolest.contactTemperature, system)}, layers bond from ${temperatureText(bondTemperature, system)}`,
        ]),
  ];
  return parts.length === 0 ? undefined : parts.join('; ');
}
