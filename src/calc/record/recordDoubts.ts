/** What is doubtful in a daily record of temperatures: codes with their parameters, no prose. `texts` has the sentences. */
import type { FrostSide, Hemisphere } from '../frost/coldSeason';
import type { UnitSystemName } from '../units/units';

/** What a record says of a day. */
export type Measure = 'date' | 'high' | 'low';

/** Days are whole day numbers; lines count from 1, and a doubt stands at its own. */
export type RecordDoubt = { readonly line: number } & (
  | { readonly code: 'nothingThere' }
  | { readonly code: 'tooManyLines'; readonly count: number; readonly most: number }
  /** No line that names the columns. */
  | { readonly code: 'noHeader' }
  /** A line names some of the columns. */
  | { readonly code: 'headerLacks'; readonly measures: readonly Measure[] }
  | { readonly code: 'columnMissing'; readonly measure: Measure }
  | { readonly code: 'highMissing' }
  | {
      readonly code: 'columnTwice';
      readonly measure: Measure;
      readonly header: string;
      readonly otherHeader: string;
    }
  | { readonly code: 'linesBefore'; readonly count: number }
  | { readonly code: 'openQuote' }
  | { readonly code: 'raggedLine'; readonly expected: number; readonly found: number }
  | { readonly code: 'mostlyRagged'; readonly count: number; readonly lines: number }
  | {
      readonly code: 'otherStation';
      readonly station: string;
      readonly otherStation: string;
      readonly otherLine: number;
    }
  | { readonly code: 'notADay'; readonly given: string }
  /** 29 February of no leap year, and the like. */
  | { readonly code: 'noSuchDay'; readonly given: string }
  /** Every date could be read with the month or with the day first. */
  | { readonly code: 'dayOrMonthFirst'; readonly given: string }
  /** One date has the month first, another the day. */
  | {
      readonly code: 'dayAndMonthFirst';
      readonly given: string;
      readonly other: string;
      readonly otherLine: number;
    }
  /** Before 1 March 1900, where the days of spreadsheets begin. */
  | { readonly code: 'tooEarly'; readonly given: string }
  | { readonly code: 'futureDay'; readonly day: number }
  | { readonly code: 'notATemperature'; readonly measure: Measure; readonly given: string }
  /** Hotter or colder than was ever measured, or than the functions take. */
  | {
      readonly code: 'impossible';
      readonly measure: Measure;
      readonly degrees: number;
      readonly units: UnitSystemName;
    }
  /** Of a mark that says so. */
  | { readonly code: 'estimated'; readonly measure: Measure; readonly given: string }
  /** The cell names a scale, and the header or another cell the other. */
  | { readonly code: 'cellOfOtherScale'; readonly given: string; readonly units: UnitSystemName }
  | { readonly code: 'scalesDiffer'; readonly header: string; readonly otherHeader: string }
  /** Neither the headers nor the temperatures tell the scale. */
  | { readonly code: 'scaleUnknown'; readonly hottest: number; readonly days: number }
  /** The temperatures of a year are none of the scale they should be in. */
  | {
      readonly code: 'otherScale';
      readonly units: UnitSystemName;
      readonly year: number;
      readonly hottest: number;
    }
  /** In the scale that the person named the air was never so hot. */
  | {
      readonly code: 'askedScale';
      readonly units: UnitSystemName;
      readonly year: number;
      readonly hottest: number;
    }
  /** Months that are none of that scale beside those of other years. */
  | {
      readonly code: 'monthsOfOtherScale';
      readonly measure: Measure;
      readonly units: UnitSystemName;
      readonly from: number;
      readonly to: number;
      readonly mean: number;
      readonly usual: number;
    }
  /** The warmest night of a year or more is too cold. */
  | { readonly code: 'otherLows'; readonly units: UnitSystemName; readonly warmest: number }
  /** Too high for either scale. */
  | { readonly code: 'noScale'; readonly hottest: number }
  | { readonly code: 'lowAboveHigh'; readonly high: number; readonly low: number }
  /** In most lines: the columns change places. */
  | { readonly code: 'columnsSwapped'; readonly count: number; readonly days: number }
  | { readonly code: 'sameDayTwice'; readonly day: number; readonly otherLine: number }
  | { readonly code: 'sameDayDiffers'; readonly day: number; readonly otherLine: number }
  /** So often that these are two records. */
  | { readonly code: 'twoRecords'; readonly day: number; readonly otherLine: number; readonly count: number }
  | { readonly code: 'noDays' }
  /** The warm half of the year is the other one. */
  | { readonly code: 'otherHemisphere'; readonly hemisphere: Hemisphere }
  | { readonly code: 'notInOrder' }
  /** Days without a line, from the day after the one before. */
  | { readonly code: 'gap'; readonly from: number; readonly to: number; readonly count: number }
  /** There is a column of highs, and of no day a high. */
  | { readonly code: 'noHigh' }
  /** Lines without a low. */
  | { readonly code: 'noLow'; readonly count: number }
  /** Ten or more days are missing where a frost would change its date. */
  | { readonly code: 'voidSeason'; readonly side: FrostSide; readonly year: number }
  /** Springs and falls that count. */
  | { readonly code: 'fewSeasons'; readonly springs: number; readonly falls: number; readonly enough: number }
  /** Of a code of which enough were listed. */
  | { readonly code: 'andMore'; readonly of: DoubtCode; readonly count: number }
);

export type DoubtCode = RecordDoubt['code'];

/** After these there is no record. */
const stopping: ReadonlySet<DoubtCode> = new Set([
  'nothingThere',
  'tooManyLines',
  'noHeader',
  'headerLacks',
  'columnMissing',
  'columnTwice',
  'openQuote',
  'mostlyRagged',
  'otherStation',
  'dayOrMonthFirst',
  'dayAndMonthFirst',
  'cellOfOtherScale',
  'scalesDiffer',
  'scaleUnknown',
  'askedScale',
  'otherScale',
  'monthsOfOtherScale',
  'otherLows',
  'noScale',
  'columnsSwapped',
  'twoRecords',
  'noDays',
  'otherHemisphere',
] as const);

export function isStopping({ code }: RecordDoubt): boolean {
  return stopping.has(code);
}

/** Nothing is wrong with the record: what was done with it, and how far it reaches. */
const remarks: ReadonlySet<DoubtCode> = new Set([
  'linesBefore',
  'estimated',
  'sameDayTwice',
  'notInOrder',
  'fewSeasons',
] as const);

/** Whether there is nothing to mend. `andMore` follows the kind that it counts. */
export function isRemark(doubt: RecordDoubt): boolean {
  return remarks.has(doubt.code === 'andMore' ? doubt.of : doubt.code);
}

/** More of one kind are counted only: nobody mends a thousand lines from a list. */
const mostListed = 5;

export interface Doubts {
  add(doubt: RecordDoubt): void;
  isStopped(): boolean;
  /** By line; what stops first. */
  list(): readonly RecordDoubt[];
}

export function collectDoubts(): Doubts {
  const byCode = new Map<DoubtCode, { readonly listed: RecordDoubt[]; more: number }>();
  return {
    add(doubt) {
      const ofCode = byCode.get(doubt.code) ?? { listed: [], more: 0 };
      byCode.set(doubt.code, ofCode);
      if (ofCode.listed.length < mostListed) ofCode.listed.push(doubt);
      else ofCode.more += 1;
    },
    isStopped: () => [...byCode.values()].some(({ listed }) => listed.some(isStopping)),
    list() {
      const groups = [...byCode].map(([code, { listed, more }]): readonly RecordDoubt[] => {
        listed.sort((a, b) => a.line - b.line);
        const line = listed.at(-1)?.line ?? 1;
        return more === 0 ? listed : [...listed, { code: 'andMore', line, of: code, count: more }];
      });
      const rank = (group: readonly RecordDoubt[]): number => (group.some(isStopping) ? 0 : 1);
      const lineOf = (group: readonly RecordDoubt[]): number => group[0]?.line ?? 1;
      return groups.sort((a, b) => rank(a) - rank(b) || lineOf(a) - lineOf(b)).flat();
    },
  };
}
