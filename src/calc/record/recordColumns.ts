/**
 * Which columns of a record hold what, by the words of their headers. A column counts only if all of its words are
 * known ones, so that "Max Temp Flag", "Maximum humidity" and "Time of Tmax" are none. English and Spanish words are
 * known at once, without accents: a record keeps the language of whoever measured.
 */
import type { UnitSystemName } from '../units/units';
import type { Measure } from './recordDoubts';

export type Column = Measure | 'year' | 'month' | 'day' | 'dayOfYear' | 'station' | 'place';

export interface Scale {
  readonly units: UnitSystemName;
  /** Of what is written, in one degree. */
  readonly perDegree: 1 | 10;
}

export type RecordColumns = Readonly<Record<Column, readonly number[]>>;

const known = {
  date: 'date datum day time valid mess observation obs local lst yyyymmdd yyyy mm dd ymd of fecha dia hora y de la medicion observacion aaaammdd aaaa',
  high: 'max maximum high highest hi tmax tx txk maxt maxtemp tempmax tmx maxima maximo alta',
  low: 'min minimum low lowest lo tmin tn tnk mint mintemp tempmin tmn minima minimo baja',
  about:
    'temp temps temperature temperatures t air daily day of the at m in degrees degree deg tenths tenth temperatura temperaturas aire diaria dia de del la mas a en grados grado decimas decima',
  scale: 'f c fahrenheit celsius centigrade degf degc centigrados centigrado',
  year: 'year yr yyyy ano anio',
  month: 'month mo mm mes',
  day: 'day dd dy dom dia',
  dayOfYear: 'yday doy jday dayofyear',
  station:
    'station stations stationid stationname stn stid id site usaf wban ghcn ghcnid number no code climate estacion clave codigo numero de la',
  place: 'name place location nombre lugar localidad',
} as const;

const setOf = (...lists: readonly string[]): ReadonlySet<string> => new Set(lists.join(' ').split(' '));
const temperatureWords = (extreme: string): readonly [ReadonlySet<string>, ReadonlySet<string>] => [
  setOf(extreme),
  setOf(extreme, known.about, known.scale),
];
/** One word that must be there, and all that may. */
const rules: Readonly<Record<Column, readonly [ReadonlySet<string>, ReadonlySet<string>]>> = {
  date: [setOf('date datum day time valid yyyymmdd ymd yyyy fecha dia aaaammdd'), setOf(known.date)],
  high: temperatureWords(known.high),
  low: temperatureWords(known.low),
  year: [setOf(known.year), setOf(known.year)],
  month: [setOf(known.month), setOf(known.month)],
  day: [setOf(known.day), setOf(known.day, 'of month del mes')],
  dayOfYear: [setOf(known.dayOfYear), setOf(known.dayOfYear)],
  station: [
    setOf('station stations stationid stationname stn stid site usaf wban ghcn ghcnid estacion'),
    setOf(known.station),
  ],
  place: [setOf(known.place), setOf(known.place, 'station of estacion de la')],
};

/** "MaxTemp_F" has the words max, temp and f. */
function wordsOf(header: string): string[] {
  const bare = header.normalize('NFD').replace(/\p{M}/gu, '');
  const parted = bare.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
  // Thermometers hang 2 m above the ground, which some headers say.
  const said = parted
    .replace(/(?<![a-z0-9])t?2m(?![a-z0-9])/g, 't')
    .replace(/\b(?:day[ _]of[ _]year|dia[ _]del[ _]ano)\b/, 'dayofyear');
  return said.match(/[a-z]+/g) ?? [];
}

/** The columns of a line, were it the header. */
export function recordColumns(headers: readonly string[]): RecordColumns {
  const columns: Record<Column, number[]> = {
    date: [],
    high: [],
    low: [],
    year: [],
    month: [],
    day: [],
    dayOfYear: [],
    station: [],
    place: [],
  };
  headers.forEach((header, index) => {
    const words = wordsOf(header);
    for (const [column, [wanted, allowed]] of Object.entries(rules)) {
      const isIt = words.some((word) => wanted.has(word)) && words.every((word) => allowed.has(word));
      if (isIt) columns[column as Column].push(index);
    }
  });
  const { year, month, day, date } = columns;
  const isParted = year.length > 0 && month.length > 0 && day.length > 0;
  // "Day" is a date, but not beside a year and a month; "Time" is one, but not beside a date.
  const whole = isParted ? date.filter((index) => !day.includes(index) && !year.includes(index)) : date;
  const named = whole.filter((index) =>
    wordsOf(headers[index] ?? '').some((word) => word === 'date' || word === 'fecha'),
  );
  columns.date = named.length > 0 ? named : whole;
  return columns;
}

/** What a header has to name and does not: the date, or any temperature. */
export function lackingOf(columns: RecordColumns): readonly Measure[] {
  return [
    ...(dateColumns(columns).length === 0 ? (['date'] as const) : []),
    ...(columns.high.length + columns.low.length === 0 ? (['high', 'low'] as const) : []),
  ];
}

/** The scale that a header names; null when it names none. */
export function scaleOfHeader(header: string): Scale | null {
  const words = wordsOf(header);
  const has = (...some: readonly string[]): boolean => some.some((word) => words.includes(word));
  const isF = has('f', 'fahrenheit', 'degf');
  if (isF === has('c', 'celsius', 'centigrade', 'degc', 'centigrados', 'centigrado')) return null;
  return { units: isF ? 'us' : 'metric', perDegree: has('tenths', 'tenth', 'decimas', 'decima') ? 10 : 1 };
}

/** The columns that a date is in: one, or those of year, month and day, or of year and day of the year. */
export function dateColumns({ date, year, month, day, dayOfYear }: RecordColumns): readonly number[] {
  if (date.length > 0) return date.slice(0, 1);
  const parts = [
    [year, month, day],
    [year, dayOfYear],
  ].find((some) => some.every(({ length }) => length > 0));
  return parts?.flatMap((some) => some.slice(0, 1)) ?? [];
}
