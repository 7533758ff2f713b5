/**
 * The refusals of the arithmetic: codes with their parameters, no prose. `texts` has the sentence of each.
 * A `name` is the name of the function's argument, as functions.json has it. Long because it is one list.
 */
import type { RipenessSign } from '../reference/pickingSizes';
import type { Unit } from './units/units';

export type Problem =
  /** A number outside its limits. A limit that does not apply is absent. */
  | {
      readonly code: 'outOfRange';
      readonly name: string;
      readonly value: number;
      readonly unit: Unit;
      readonly atLeast?: number;
      readonly above?: number;
      readonly atMost?: number;
      readonly below?: number;
    }
  | { readonly code: 'notWhole'; readonly name: string; readonly value: number }
  /** 85 where 0.85 or 85 % was meant. */
  | { readonly code: 'percentForShare'; readonly name: string; readonly value: number }
  | { readonly code: 'missing'; readonly name: string }
  /** `row` counts from 1 in a range. */
  | {
      readonly code: 'notANumber' | 'currencySign' | 'commaInNumber';
      readonly name: string;
      readonly given: string;
      readonly row?: number;
    }
  | { readonly code: 'notADate'; readonly name: string; readonly given: string; readonly row?: number }
  /** In a range of dates a temperature or a count of days: the columns were exchanged. */
  | { readonly code: 'numberForDate'; readonly name: string; readonly given: string; readonly row: number }
  | { readonly code: 'notText'; readonly name: string }
  | { readonly code: 'notYesOrNo'; readonly name: string; readonly given: string }
  | { readonly code: 'oneCellWanted'; readonly name: string }
  | { readonly code: 'errorInside'; readonly name: string; readonly error: string }
  /** A choice among a few words. */
  | {
      readonly code: 'notAChoice';
      readonly name: string;
      readonly given: string;
      readonly choices: readonly string[];
    }
  /** A name of the reference. Shown as #N/A. */
  | {
      readonly code: 'unknownName';
      readonly kind: 'crop' | 'figure';
      readonly given: string;
      readonly nearest: readonly string[];
    }
  /** The reference has no figure there. Shown as #N/A. */
  | { readonly code: 'noFigure'; readonly crop: string; readonly trait: string }
  /** The federal list has no kind for the crop. Shown as #N/A. */
  | { readonly code: 'noSeedStandard'; readonly crop: string }
  /** An average germination that the table of retests has no range for. Shown as #N/A. */
  | {
      readonly code: 'noTolerance';
      readonly percent: number;
      readonly replicates: number;
      readonly from: number;
      readonly to: number;
    }
  /** No published storage life. Shown as #N/A. */
  | { readonly code: 'noSeedLife'; readonly crop: string }
  /** No table of emergence for the crop. Shown as #N/A. */
  | { readonly code: 'noEmergence'; readonly crop: string }
  /** A soil temperature that the table does not reach. Shown as #N/A. */
  | {
      readonly code: 'outsideEmergence';
      readonly crop: string;
      readonly from: number;
      readonly to: number;
      readonly unit: Unit;
    }
  | { readonly code: 'packedLater'; readonly packed: number; readonly year: number }
  /** A price list without a pack of the crop. Shown as #N/A. */
  | { readonly code: 'noPackListed'; readonly crop: string }
  | { readonly code: 'tooManyPackSizes'; readonly count: number; readonly most: number }
  /** A price that is no whole number of the smallest part of money counted in. */
  | { readonly code: 'priceTooFine'; readonly price: number; readonly decimals: number }
  /** A field so small that acres were typed for square feet, or hectares for square metres. */
  | {
      readonly code: 'areaInLandUnits';
      readonly area: number;
      readonly unit: Unit;
      readonly landUnit: Unit;
      readonly areaPerLand: number;
    }
  /** Two lists of one function with different lengths. */
  | {
      readonly code: 'unequalLists';
      readonly name: string;
      readonly count: number;
      readonly otherName: string;
      readonly otherCount: number;
    }
  | { readonly code: 'noRowFits'; readonly width: number; readonly rowSpacing: number; readonly unit: Unit }
  | {
      readonly code: 'noPlantFits';
      readonly length: number;
      readonly plantSpacing: number;
      readonly unit: Unit;
      readonly spacingUnit: Unit;
    }
  /** An area smaller than one plant owns, which may have been meant in acres or hectares. */
  | {
      readonly code: 'noPlantInArea';
      readonly area: number;
      readonly areaPerPlant: number;
      readonly unit: Unit;
      readonly landUnit: Unit;
      readonly areaPerLand: number;
    }
  | { readonly code: 'noHillFits'; readonly side: number; readonly hillSpacing: number; readonly unit: Unit }
  /** For a picture. */
  | { readonly code: 'tooManyRowsToPlace'; readonly rows: number; readonly most: number }
  | { readonly code: 'noBedFits'; readonly width: number; readonly bedWidth: number; readonly unit: Unit }
  | {
      readonly code: 'rowsTooClose';
      readonly rows: number;
      readonly bedWidth: number;
      readonly unit: Unit;
      readonly apart: number;
      readonly least: number;
      readonly spacingUnit: Unit;
    }
  /** Rows of hills that lie further apart than the plot is wide. */
  | {
      readonly code: 'noHillRowFits';
      readonly width: number;
      readonly rowSpacing: number;
      readonly unit: Unit;
    }
  /** The last of a row of dates before the first. */
  | { readonly code: 'lastBeforeFirst'; readonly firstDay: number; readonly lastDay: number }
  | { readonly code: 'tooManyDates'; readonly count: number; readonly most: number }
  /** No function of that name has steps to show. Shown as #N/A. */
  | { readonly code: 'unknownFunction'; readonly given: string; readonly nearest: readonly string[] }
  /** An answer cannot be held to more than one row of results. */
  | { readonly code: 'listOfAnswers'; readonly id: string }
  | { readonly code: 'tooManyArguments'; readonly id: string; readonly most: number }
  | { readonly code: 'testedWithoutAssurance' }
  /** An assurance of 1. */
  | { readonly code: 'assuranceOfOne' }
  /** More seeds, cells or plants than the binomial sum takes. */
  | { readonly code: 'tooManyForAssurance'; readonly most: number }
  /** More plants than the beta-binomial sum takes. */
  | { readonly code: 'tooManyForTested'; readonly plants: number; readonly most: number }
  /** A germination test so small that no sensible number of seeds reaches the assurance. */
  | { readonly code: 'tooFewTested'; readonly tested: number; readonly assurance: number }
  | { readonly code: 'frostDatesReversed'; readonly lastFrost: number; readonly firstFrost: number }
  /** Two frosts of one season more than a leap year apart. */
  | {
      readonly code: 'frostYearsApart';
      readonly lastFrost: number;
      readonly firstFrost: number;
      readonly days: number;
    }
  /** A first pick on or after the first frost. Shown as #N/A. */
  | { readonly code: 'frostComesFirst'; readonly firstPick: number; readonly firstFrost: number }
  /** Shown as #N/A. */
  | { readonly code: 'mayStayCovered' }
  /** A daily record with nothing in it. */
  | { readonly code: 'noDays' }
  /** A row of a record, from 1, that lacks the high or the low. Shown as #N/A. */
  | { readonly code: 'dayMissingInRow'; readonly row: number }
  /** A day on the way that the record has not. Shown as #N/A. */
  | { readonly code: 'dayMissing'; readonly day: number }
  | { readonly code: 'dateMissing'; readonly row: number }
  | { readonly code: 'sameDayTwice'; readonly day: number; readonly row: number }
  /** The record ends before the answer. Shown as #N/A. */
  | { readonly code: 'recordEnds'; readonly lastDay: number }
  | { readonly code: 'lowAboveHigh'; readonly high: number; readonly low: number }
  | {
      readonly code: 'lowAboveHighInRow';
      readonly row: number;
      readonly high: number;
      readonly low: number;
    }
  /** A mark for a missing value, as a rule. */
  | { readonly code: 'notATemperature'; readonly name: string; readonly value: number; readonly row: number }
  /** Lows in C where F were said or assumed, and the other way round. */
  | { readonly code: 'lowsInCelsius'; readonly warmest: number }
  | { readonly code: 'lowsInFahrenheit'; readonly warmest: number }
  | { readonly code: 'baseInOtherScale'; readonly warmest: number; readonly base: number }
  | { readonly code: 'ceilingWanted' }
  | { readonly code: 'ceilingUnderBase'; readonly base: number; readonly ceiling: number }
  /** No season that counts among the frost dates. */
  | { readonly code: 'noSeasons' }
  /** Two frosts of one season in a list that has one for each. */
  | { readonly code: 'sameSeasonTwice'; readonly firstDay: number; readonly lastDay: number }
  /** Every frost lies before the winter, or after it: they are those of the other side, or of the other hemisphere. */
  | { readonly code: 'lastFrostsInFall' | 'firstFrostsInSpring'; readonly seasons: number }
  /** It never froze. Shown as #N/A. */
  | { readonly code: 'neverFroze'; readonly seasons: number }
  /** Frost comes in fewer seasons than the risk asks for. Shown as #N/A. */
  | { readonly code: 'riskAboveFrost'; readonly risk: number; readonly share: number }
  | { readonly code: 'tooFewSeasons'; readonly seasons: number; readonly needed: number }
  | {
      readonly code: 'hillTooSteep';
      readonly height: number;
      readonly diameter: number;
      readonly unit: Unit;
    }
  /** A flow so small that it was told by the minute. */
  | {
      readonly code: 'flowPerMinute';
      readonly flow: number;
      readonly unit: Unit;
      readonly perHour: number;
    }
  | { readonly code: 'tooManyPicks'; readonly count: number; readonly most: number }
  /** No published weight of a bushel. Shown as #N/A. */
  | { readonly code: 'noBushel'; readonly crop: string }
  /** `sign` is a key of texts.ripeness. Shown as #N/A. */
  | { readonly code: 'judgedByRipeness'; readonly crop: string; readonly sign: RipenessSign }
  /** No published picking size for that use. Shown as #N/A. */
  | { readonly code: 'noSizeForUse'; readonly crop: string; readonly use: string }
  /** Each unit costs its price or more to harvest and sell. Shown as #N/A. */
  | { readonly code: 'noYieldBreaksEven'; readonly price: number; readonly harvestCost: number }
  | {
      readonly code: 'tooManyFigures';
      readonly name: string;
      readonly count: number;
      readonly most: number;
    }
  | { readonly code: 'pastYearNotPast'; readonly pastYear: number; readonly year: number }
  /** The result is no finite number: an input is absurdly large or small. Shown as #NUM!. */
  | { readonly code: 'tooLarge' };

/** The codes that mean "there is no such thing" and not "that is wrong". */
export const notAvailableCodes: ReadonlySet<Problem['code']> = new Set([
  'unknownName',
  'unknownFunction',
  'noFigure',
  'noSeedStandard',
  'noTolerance',
  'noSeedLife',
  'noPackListed',
  'frostComesFirst',
  'mayStayCovered',
  'noEmergence',
  'outsideEmergence',
  'dayMissingInRow',
  'dayMissing',
  'recordEnds',
  'neverFroze',
  'riskAboveFrost',
  'noBushel',
  'judgedByRipeness',
  'noSizeForUse',
  'noYieldBreaksEven',
] as const);

export class CalcError extends Error {
  constructor(readonly problem: Problem) {
    super(problem.code);
    this.name = 'CalcError';
  }
}

export function refuse(problem: Problem): never {
  throw new CalcError(problem);
}
