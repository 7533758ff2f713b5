/** A daily record out of a text, for the pane and the commands: days as serial numbers, doubts as sentences. */
import type { Hemisphere } from '../calc/frost/coldSeason';
import type { Split } from '../calc/record/findHead';
import { isRemark, isStopping, type Measure, type RecordDoubt } from '../calc/record/recordDoubts';
import { readRecord, type DailyRecord } from '../calc/record/readRecord';
import type { UnitSystemName } from '../calc/units/units';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { dayOfSerial, isoOfDay, serialOfDay } from '../workbook/serialDate';
import { sayNumber } from './wording';

const words = catalogue.record;

export interface WeatherChoices {
  /** In place of what headers and temperatures say. */
  readonly units?: UnitSystemName | undefined;
  /** The last day that can have been measured [serial]. */
  readonly today: number;
  readonly hemisphere: Hemisphere;
}

export interface WeatherRead {
  /** null when a doubt stops it. */
  readonly record: {
    readonly place: string;
    readonly units: UnitSystemName;
    readonly days: readonly {
      readonly serial: number;
      readonly high: number | null;
      readonly low: number | null;
    }[];
  } | null;
  /** What was taken from which columns; '' when nothing was. */
  readonly found: string;
  readonly doubts: readonly {
    readonly line: number;
    readonly sentence: string;
    readonly stops: boolean;
    /** Nothing is wrong with the record. */
    readonly isRemark: boolean;
  }[];
}

/** @param split takes a text apart into cells */
export function readWeather(text: string, split: Split, choices: WeatherChoices): WeatherRead {
  const { units, hemisphere } = choices;
  const today = dayOfSerial(choices.today) ?? NaN;
  const { record, doubts } = readRecord(text, split, { units, hemisphere, today });
  return {
    record:
      record === null
        ? null
        : {
            place: record.place,
            units: record.units,
            days: record.days.map(({ day, high, low }) => ({ serial: serialOfDay(day), high, low })),
          },
    found: record === null ? '' : sayFound(record),
    doubts: doubts.map((doubt) => ({
      line: doubt.line,
      sentence: sayDoubt(doubt),
      stops: isStopping(doubt),
      isRemark: isRemark(doubt),
    })),
  };
}

function sayFound({ days, units, unitsBy, headers, place }: DailyRecord): string {
  const sentence = fill(words.found, {
    count: days.length,
    first: isoOfDay(days[0]?.day ?? 0),
    last: isoOfDay(days.at(-1)?.day ?? 0),
    units: words.units[units],
    unitsBy: words.unitsBy[unitsBy],
    date: headers.date,
    low: headers.low,
    high: headers.high === '' ? '' : fill(words.highFrom, { header: headers.high }),
  });
  return place === '' ? sentence : `${sentence} ${fill(words.placeFound, { place })}`;
}

const dayNames: ReadonlySet<string> = new Set(['day', 'from', 'to']);
const degreeNames: ReadonlySet<string> = new Set([
  'degrees',
  'hottest',
  'warmest',
  'high',
  'low',
  'mean',
  'usual',
]);
/** What is quoted back; a cell can hold a book. */
const mostQuoted = 60;

function sayDoubt(doubt: RecordDoubt): string {
  const said = Object.entries(doubt).map(([key, value]: [string, string | number | readonly Measure[]]) => {
    if (typeof value === 'object') return [key, value.map((one) => words.measures[one]).join(words.and)];
    if (key === 'measure') return [key, words.measures[value as keyof typeof words.measures]];
    if (key === 'units') return [key, words.units[value as UnitSystemName]];
    if (key === 'hemisphere') return [key, words.hemispheres[value as Hemisphere]];
    if (key === 'side') return [key, words.sides[value as keyof typeof words.sides]];
    if (typeof value === 'string')
      return [key, value.length > mostQuoted ? `${value.slice(0, mostQuoted)}…` : value];
    if (dayNames.has(key)) return [key, isoOfDay(value)];
    return [key, degreeNames.has(key) ? sayNumber(value) : value];
  });
  return fill(words.doubts[doubt.code], Object.fromEntries(said));
}
