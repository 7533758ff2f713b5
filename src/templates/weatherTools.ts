/** What is handed in to read a daily record and to compute with it; serial dates, shares and sentences. */
import type { WeatherRecord } from './weather';

export type Units = WeatherRecord['units'];
export type Hemisphere = 'north' | 'south';

export interface WeatherChoices {
  /** In place of what headers and temperatures say. */
  readonly units?: Units | undefined;
  /** The last day that can have been measured [serial]. */
  readonly today: number;
  readonly hemisphere: Hemisphere;
}

export interface WeatherRead {
  /** null when a doubt stops it. */
  readonly record: WeatherRecord | null;
  /** What was taken from which columns; '' when nothing was. */
  readonly found: string;
  /** What stops first, then by line, from 1. */
  readonly doubts: readonly WeatherDoubt[];
}

export interface WeatherDoubt {
  readonly line: number;
  readonly sentence: string;
  readonly stops: boolean;
  /** Nothing is wrong with the record. */
  readonly isRemark: boolean;
}

export type ReadWeather = (text: string, choices: WeatherChoices) => WeatherRead;

export interface FrostDates {
  /** Serials. */
  readonly lastFrost: number;
  readonly firstFrost: number;
  /** Springs and falls that count. */
  readonly springs: number;
  readonly falls: number;
}

/** The dates at a risk, or the advice it refuses with. */
export type FrostDatesOfRecord = (
  record: WeatherRecord,
  risk: number,
  year: number,
  hemisphere: Hemisphere,
) => { readonly value: FrostDates } | { readonly wrong: string };
