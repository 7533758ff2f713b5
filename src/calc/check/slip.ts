/** Slips: ways of going wrong that teachers know, each found by computing that way on purpose. */
import { rowLengthOfYield, unitSystems, type UnitSystem } from '../units/units';

/** The key of its sentence in texts/catalogue/slips. */
export type SlipName =
  | 'added'
  | 'ageForLeft'
  | 'allForMales'
  | 'areaForLand'
  | 'areaInSmallUnits'
  | 'averageTaken'
  | 'baseOnce'
  | 'bothEndsCounted'
  | 'complement'
  | 'countedOtherWay'
  | 'countForShare'
  | 'cubicFeet'
  | 'cubicInches'
  | 'dateItselfCounted'
  | 'dayAfter'
  | 'dayBefore'
  | 'daysForRates'
  | 'dayTooMany'
  | 'diameterForRadius'
  | 'divided'
  | 'endPostForgotten'
  | 'endsLeftOut'
  | 'everyOne'
  | 'exactly'
  | 'exchanged'
  | 'failuresAdded'
  | 'firstNotCounted'
  | 'fromOtherEnd'
  | 'gainForNothing'
  | 'gainTheOtherWay'
  | 'gapsForPlants'
  | 'germinationTimesSeeds'
  | 'halvedAtEnd'
  | 'highAlone'
  | 'largeUnitForSmall'
  | 'lastPathCounted'
  | 'leftOut'
  | 'linearFactor'
  | 'lossAdded'
  | 'lossesOnAll'
  | 'meanOfDates'
  | 'meanOfDays'
  | 'minutesForHours'
  | 'monthsForDays'
  | 'monthsOfThirty'
  | 'moreThan'
  | 'multiplied'
  | 'nonePastTheEdge'
  | 'notBetween'
  | 'notCutAtZero'
  | 'notHalved'
  | 'notInOrder'
  | 'notRounded'
  | 'oneRowAlone'
  | 'oneSpacingTwice'
  | 'onTheFrost'
  | 'otherAnswer'
  | 'otherChoice'
  | 'otherSystem'
  | 'otherUnits'
  | 'otherYear'
  | 'percent'
  | 'percentAnswer'
  | 'perOneForHundred'
  | 'perOneOfArea'
  | 'plainMean'
  | 'plantAtBothEnds'
  | 'postForAllRows'
  | 'rainEveryDay'
  | 'rateForDays'
  | 'ratioForShare'
  | 'restOfAnswer'
  | 'roundedAtEnd'
  | 'roundedDown'
  | 'roundedTooFar'
  | 'roundedUp'
  | 'seedsForCells'
  | 'shareOfChance'
  | 'smallUnitForLarge'
  | 'squareFactor'
  | 'startCountedIn'
  | 'subtracted'
  | 'subtractedFrom'
  | 'timesForPower'
  | 'tuckOnce'
  | 'tuckOneEnd'
  | 'unitDivided'
  | 'unitKept'
  | 'unitMultiplied'
  | 'upsideDown'
  | 'usual'
  | 'weeksForDays'
  | 'worstYear'
  | 'yearCountedToo';

export interface Slip {
  readonly name: SlipName;
  /** The argument, or the quantity of a step, that it was made with. */
  readonly about?: string;
  /** The word that was taken for another. */
  readonly taken?: string;
  /** The number that turns a unit, where it was made with that. */
  readonly value?: number;
}

/** The arguments of a call by name, as its function reads them: undefined where left out. */
export type Given = Readonly<Record<string, unknown>>;

/** What a wrong way of computing has to go by. */
export interface Known {
  /** The argument, or constant, as a number; the other one where it was left out, NaN where there is neither. */
  n(name: string, otherwise?: number): number;
  readonly given: Given;
  readonly units: UnitSystem;
  readonly right: number;
}

/** Numbers that turn one unit into another, by name. */
export function unitNumbers({
  spacingPerLength,
  areaPerLand,
  cellVolumePerMixVolume,
  dripFlowLength,
}: UnitSystem): Readonly<Record<string, number>> {
  return { spacingPerLength, areaPerLand, cellVolumePerMixVolume, dripFlowLength, rowLengthOfYield };
}

export function knownOf(given: Given, right: number): Known {
  const units = (given['units'] as UnitSystem | undefined) ?? unitSystems.us;
  const numbers: Given = { ...unitNumbers(units), ...given };
  return {
    n(name, otherwise = NaN) {
      const value = numbers[name];
      return typeof value === 'number' ? value : otherwise;
    },
    given,
    units,
    right,
  };
}
