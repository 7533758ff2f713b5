/** Slips: ways of going wrong that teachers know, each found by computing that way on purpose. */
import { unitSystems, type UnitSystem } from '../units/units';

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
  | 'countForShare'
  | 'countedOtherWay'
  | 'cubicFeet'
  | 'dateItselfCounted'
  | 'dayAfter'
  | 'dayBefore'
  | 'daysForRates'
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
  | 'moreThan'
  | 'multiplied'
  | 'nonePastTheEdge'
  | 'notCutAtZero'
  | 'notHalved'
  | 'notInOrder'
  | 'notRounded'
  | 'onTheFrost'
  | 'oneRowAlone'
  | 'otherAnswer'
  | 'otherChoice'
  | 'otherSystem'
  | 'otherUnits'
  | 'otherYear'
  | 'perOneForHundred'
  | 'perOneOfArea'
  | 'percent'
  | 'percentAnswer'
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
  | 'startCountedIn'
  | 'subtractedFrom'
  | 'timesForPower'
  | 'tuckOnce'
  | 'tuckOneEnd'
  | 'unitKept'
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
}

/** The arguments of a call by name, as its function reads them: undefined where left out. */
export type Given = Readonly<Record<string, unknown>>;

/** What a wrong way of computing has to go by. */
export interface Known {
  /** The argument as a number, the other one where it was left out, NaN where there is neither. */
  n(name: string, otherwise?: number): number;
  readonly given: Given;
  readonly units: UnitSystem;
  readonly right: number;
}

export function knownOf(given: Given, right: number): Known {
  return {
    n(name, otherwise = NaN) {
      const value = given[name];
      return typeof value === 'number' ? value : otherwise;
    },
    given,
    units: (given['units'] as UnitSystem | undefined) ?? unitSystems.us,
    right,
  };
}
