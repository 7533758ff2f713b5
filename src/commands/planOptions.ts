/** The options of `plan`, read and checked before anything is done. */
import { parseArgs } from 'node:util';
import { datesInWords } from '../texts/datesInWords';
import { mostSeasonDays } from '../templates/season';
import type { Hemisphere, Units } from '../templates/weatherTools';
import { catalogue, inOtherLanguages } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { languages } from '../texts/language';
import { parseNumber } from '../workbook/parseNumber';
import { beyondMonth, dayOfText, serialOfDay } from '../workbook/serialDate';
import { monthNamed, takenDate } from './takenDate';
import { UsageError } from './usageError';
import { hasWorkbookName } from './workbookName';

const words = catalogue.commands.plan;

export interface PlanOptions {
  readonly plots: string;
  readonly out: string;
  /** Where the calendar goes as a file of its own; null: nowhere. */
  readonly calendar: string | null;
  readonly replace: boolean;
  /** Values of the Season form, by cell name. */
  readonly season: Readonly<Record<string, string | number>>;
  /** The file with the price list of seed; null for none. */
  readonly seedPrices: string | null;
  /** The files with prices for the budget. */
  readonly prices: readonly string[];
  /** How dates were taken that could be read otherwise, in sentences. */
  readonly taken: readonly string[];
  /** The record that the frost dates are out of; null where they are given. */
  readonly weather: WeatherOptions | null;
}

export interface WeatherOptions {
  readonly file: string;
  /** The season's; the one after the record ends where it is undefined. */
  readonly year: number | undefined;
  /** Of the record, in place of what it says. */
  readonly units: Units | undefined;
  readonly hemisphere: Hemisphere;
  readonly risk: number;
}

function refuse(sentence: string, values: Readonly<Record<string, string>> = {}): never {
  throw new UsageError(fill(sentence, values));
}

const string = { type: 'string' } as const;
const known = {
  out: string,
  calendar: string,
  'last-frost': string,
  'first-frost': string,
  weather: string,
  year: string,
  'weather-units': string,
  hemisphere: string,
  'frost-risk': string,
  units: string,
  assurance: string,
  place: string,
  'seed-prices': string,
  prices: string,
  language: string,
  replace: { type: 'boolean' },
} as const;

type Option = keyof typeof known;

const examples: Readonly<Record<Option, string>> = {
  out: 'plan.xlsx',
  calendar: 'plan.ics',
  'last-frost': '2026-05-02',
  'first-frost': '2026-10-10',
  weather: 'record.csv',
  year: '2026',
  'weather-units': 'metric',
  hemisphere: 'south',
  'frost-risk': '0.5',
  units: 'metric',
  assurance: '0.9',
  place: 'NAME',
  'seed-prices': 'seedprices.csv',
  prices: 'prices.csv',
  language: 'es',
  replace: '',
};

/** @throws UsageError */
export function readPlanOptions(args: readonly string[]): PlanOptions {
  const { plots, prices, given } = readArguments(args);
  const spoken = given.get('language');
  // It was taken before anything else: see entries/chooseLanguageOfCommand.
  if (spoken !== undefined && !(languages as readonly string[]).includes(spoken)) {
    // In every language, for whoever asked for one.
    const said = [words.badLanguage, ...inOtherLanguages((other) => other.commands.plan.badLanguage)];
    refuse(said.join(' '), { given: spoken });
  }
  const out = given.get('out') ?? refuseMissing('out');
  if (!/\.xlsx$/i.test(out)) refuse(words.outExtension, { given: out });
  const calendar = given.get('calendar') ?? null;
  if (calendar !== null && !/\.ics$/i.test(calendar)) refuse(words.calendarExtension, { given: calendar });
  const weather = weatherOptions(given);
  // A plan brings its season along; a record brings the frost dates.
  const isAsked = (option: Option): boolean =>
    given.has(option) || !(hasWorkbookName(plots) || (weather !== null && isOfDates(option)));
  const lastFrost = isAsked('last-frost') ? dateOption(given, 'last-frost') : null;
  const firstFrost = isAsked('first-frost') ? dateOption(given, 'first-frost') : null;
  if (lastFrost !== null && firstFrost !== null) {
    const days = firstFrost - lastFrost;
    const typed = { last: given.get('last-frost') ?? '', first: given.get('first-frost') ?? '' };
    if (days <= 0) refuse(words.frostsReversed, typed);
    if (days > mostSeasonDays) refuse(words.frostsApart, { ...typed, days: String(days) });
  }
  const units = unitsOption(given, 'units') ?? 'us';
  const place = given.get('place');
  return {
    plots,
    out,
    calendar,
    replace: given.has('replace'),
    seedPrices: given.get('seed-prices') ?? null,
    prices,
    weather,
    taken: [...given].flatMap(([option, text]) => {
      const date = isOfDates(option) ? takenDate(text) : null;
      return date === null ? [] : [fill(words.dateTaken, { option: `--${option}`, given: text, date })];
    }),
    season: {
      ...(place === undefined ? {} : { PLACE: place }),
      ...(lastFrost === null ? {} : { SEASON_YEAR: yearOf(lastFrost), LAST_FROST: serialOfDay(lastFrost) }),
      ...(firstFrost === null ? {} : { FIRST_FROST: serialOfDay(firstFrost) }),
      ...(isAsked('frost-risk') || weather !== null ? { FROST_RISK: shareOption(given, 'frost-risk') } : {}),
      ...(isAsked('assurance') ? { ASSURANCE: shareOption(given, 'assurance') } : {}),
      ...(isAsked('units') ? { UNITS: units } : {}),
    },
  };
}

function isOfDates(option: Option): boolean {
  return option === 'last-frost' || option === 'first-frost';
}

function weatherOptions(given: Given): WeatherOptions | null {
  const file = given.get('weather');
  for (const option of given.keys()) {
    if (file !== undefined && isOfDates(option)) refuse(words.datesOrWeather, { option: `--${option}` });
    if (file === undefined && ofWeather.has(option)) refuse(words.noWeather, { option: `--${option}` });
  }
  if (file === undefined) return null;
  const hemisphere = given.get('hemisphere') ?? 'north';
  if (hemisphere !== 'north' && hemisphere !== 'south') refuse(words.badHemisphere, { given: hemisphere });
  const year = given.get('year');
  if (year !== undefined && !/^(?:19|20|21)\d\d$/.test(year)) refuseValue(words.badYear, 'year', year);
  return {
    file,
    year: year === undefined ? undefined : Number(year),
    units: unitsOption(given, 'weather-units'),
    hemisphere,
    risk: shareOption(given, 'frost-risk'),
  };
}

/** These say nothing where there is no record. */
const ofWeather: ReadonlySet<Option> = new Set(['year', 'weather-units', 'hemisphere']);

function unitsOption(given: Given, option: 'units' | 'weather-units'): Units | undefined {
  const units = given.get(option);
  if (units === undefined || units === 'us' || units === 'metric') return units;
  const sentence = option === 'units' ? words.badUnits : words.badWeatherUnits;
  return refuse(sentence, { option: `--${option}`, given: units });
}

function yearOf(day: number): number {
  return new Date(day * 86400000).getUTCFullYear();
}

type Given = ReadonlyMap<Option, string>;

/** Not strict: the parser's own refusals are not in our words. */
function readArguments(args: readonly string[]): { plots: string; prices: string[]; given: Given } {
  const { tokens } = parseArgs({
    args: [...args],
    options: known,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const given = new Map<Option, string>();
  const files: string[] = [];
  const prices: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') files.push(token.value);
    if (token.kind !== 'option') continue;
    const { name, rawName, value } = token;
    if (!isOption(name)) refuse(words.unknownOption, { option: rawName });
    if (known[name].type === 'string') {
      if (value === undefined || value === '' || value.startsWith('--')) refuseMissing(name);
    } else if (value !== undefined) {
      refuse(words.noValueWanted, { option: rawName, given: value });
    }
    given.set(name, value ?? '');
    // The one option that may be given again.
    if (name === 'prices') prices.push(value ?? '');
  }
  const [plots, second] = files;
  if (second !== undefined) refuse(words.secondFile, { given: second });
  return { plots: plots ?? refuse(words.noFile), prices, given };
}

function isOption(name: string): name is Option {
  return Object.hasOwn(known, name);
}

function refuseMissing(option: Option): never {
  return refuse(words.missingOption, { option: `--${option}`, example: examples[option] });
}

function refuseValue(sentence: string, option: Option, given: string): never {
  return refuse(sentence, { option: `--${option}`, given, example: examples[option] });
}

function dateOption(given: Given, option: Option): number {
  const text = given.get(option) ?? refuseMissing(option);
  const beyond = beyondMonth(text, datesInWords);
  if (beyond !== null) {
    const values = { month: monthNamed(beyond.month), days: String(beyond.days) };
    refuse(words.beyondMonth, { ...values, option: `--${option}`, given: text, example: examples[option] });
  }
  return dayOfText(text, datesInWords) ?? refuseValue(words.badDate, option, text);
}

function shareOption(given: Given, option: Option): number {
  const text = given.get(option) ?? examples[option];
  const share = parseNumber(text, false);
  return share !== null && share > 0 && share < 1 ? share : refuseValue(words.badShare, option, text);
}
